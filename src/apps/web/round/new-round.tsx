import { type ReactElement, useEffect, useRef, useState } from 'react'
import type { Course } from '#golf/course/course.ts'
import { loadCourse, teeNames } from '../documents/load-course.ts'
import { type Library, useLibrary } from '../documents/use-library.ts'
import { Chosen } from '../page/chosen.tsx'
import { useReader } from '../reading/use-reader.ts'
import { holePlace } from './places.ts'
import { type AskedRound, type CardPlans, prepareRound } from './prepare-round.ts'
import { wordsOf } from './trouble-words.ts'

const CARD_PLANS: readonly { readonly plans: CardPlans; readonly words: string }[] = [
  { plans: 'full', words: 'In full: ten minutes or more on a phone' },
  { plans: 'quick', words: 'Soon and rough: a few minutes' },
  { plans: 'none', words: 'None' },
]

/** Where, who, when and by which rules; the card is prepared before the start and does not change after it. */
export function NewRound(): ReactElement {
  const { library, trouble } = useLibrary()
  if (trouble !== null) return <p role="alert">{trouble.message}</p>
  return library === null ? <p>Looking for courses and players.</p> : <Asking library={library} />
}

function Asking({ library }: { readonly library: Library }): ReactElement {
  const [{ units }] = useReader()
  const [asked, setAsked] = useState<AskedRound>(() => ({
    courseId: library.courses[0]?.id ?? '',
    playerId: library.players[0]?.id ?? '',
    dayId: null,
    tee: null,
    date: new Date().toLocaleDateString('sv-SE'),
    purpose: 'counting',
    hasDevices: true,
    isTextOnly: false,
    units,
    plans: 'full',
  }))
  const [course, setCourse] = useState<Course | null>(null)
  const [said, setSaid] = useState('')
  const working = useRef<AbortController | null>(null)
  const set = (change: Partial<AskedRound>): void => setAsked((before) => ({ ...before, ...change }))
  useEffect(() => {
    let isWanted = true
    setCourse(null)
    loadCourse(asked.courseId).then(
      (loaded) => {
        if (!isWanted) return
        setCourse(loaded)
        // What the Committee has set for the course holds unless the event says otherwise.
        setAsked((before) => ({
          ...before,
          tee: null,
          hasDevices: !loaded.localRules.includes('G-5'),
          isTextOnly: loaded.localRules.includes('G-11'),
        }))
      },
      (error: unknown) => isWanted && setSaid(wordsOf(error)),
    )
    return () => {
      isWanted = false
    }
  }, [asked.courseId])
  useEffect(() => () => working.current?.abort(), [])
  const prepare = async (): Promise<void> => {
    working.current = new AbortController()
    setSaid('Preparing the card.')
    try {
      const tell = (done: number, of: number): void => setSaid(`Preparing the card: ${done} of ${of} holes.`)
      location.hash = holePlace(await prepareRound(asked, tell, working.current.signal), '')
    } catch (error) {
      setSaid(working.current?.signal.aborted ? '' : wordsOf(error))
    } finally {
      working.current = null
    }
  }
  const isWorking = said.startsWith('Preparing')
  const refs = course?.holes.map(({ ref }) => ref) ?? []
  const tees = course === null ? [] : [...new Set(refs.flatMap((ref) => teeNames(course, ref)))]
  return (
    <section aria-label="New round" className="new-round">
      <Chosen
        label="Course"
        value={asked.courseId}
        of={library.courses}
        onChoose={(courseId) => set({ courseId })}
      />
      <Chosen
        label="Player"
        value={asked.playerId}
        of={library.players}
        onChoose={(playerId) => set({ playerId })}
      />
      <Chosen
        label="Tee"
        value={asked.tee ?? ''}
        of={[{ id: '', name: 'as the course has it' }, ...tees.map((tee) => ({ id: tee, name: tee }))]}
        onChoose={(tee) => set({ tee: tee === '' ? null : tee })}
      />
      <Chosen
        label="Day"
        value={asked.dayId ?? ''}
        of={[{ id: '', name: 'calm' }, ...library.days]}
        onChoose={(dayId) => set({ dayId: dayId === '' ? null : dayId })}
      />
      <label>
        Date
        <input
          type="date"
          value={asked.date}
          onChange={(event) => set({ date: event.currentTarget.value })}
        />
      </label>
      <fieldset>
        <legend>What for</legend>
        {(['counting', 'practice'] as const).map((purpose) => (
          <label key={purpose}>
            <input
              type="radio"
              name="purpose"
              checked={asked.purpose === purpose}
              onChange={() => set({ purpose })}
            />
            {purpose === 'counting' ? 'A round that counts' : 'Practice'}
          </label>
        ))}
      </fieldset>
      {asked.purpose === 'counting' && (
        <>
          <label>
            <input
              type="checkbox"
              checked={!asked.hasDevices}
              onChange={(event) => set({ hasDevices: !event.currentTarget.checked })}
            />
            No devices that measure distance (Local Rule G-5)
          </label>
          <label>
            <input
              type="checkbox"
              checked={asked.isTextOnly}
              onChange={(event) => set({ isTextOnly: event.currentTarget.checked })}
            />
            No green map of one’s own (Local Rule G-11)
          </label>
        </>
      )}
      <fieldset>
        <legend>Plans for the card</legend>
        {CARD_PLANS.map(({ plans, words }) => (
          <label key={plans}>
            <input
              type="radio"
              name="plans"
              checked={asked.plans === plans}
              onChange={() => set({ plans })}
            />
            {words}
          </label>
        ))}
      </fieldset>
      <p role="status">{said}</p>
      <button
        type="button"
        className="wide"
        disabled={course === null || isWorking}
        onClick={() => void prepare()}
      >
        Prepare the round
      </button>
      {isWorking && (
        <button type="button" className="wide" onClick={() => working.current?.abort()}>
          Stop
        </button>
      )}
    </section>
  )
}

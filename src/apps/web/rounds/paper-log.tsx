import { type ReactElement, useState } from 'react'
import { FINISH_LETTERS } from '#golf/round/round.ts'
import type { Reader } from '../desk/desk.ts'
import { keepNewDocument } from '../documents/fetch-document.ts'
import { teeNames } from '../documents/load-course.ts'
import { ownStorage } from '../documents/own-storage.ts'
import { type Library, troubleOf, useCourse } from '../documents/use-library.ts'
import { Chosen } from '../page/chosen.tsx'
import { TroubleNote } from '../page/trouble-note.tsx'
import { TypedLines } from '../page/typed-lines.tsx'
import type { Trouble } from '../planning/questions.ts'
import { numbersOf } from './numbers-of-log.ts'
import { holesOf, keepTyped, readLine, roundOfTyped, type TypedLog, typedBefore } from './typed-log.ts'

/** The log on paper, typed a line a hole; what does not make sense stands below its line, and all else is kept. */
export function PaperLog(props: {
  readonly library: Library
  readonly reader: Reader
  readonly onKept: (said: string) => void
}): ReactElement {
  const { library, reader, onKept } = props
  const [log, setLog] = useState<TypedLog>(
    () =>
      typedBefore(ownStorage) ?? {
        courseId: library.courses[0]?.id ?? '',
        playerId: library.players[0]?.id ?? '',
        date: new Date().toLocaleDateString('sv-SE'),
        tee: '',
        lines: {},
      },
  )
  const [kept, setKept] = useState(0)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const { value: course } = useCourse(log.courseId === '' ? null : log.courseId)
  const set = (change: Partial<TypedLog>): void => {
    const next = { ...log, ...change }
    setLog(next)
    keepTyped(next, ownStorage)
  }
  const refs = course?.holes.map(({ ref }) => ref) ?? []
  const holes = holesOf(log, refs, reader.units)
  const keep = async (): Promise<void> => {
    setTrouble(null)
    const player = library.players.find(({ id }) => id === log.playerId)?.name ?? ''
    const mark = crypto.getRandomValues(new Uint32Array(1))[0]?.toString(36) ?? ''
    try {
      const numbers = await numbersOf(log)
      const { id, text } = roundOfTyped(log, holes, { course: course?.name ?? '', player }, mark, numbers)
      await keepNewDocument('rounds', id, text)
      keepTyped(null, ownStorage)
      setLog({ ...log, lines: {} })
      setKept(kept + 1)
      onKept(
        `The round of ${log.date} is kept with ${holes.length} ${holes.length === 1 ? 'hole' : 'holes'}.`,
      )
    } catch (error) {
      setTrouble(troubleOf(error))
    }
  }
  const tees = course === null ? [] : [...new Set(refs.flatMap((ref) => teeNames(course, ref)))]
  return (
    <section aria-label="A log on paper" className="paper-log">
      <h2>A log on paper</h2>
      <p>
        Each stroke: club, letter of where it finished, {reader.units} left to the pin; a / between two. Like
        driver f-180 / 5i r-25 / sw g-18ft / 2 putts. Letters:{' '}
        {Object.entries(FINISH_LETTERS)
          .map(([letter, words]) => `${letter} ${words}`)
          .join(', ')}
        ; = after the club, or in its place, hit as the card says, +1 a penalty stroke more, pick up an
        unfinished hole.
      </p>
      {trouble !== null && <TroubleNote trouble={trouble} />}
      <div className="typed-facts">
        <Chosen
          label="Course"
          value={log.courseId}
          of={library.courses}
          onChoose={(courseId) => set({ courseId })}
        />
        <Chosen
          label="Player"
          value={log.playerId}
          of={library.players}
          onChoose={(playerId) => set({ playerId })}
        />
        <Chosen
          label="Tee"
          value={log.tee}
          of={[{ id: '', name: 'as the course has it' }, ...tees.map((tee) => ({ id: tee, name: tee }))]}
          onChoose={(tee) => set({ tee })}
        />
        <label>
          Date
          <input
            type="date"
            value={log.date}
            onChange={(event) => set({ date: event.currentTarget.value })}
          />
        </label>
      </div>
      <TypedLines
        key={log.courseId + String(kept)}
        name="log"
        refs={refs}
        lines={log.lines}
        faultsOf={(ref, line) => readLine(ref, line, reader.units).faults}
        onLine={(ref, line) => set({ lines: { ...log.lines, [ref]: line } })}
      />
      <button type="button" disabled={holes.length === 0 || log.date === ''} onClick={() => void keep()}>
        Keep the round
      </button>
    </section>
  )
}

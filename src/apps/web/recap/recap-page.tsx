import { type ReactElement, useState } from 'react'
import '../style/ruled-page.css'
import '../style/after.css'
import { REFERENCE_DAY } from '#golf/course/day.ts'
import type { Player } from '#golf/player/player.ts'
import { dayOfRound } from '#golf/round/holes-of-rounds.ts'
import type { PlanNumbers } from '#golf/round/plan-numbers.ts'
import { isCalled } from '#golf/round/round-belongs.ts'
import { RULES_2023 } from '#golf/rules/rules-2023.ts'
import type { Reader } from '../desk/desk.ts'
import { type Library, useCourse, useLibrary, usePlayer } from '../documents/use-library.ts'
import { Choice } from '../ledger/choice.tsx'
import { PageHead } from '../page/page-head.tsx'
import { ROUNDS } from '../page/places.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import { WaitingFor } from '../page/waiting-for.tsx'
import { type KeptDay, type KeptRoundFile, useKeptDays, useKeptRound } from '../rounds/kept-round.ts'
import { RecapDesk } from './recap-desk.tsx'

/** A round that is kept, taken apart: from plan to score. */
export function RecapPage(props: {
  readonly roundId: string
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
}): ReactElement {
  const { roundId, reader, onReader } = props
  const { library, trouble } = useLibrary()
  const kept = useKeptRound(roundId)
  const days = useKeptDays()
  const shown = trouble ?? kept.trouble ?? days.trouble
  return (
    <>
      <PageHead what="the recap" reader={reader} onReader={onReader}>
        <a className="button" href={ROUNDS}>
          Rounds
        </a>
      </PageHead>
      {shown !== null || library === null || kept.value === null || days.value === null ? (
        <main className="ruled-page after-page" aria-busy={shown === null}>
          {shown === null ? <WaitingFor what="the round" /> : <TroubleNote trouble={shown} />}
        </main>
      ) : (
        <RecapOf key={roundId} library={library} kept={kept.value} days={days.value} reader={reader} />
      )}
    </>
  )
}

const { devices, edition } = RULES_2023

/** The round with the course and the player it names, or that are chosen for it. */
function RecapOf(props: {
  readonly library: Library
  readonly kept: KeptRoundFile
  readonly days: readonly KeptDay[]
  readonly reader: Reader
}): ReactElement {
  const { library, kept, days, reader } = props
  const { belongs, round } = kept
  const [courseId, setCourse] = useState(
    () => namedIn(library.courses, belongs.courseId, belongs.course) ?? '',
  )
  const [playerId, setPlayer] = useState(
    () => namedIn(library.players, belongs.playerId, belongs.player) ?? '',
  )
  const [dayId, setDay] = useState(() => {
    const day = dayOfRound(
      round,
      days.map((one) => one.day),
    )
    return days.find((one) => one.day === day)?.id ?? ''
  })
  const course = useCourse(courseId === '' ? null : courseId)
  const player = usePlayer(playerId === '' ? null : playerId)
  const [isToday, setToday] = useState(false)
  // Numbers of that day are those of the player that the round names.
  const [namedId] = useState(playerId)
  const then = theirs(kept.planNumbers, player.value, namedId === '' ? null : namedId === playerId)
  const against = isToday ? null : then
  // The conditions of the card, unless others are chosen.
  const [otherDayId, setOtherDay] = useState('')
  const shownDay = days.find(({ id }) => id === (against === null ? dayId : otherDayId))?.day ?? null
  const day = shownDay ?? against?.day ?? null
  const shown = course.trouble ?? player.trouble
  if (belongs.isOpen)
    return (
      <main className="ruled-page after-page">
        <p className="after-lead" role="status">
          This round counts and is not closed yet: nothing is worked out from it before (Rule {devices.clause}
          , {edition}). Close it on the phone first.
        </p>
      </main>
    )
  const choices = (
    <div className="choices after-choices">
      <Choice label="Course" value={courseId} options={named(library.courses)} onChange={setCourse} />
      <Choice label="Player" value={playerId} options={named(library.players)} onChange={setPlayer} />
      {then !== null && (
        <Choice
          label="Against"
          value={against === null ? 'today' : 'then'}
          options={[
            { value: 'then', name: thenWords(then) },
            { value: 'today', name: 'the numbers kept today' },
          ]}
          onChange={(chosen) => setToday(chosen === 'today')}
        />
      )}{' '}
      <Choice
        label="Day"
        value={against === null ? dayId : otherDayId}
        options={[
          { value: '', name: against === null ? 'calm, normal' : 'as it was planned for' },
          ...days.map(({ id, name }) => ({ value: id, name })),
        ]}
        onChange={against === null ? setDay : setOtherDay}
      />
    </div>
  )
  return (
    <main className="ruled-page after-page">
      {choices}
      {shown !== null && <TroubleNote trouble={shown} />}
      {shown === null && (courseId === '' || playerId === '') && (
        <p className="after-lead">
          The file of the round does not say {courseId === '' ? 'on which course it was' : 'whose it is'}{' '}
          among those that are kept. Choose above.
        </p>
      )}
      {course.value !== null && player.value !== null && (
        <RecapDesk
          kept={kept}
          course={course.value}
          courseId={courseId}
          player={against?.player ?? player.value}
          holder={player.value}
          playerId={playerId}
          day={day ?? REFERENCE_DAY}
          hasDay={day !== null}
          against={against}
          reader={reader}
        />
      )}
    </main>
  )
}

/** The numbers where they are of the player that is chosen: by the id that the round names, or by name. */
function theirs(
  numbers: PlanNumbers | null,
  chosen: Player | null,
  isNamed: boolean | null,
): PlanNumbers | null {
  if (numbers === null || chosen === null) return null
  const isSame = isNamed ?? isCalled(numbers.player.name, chosen)
  return isSame ? numbers : null
}

function thenWords({ from, date }: PlanNumbers): string {
  return from === 'card' ? `the card of ${date}` : `the numbers kept on ${date}`
}

/** What a file names, by its id or else by its name. */
function namedIn(
  listed: readonly { readonly id: string; readonly name: string }[],
  id: string | null,
  name: string | null,
): string | undefined {
  return (listed.find((one) => one.id === id) ?? listed.find((one) => one.name === name))?.id
}

function named(
  listed: readonly { readonly id: string; readonly name: string }[],
): { readonly value: string; readonly name: string }[] {
  return [{ value: '', name: 'not chosen' }, ...listed.map(({ id, name }) => ({ value: id, name }))]
}

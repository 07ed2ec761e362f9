import { type ReactElement, useMemo, useState } from 'react'
import type { Course } from '#golf/course/course.ts'
import {
  clubBasis,
  clubTables,
  clubTitle,
  clubWords,
  NOTHING_STANDS_OUT,
  tooFewWords,
} from '#golf/round/club-words.ts'
import { FEWEST_MEMBERS, LEAST_MEMBERS, MOST_LEAST_MEMBERS } from '#golf/round/settings.ts'
import { clubFacts } from '#paper/book/club-facts.ts'
import { WordsSheet } from '../card/words-sheet.tsx'
import { useField } from '../group/use-field.ts'
import { Section } from '../ledger/section.tsx'
import { CountField } from '../page/count-field.tsx'
import { FigureTable } from '../page/figure-table.tsx'
import { Lines } from '../page/lines.tsx'
import { WaitingFor } from '../page/waiting-for.tsx'
import { PlanProgress } from '../planning/plan-progress.tsx'
import { leftWords } from '../rounds/closed-of-players.ts'
import type { OfRounds } from '../rounds/page-of-rounds.tsx'
import { type Members, membersRounds, readMembers } from './member-rounds.ts'
import { useClub } from './use-club.ts'

/** A club once its rounds are there: those players whose files can be read are its members. */
export function ClubDesk({ course, courseId, of, left, unread }: OfRounds): ReactElement {
  const gathered = useMemo(() => membersRounds(of, left), [of, left])
  const field = useField(gathered.ids)
  const members = useMemo(() => readMembers(gathered, field), [gathered, field])
  if (members === null) return <WaitingFor what="the players" />
  return <MembersDesk {...{ course, courseId, members }} unread={unread.length} />
}

function MembersDesk(props: {
  readonly course: Course
  readonly courseId: string
  readonly members: Members
  readonly unread: number
}): ReactElement {
  const { course, courseId, members, unread } = props
  const { players, rounds } = members
  const [minimum, setMinimum] = useState(LEAST_MEMBERS)
  const [isQuick, setQuick] = useState(true)
  const { work, club, holesLeft } = useClub(course, rounds, players, minimum, isQuick)
  const indexes = useMemo(
    () => Object.fromEntries(course.holes.map(({ ref, strokeIndex }) => [ref, strokeIndex])),
    [course],
  )
  const words = useMemo(
    () => clubFacts(club, indexes, course.name, isQuick),
    [club, indexes, course, isQuick],
  )
  const isEnough = players.length >= minimum
  const isWhole = isEnough && work.of > 0 && work.done === work.of
  const found = clubWords(club, indexes)
  const left = [...leftWords(members.left + unread), ...leftHoles(holesLeft)]
  return (
    <>
      <p className="after-lead">
        <b>{isWhole ? clubTitle(club, course.name) : course.name}</b>
      </p>
      <div className="note-fields">
        <CountField
          label="Members behind every figure, at least"
          value={minimum}
          least={FEWEST_MEMBERS}
          most={MOST_LEAST_MEMBERS}
          onChange={setMinimum}
        />
        <button type="button" aria-pressed={isQuick} onClick={() => setQuick(!isQuick)}>
          Soon and rough
        </button>
      </div>
      {!isEnough && <Lines of={[tooFewWords(players.length, minimum)]} />}
      {isEnough && <PlanProgress work={work} />}
      {isWhole && (
        <>
          <Section title="For the committee">
            <Lines of={found.length === 0 ? [NOTHING_STANDS_OUT] : found} />
          </Section>
          {clubTables(club, indexes).map(({ heading, table }) => (
            <Section key={heading} title={heading}>
              <FigureTable caption={heading} table={table} />
            </Section>
          ))}
          <Section title="What this rests on">
            <Lines of={clubBasis(club, isQuick)} />
          </Section>
        </>
      )}
      {left.length > 0 && (
        <Section title="What is left out">
          <Lines of={left} />
        </Section>
      )}
      {isWhole && <WordsSheet words={words} name={`${courseId}-club`} />}
    </>
  )
}

/** Holes that are left out, by their number: anything more would say whose they are. */
function leftHoles(holes: number): string[] {
  if (holes === 0) return []
  return [
    `${holes} ${holes === 1 ? 'hole' : 'holes'} that cannot be split as logged: the recap of each round says why.`,
  ]
}

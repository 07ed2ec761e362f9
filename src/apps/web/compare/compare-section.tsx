import { type ReactElement, useMemo, useState } from 'react'
import type { Course } from '#golf/course/course.ts'
import { REFERENCE_DAY } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { parseDay } from '#golf/course/parse-day.ts'
import type { Player } from '#golf/player/player.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import type { Desk, Reader } from '../desk/desk.ts'
import { fetchDocument } from '../documents/fetch-document.ts'
import { teeNames } from '../documents/load-course.ts'
import { type Library, troubleOf, usePlayer } from '../documents/use-library.ts'
import { Choice } from '../ledger/choice.tsx'
import { Section } from '../ledger/section.tsx'
import { TroubleNote } from '../page/trouble-note.tsx'
import { useSituation } from '../page/use-situation.ts'
import type { Trouble } from '../planning/questions.ts'
import { usePlan } from '../planning/use-planning.ts'
import { type Against, otherDesk } from './against.ts'
import { changedParts, isSameStroke } from './changed-parts.ts'

/** The plan beside that of another player, tee, pin or day: only what changes, or plainly that nothing does. */
export function CompareSection(props: {
  readonly library: Library
  readonly course: Course
  readonly desk: Desk
  readonly hole: Hole
  readonly plan: Plan
  /** Who plays against, in a match. */
  readonly opponent: Player | null
  readonly reader: Reader
}): ReactElement {
  const { library, course, desk } = props
  const [against, setAgainst] = useState<Against>({})
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const other = useMemo(() => otherDesk(desk, against), [desk, against])
  const tees = teeNames(course, desk.holeRef)
  const choose = (change: Partial<Record<keyof Against, unknown>>): void =>
    setAgainst((before) => withoutSame({ ...before, ...change }))
  const chooseDay = (id: string): void => {
    setTrouble(null)
    if (id === SAME || id === '') {
      choose({ day: id === SAME ? undefined : { id, day: REFERENCE_DAY } })
      return
    }
    fetchDocument('days', id)
      .then((text) => choose({ day: { id, day: parseDay(text, `days/${id}`) } }))
      .catch((error: unknown) => setTrouble(troubleOf(error)))
  }
  const same = { value: SAME, name: 'the same' }
  return (
    <Section title="Compare" className="compare">
      <div className="choices">
        <Choice
          label="Other player"
          value={against.playerId ?? SAME}
          options={[
            same,
            ...library.players
              .filter(({ id }) => id !== desk.playerId)
              .map(({ id, name }) => ({ value: id, name })),
          ]}
          onChange={(id) => choose({ playerId: id === SAME ? undefined : id })}
        />
        {tees.length > 1 && (
          <Choice
            label="Other tee"
            value={against.teeName ?? SAME}
            options={[same, ...tees.map((name) => ({ value: name, name }))]}
            onChange={(name) => choose({ teeName: name === SAME ? undefined : name })}
          />
        )}
        <Choice
          label="Other pin"
          value={against.pin ?? SAME}
          options={[same, ...['front', 'middle', 'back'].map((name) => ({ value: name, name }))]}
          onChange={(pin) => choose({ pin: pin === SAME ? undefined : pin })}
        />
        <Choice
          label="Other day"
          value={against.day?.id ?? SAME}
          options={[
            same,
            { value: '', name: 'calm, normal' },
            ...library.days.map(({ id, name }) => ({ value: id, name })),
          ]}
          onChange={chooseDay}
        />
      </div>
      {trouble !== null && <TroubleNote trouble={trouble} />}
      {other !== null && <Compared {...props} other={other} />}
    </Section>
  )
}

/** No day has this id: the empty one is the calm day. */
const SAME = '='

function withoutSame(against: Partial<Record<keyof Against, unknown>>): Against {
  return Object.fromEntries(Object.entries(against).filter(([, value]) => value !== undefined)) as Against
}

function Compared(props: {
  readonly course: Course
  readonly desk: Desk
  readonly hole: Hole
  readonly plan: Plan
  /** Who plays against, in a match. */
  readonly opponent: Player | null
  readonly reader: Reader
  readonly other: Desk
}): ReactElement {
  const { course, hole, plan, reader, other } = props
  const player = usePlayer(other.playerId)
  const {
    hole: otherHole,
    situation,
    trouble,
  } = useSituation(other, course, player.value, reader.units, props.opponent)
  const planning = usePlan(situation, null)
  const there = planning.plan?.hole.ref === otherHole?.ref ? planning.plan : null
  const shown = player.trouble ?? trouble ?? planning.trouble
  if (shown !== null) return <TroubleNote trouble={shown} />
  if (there === null || otherHole === null || !planning.isCurrent) return <p className="silent">Reckoning.</p>
  const parts = changedParts({ plan, hole }, { plan: there, hole: otherHole }, reader)
  const isSame = isSameStroke(parts)
  return (
    <>
      <p className="compared" aria-live="polite">
        {parts.length === 0
          ? 'No change: the two plans say the same.'
          : isSame
            ? 'No change of plan: the same club on the same line.'
            : 'The plan changes.'}
      </p>
      {!planning.isFull && <p className="silent">A first answer. The fuller one follows.</p>}
      {parts.length > 0 && (
        <table className="clubs">
          <thead>
            <tr>
              <th scope="col">
                <span className="unseen">what changes</span>
              </th>
              <th scope="col">{plan.player === there.player ? 'as it is' : plan.player}</th>
              <th scope="col">{plan.player === there.player ? 'the other' : there.player}</th>
            </tr>
          </thead>
          <tbody>
            {parts.map(({ what, here, there: otherwise }) => (
              <tr key={what}>
                <th scope="row">{what}</th>
                <td>{here}</td>
                <td>{otherwise}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  )
}

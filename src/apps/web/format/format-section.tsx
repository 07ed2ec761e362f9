import type { ReactElement } from 'react'
import type { Course, HoleLine } from '#golf/course/course.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import type { Desk } from '../desk/desk.ts'
import { type Format, lastHoleOf } from '../desk/format.ts'
import type { Library } from '../documents/use-library.ts'
import { Choice } from '../ledger/choice.tsx'
import { Section } from '../ledger/section.tsx'
import { StepSlider } from '../ledger/step-slider.tsx'
import { formatLines, receivedWord, standsWord } from './format-lines.ts'

interface FormatProps {
  readonly format: Format
  readonly course: Course
  readonly hole: HoleLine
  readonly par: number
  readonly library: Library
  readonly onFormat: (change: Partial<Format>) => void
}

/** What the hole is played for, the state of the match with it, and what the format makes of the plan. */
export function FormatSection(
  props: Omit<FormatProps, 'format' | 'hole' | 'par'> & {
    readonly desk: Desk
    readonly plan: Plan
    readonly isFull: boolean
  },
): ReactElement | null {
  const { desk, plan, isFull, course, onFormat } = props
  const { format } = desk
  const { par } = plan.hole
  const hole = course.holes.find(({ ref }) => ref === desk.holeRef)
  if (hole === undefined) return null
  return (
    <Section title="The format" className="format">
      <div className="choices">
        <Choice
          label="Played for"
          value={format.kind}
          options={KINDS}
          onChange={(kind) => {
            const chosen = KINDS.find(({ value }) => value === kind)?.value ?? 'strokes'
            onFormat({ kind: chosen, atMost: par, opponentScore: par, through: null })
          }}
        />
        {format.kind === 'match' && <Opponent {...props} format={format} hole={hole} par={par} />}
        {(format.kind === 'points' || format.kind === 'match') && (
          <Choice
            label="Strokes received"
            value={format.received?.toString() ?? ''}
            options={[
              { value: '', name: 'by the card' },
              ...RECEIVED.map((strokes) => ({ value: `${strokes}`, name: receivedWord(strokes) })),
            ]}
            onChange={(strokes) => onFormat({ received: strokes === '' ? null : Number(strokes) })}
          />
        )}
        {(format.kind === 'at-most' || (format.kind === 'match' && format.opponentId !== null)) && (
          <LastHole {...props} format={format} hole={hole} par={par} />
        )}
      </div>
      <Counts {...props} format={format} hole={hole} par={par} />
      {format.kind !== 'strokes' && (
        <div aria-live="polite" className="format-lines">
          {plan.format === null ? (
            <p className="silent">{isFull ? '' : 'What the format changes comes with the fuller answer.'}</p>
          ) : (
            formatLines(plan.situation.objective, plan.format).map((line) => <p key={line}>{line}</p>)
          )}
        </div>
      )}
    </Section>
  )
}

const KINDS: readonly { readonly value: Format['kind']; readonly name: string }[] = [
  { value: 'strokes', name: 'the fewest strokes' },
  { value: 'points', name: 'points' },
  { value: 'at-most', name: 'so many strokes at most' },
  { value: 'match', name: 'a match' },
]
const RECEIVED = [-4, -3, -2, -1, 0, 1, 2, 3, 4]
/** A match may stand so far apart. */
const MOST_UP = 9

function Opponent({ format, library, onFormat }: FormatProps): ReactElement {
  const stands = Array.from({ length: 2 * MOST_UP + 1 }, (_, index) => MOST_UP - index)
  return (
    <>
      <Choice
        label="Opponent"
        value={format.opponentId ?? ''}
        options={[
          { value: '', name: 'a score that is known' },
          ...library.players.map(({ id, name }) => ({ value: id, name })),
        ]}
        onChange={(id) => onFormat({ opponentId: id === '' ? null : id })}
      />
      <Choice
        label="The match stands"
        value={format.up?.toString() ?? ''}
        options={[
          { value: '', name: 'this hole alone' },
          ...stands.map((up) => ({ value: `${up}`, name: standsWord(up) })),
        ]}
        onChange={(up) => onFormat({ up: up === '' ? null : Number(up) })}
      />
    </>
  )
}

/** The last hole that counts; a target grows by the pars of the holes that come with it. */
function LastHole({ format, course, hole, onFormat }: FormatProps): ReactElement {
  const from = course.holes.indexOf(hole)
  const later = course.holes.slice(from + 1)
  const parsTo = (ref: string | null): number =>
    ref === null
      ? 0
      : later
          .slice(0, later.findIndex((one) => one.ref === ref) + 1)
          .reduce((sum, one) => sum + (one.par ?? 4), 0)
  return (
    <Choice
      label="Counting to"
      value={format.through ?? ''}
      options={[
        { value: '', name: 'this hole' },
        ...later.map(({ ref }) => ({ value: ref, name: `hole ${ref}` })),
      ]}
      onChange={(ref) => {
        const through = ref === '' ? null : ref
        const atMost = format.atMost + parsTo(through) - parsTo(format.through)
        onFormat({ through, atMost })
      }}
    />
  )
}

/** What is counted in strokes: the target, the opponent's score, and what was used on the hole before. */
function Counts({ format, course, hole, onFormat }: FormatProps): ReactElement {
  const holes =
    course.holes.findIndex(({ ref }) => ref === lastHoleOf(format)) - course.holes.indexOf(hole) + 1
  const counted = Math.max(1, holes)
  const count = (
    label: string,
    value: number,
    low: number,
    high: number,
    change: (strokes: number) => Partial<Format>,
  ): ReactElement => (
    <StepSlider
      label={label}
      value={value}
      low={low}
      high={high}
      step={1}
      words={value === 1 ? '1 stroke' : `${value} strokes`}
      ends={[`${low}`, `${high}`]}
      onChange={(strokes) => onFormat(change(strokes))}
    />
  )
  return (
    <>
      {format.kind === 'at-most' &&
        count('At most', format.atMost, counted, counted * 10, (atMost) => ({ atMost }))}
      {format.kind === 'match' &&
        format.opponentId === null &&
        count('Theirs', format.opponentScore, 1, 10, (opponentScore) => ({ opponentScore }))}
      {format.kind !== 'strokes' && count('So far', format.played, 0, 9, (played) => ({ played }))}
    </>
  )
}

import type { ReactElement } from 'react'
import type { Hole } from '#golf/course/hole.ts'
import type { Plan, PlanOption } from '#golf/strategy/plan.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { type LineOf, sideWords } from '../aim-words.ts'
import type { Reader } from '../desk/desk.ts'
import { firstAnswerWords } from '../first-answer-words.ts'
import type { Planning } from '../planning/use-planning.ts'
import {
  length,
  nextShot,
  outcomeShares,
  priceWords,
  scoreShares,
  shotLeft,
  strokes,
  turnWords,
  unbroken,
  verdict,
} from '../words.ts'
import { Section } from './section.tsx'

/** The plan as a sentence, its verdict and its value, and what it was before the last edit changed it. */
export function PlanSentence(props: {
  readonly planning: Planning
  /** The plan's club before; `null` when it is the same. */
  readonly before: string | null
  /** Whether the hole is played for more than the fewest strokes. */
  readonly hasFormat: boolean
}): ReactElement {
  const { plan, isCurrent, isFull, trouble } = props.planning
  const comes = props.hasFormat ? 'What the format changes follows' : 'The fuller one follows'
  const state =
    trouble !== null ? '' : !isCurrent ? 'Reckoning.' : isFull ? '' : `${firstAnswerWords(plan)} ${comes}.`
  return (
    <section className={`sentence${isCurrent ? '' : ' waiting'}`} aria-label="The plan">
      <p aria-live="polite" className="plan-sentence">
        {unbroken(plan?.sentence ?? '')}
      </p>
      {plan !== null && props.before !== null && (
        <p className="turn" aria-live="polite">
          {unbroken(turnWords(plan, props.before))}
        </p>
      )}
      {plan !== null && (
        <p className="verdict">
          {verdict(plan)} <span className="value">{valueWords(plan)}</span>
        </p>
      )}
      <p className="state">{state}</p>
    </section>
  )
}

/** The value with its range where it is known, to the nearest twentieth of a stroke. */
export function valueWords(plan: Plan): string {
  const [value, low, high] = [plan.value.strokes, plan.value.low, plan.value.high].map(strokes)
  return low === high
    ? `About ${value} strokes from here.`
    : `${value} strokes from here, likely ${low} to ${high}.`
}

/** What the chosen club does when it is not the plan's: its price, said without blame. */
export function OwnChoice(props: {
  readonly option: PlanOption
  readonly plan: Plan
  readonly lineOf: LineOf
  readonly reader: Reader
}): ReactElement | null {
  const { option, plan, lineOf, reader } = props
  const isPlan = option.club === plan.options[0]?.club
  if (isPlan || plan.overruled?.club === option.club) return null
  return (
    <p className="own-choice">
      You like the {clubWords(option)}: its best line is{' '}
      {sideWords(option, option.aim.heading_deg, lineOf(option), reader)}, it costs{' '}
      {priceWords(plan, option.cost)} and leaves about {length(option.leave_m.p50, reader)}.
    </p>
  )
}

/** Where the shots of a club finish, as shares. */
export function OutcomeList(props: {
  readonly club: string
  readonly outcomes: Readonly<Partial<Record<string, number>>>
}): ReactElement {
  return (
    <Section title={`Where the ${props.club} finishes`}>
      <ul className="outcomes">
        {outcomeShares(props.outcomes).map(({ ground, share }) => (
          <li key={ground}>
            <span>{ground}</span> <b>{share}</b>
          </li>
        ))}
      </ul>
    </Section>
  )
}

/** The chance of each score from here with this club. */
export function ScoreList(props: { readonly option: PlanOption }): ReactElement {
  return (
    <Section title="Scores to expect with it">
      <ul className="outcomes">
        {scoreShares(props.option.scores).map(({ score, share }) => (
          <li key={score}>
            <span>{score}</span> <b>{share}</b>
          </li>
        ))}
      </ul>
    </Section>
  )
}

/** The next shots of a plan when they follow this club; none while they are still those of another. */
export function nextShotsOf(plan: Plan, option: PlanOption): Plan['then'] {
  const club = plan.overruled?.club ?? plan.options[0]?.club
  return club === option.club ? plan.then : []
}

/** The next shot from the places the first one is likely to leave. */
export function ThenList(props: {
  readonly plan: Plan
  readonly option: PlanOption
  readonly hole: Hole
  readonly reader: Reader
}): ReactElement | null {
  const { plan, option, hole, reader } = props
  const shots = nextShotsOf(plan, option)
  if (shots.length === 0) return null
  return (
    <Section title="Then">
      <ul className="then">
        {shots.map((shot) => (
          <li key={`${shot.from.x_m},${shot.from.y_m},${shot.lie}`}>
            {shotLeft(shot, hole, reader)}: <b>{unbroken(nextShot(shot))}</b>
          </li>
        ))}
      </ul>
    </Section>
  )
}

/** The usual cautions of the plan, and what the page defers to. */
export function CautionList(props: { readonly plan: Plan }): ReactElement {
  return (
    <Section title="Before you play" className="cautions">
      <ul>
        {props.plan.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </Section>
  )
}

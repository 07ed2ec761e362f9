import type { ReactElement } from 'react'
import type { Plan, PlanOption } from '#golf/strategy/plan.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { aimCost, isBeyondTried } from '../desk/aim-cost.ts'
import type { Reader } from '../desk/desk.ts'
import type { AimedClub } from '../desk/first-aim.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { priceWords, unitSign } from '../words.ts'

/** The aim in words with its price, and its steps: everything the drag on the chart does, by button. */
export function AimStrip(props: {
  readonly aimed: AimedClub
  /** The plan with the price of the club; `null` until there is one. */
  readonly plan: Plan | null
  readonly option: PlanOption | null
  /** Where it is aimed, in words. */
  readonly words: string
  readonly offsetMetres: number
  readonly isBest: boolean
  readonly reader: Reader
  readonly onStep: (steps: number | null) => void
}): ReactElement {
  const { aimed, plan, option, words, offsetMetres, isBest, reader, onStep } = props
  const sign = unitSign(reader)
  const price = option && aimCost(option, offsetMetres)
  const { aimStep, aimLargeStep } = DESK_SETTINGS
  const step = (steps: number, mark: string): ReactElement => (
    <button
      type="button"
      aria-label={`Aim ${Math.abs(steps)} ${sign} ${steps < 0 ? 'left' : 'right'}`}
      onClick={() => onStep(steps)}
    >
      {mark}
    </button>
  )
  return (
    <div className="aim-strip">
      {step(-aimLargeStep, '«')}
      {step(-aimStep, '‹')}
      <p className="aim-words" aria-live="polite">
        <span>
          {clubWords(aimed)}, {words}
        </span>
        <strong>
          {plan === null || option === null || price === null
            ? ''
            : isBest
              ? `its best line, costs ${priceWords(plan, option.cost)}`
              : `costs ${isBeyondTried(option, offsetMetres) ? 'more than ' : ''}${priceWords(plan, price)}, its best line ${priceWords(plan, option.cost)}`}
        </strong>
      </p>
      {step(aimStep, '›')}
      {step(aimLargeStep, '»')}
      <button type="button" className="best-line" disabled={isBest} onClick={() => onStep(null)}>
        best line
      </button>
    </div>
  )
}

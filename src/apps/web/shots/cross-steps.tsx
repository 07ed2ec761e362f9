import type { ReactElement } from 'react'
import type { Reader } from '../desk/desk.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { unitSign } from '../words.ts'
import { type Spot, spotWords } from './shot-words.ts'

/** Everything the keys on the chart do, by button: the cross in steps, putting down, taking back. */
export function CrossSteps(props: {
  readonly spot: Spot
  readonly reader: Reader
  readonly canUndo: boolean
  readonly canRedo: boolean
  readonly onStep: (right: number, further: number, isFine: boolean) => void
  readonly onPut: () => void
  readonly onUndo: () => void
  readonly onRedo: () => void
}): ReactElement {
  const { spot, reader, canUndo, canRedo, onStep } = props
  const { shotStep, shotFineStep } = DESK_SETTINGS
  const step = (mark: string, way: string, right: number, further: number, isFine: boolean): ReactElement => (
    <button
      type="button"
      aria-label={`Cross ${isFine ? shotFineStep : shotStep} ${unitSign(reader)} ${way}`}
      onClick={() => onStep(right, further, isFine)}
    >
      {mark}
    </button>
  )
  return (
    <div className="cross-steps">
      <p className="cross-words" aria-live="polite">
        {spotWords(spot, reader)}
      </p>
      <div className="step-row">
        {step('«', 'left', -1, 0, false)}
        {step('‹', 'left', -1, 0, true)}
        {step('›', 'right', 1, 0, true)}
        {step('»', 'right', 1, 0, false)}
      </div>
      <div className="step-row">
        {step('−−', 'shorter', 0, -1, false)}
        {step('−', 'shorter', 0, -1, true)}
        {step('+', 'further', 0, 1, true)}
        {step('++', 'further', 0, 1, false)}
      </div>
      <div className="step-row put-row">
        <button type="button" className="put-down" onClick={props.onPut}>
          Put it down
        </button>
        <button type="button" disabled={!canUndo} onClick={props.onUndo}>
          Undo
        </button>
        <button type="button" disabled={!canRedo} onClick={props.onRedo}>
          Redo
        </button>
      </div>
    </div>
  )
}

import { type ReactElement, useId } from 'react'

/** A scale with its value in words, a step down, a step up, and the keys of any slider. */
export function StepSlider(props: {
  readonly label: string
  readonly value: number
  readonly low: number
  readonly high: number
  readonly step: number
  /** The value as the reader likes it. */
  readonly words: string
  /** Words for the two ends: `calm`, `strong`. */
  readonly ends: readonly [string, string]
  /** True when the scale goes round, as a bearing does. */
  readonly isRound?: boolean
  /** The scale as it is engraved under the pointer, its ends in words included; a plain rule when absent. */
  readonly picture?: ReactElement
  readonly onChange: (value: number) => void
}): ReactElement {
  const { label, value, low, high, step, words, ends, isRound = false, picture, onChange } = props
  const id = useId()
  const move = (steps: number): void => {
    const next = Math.round((value + steps * step) / step) * step
    const span = high - low + step
    onChange(isRound ? ((((next - low) % span) + span) % span) + low : Math.max(low, Math.min(high, next)))
  }
  return (
    <div className="step-slider">
      <label htmlFor={id}>{label}</label>
      <output htmlFor={id}>{words}</output>
      <button type="button" aria-label={`${label}: one step less`} onClick={() => move(-1)}>
        −
      </button>
      <div className={picture === undefined ? 'scale' : 'scale engraved'}>
        {picture}
        <input
          id={id}
          type="range"
          min={low}
          max={high}
          step={step}
          value={value}
          aria-valuetext={words}
          onChange={(event) => onChange(Number(event.target.value))}
        />
        {picture === undefined &&
          ends.map((end) => (
            <span key={end} aria-hidden="true">
              {end}
            </span>
          ))}
      </div>
      <button type="button" aria-label={`${label}: one step more`} onClick={() => move(1)}>
        +
      </button>
    </div>
  )
}

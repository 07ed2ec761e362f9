import type { ReactElement } from 'react'
import type { Day } from '#golf/course/day.ts'
import type { Desk, Reader } from '../desk/desk.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { length, readerMetres, spreadWord, windOnHole } from '../words.ts'
import { Section } from './section.tsx'
import { StepSlider } from './step-slider.tsx'
import { GroundSliders, WindSliders } from './weather-sliders.tsx'

/** Wind, ground, greens, markers, the player's spread and the pin: what changes a plan without the course changing. */
export function DayControls(props: {
  readonly day: Day
  readonly pin: Desk['pin']
  readonly hasGreen: boolean
  readonly hasDayPin: boolean
  readonly bearingDegrees: number
  readonly reader: Reader
  readonly onWindSpeed: (metresPerSecond: number) => void
  readonly onWindFrom: (degrees: number) => void
  readonly onFirmness: (firmness: number) => void
  readonly onGreenSpeed: (feet: number) => void
  /** How far the markers stand ahead of where they were surveyed. */
  readonly markersMetres: number
  readonly onMarkers: (metres: number) => void
  readonly spread: number
  readonly onSpread: (spread: number) => void
  readonly onPin: (pin: Desk['pin']) => void
  readonly onPinStep: (right: number, further: number) => void
}): ReactElement {
  const { day, pin, reader, bearingDegrees } = props
  const { speedMetresPerSecond, fromDegrees } = day.wind
  const unit = readerMetres(reader)
  const markers = Math.round(props.markersMetres / unit)
  const mostMarkers = Math.floor(DESK_SETTINGS.furthestMarkers / unit)
  const isCalm = speedMetresPerSecond < 0.05
  return (
    <Section title="The day">
      <WindSliders
        wind={day.wind}
        reader={reader}
        onHole={isCalm ? '' : windOnHole(fromDegrees, bearingDegrees)}
        onSpeed={props.onWindSpeed}
        onFrom={props.onWindFrom}
      />
      <GroundSliders day={day} onFirmness={props.onFirmness} onGreenSpeed={props.onGreenSpeed} />
      <StepSlider
        label="Tees"
        value={markers}
        low={-mostMarkers}
        high={mostMarkers}
        step={1}
        words={
          markers === 0
            ? 'as surveyed'
            : `${length(Math.abs(props.markersMetres), reader)} ${markers < 0 ? 'back' : 'ahead'}`
        }
        ends={['back', 'ahead']}
        onChange={(units) => props.onMarkers(units * unit)}
      />
      <StepSlider
        label="Spread"
        value={props.spread}
        low={DESK_SETTINGS.tightest}
        high={DESK_SETTINGS.widest}
        step={DESK_SETTINGS.spreadStep}
        words={spreadWord(props.spread)}
        ends={['tighter', 'wider']}
        onChange={props.onSpread}
      />
      {props.hasGreen && (
        <fieldset className="pin">
          <legend>Pin</legend>
          <div className="pin-parts">
            {(['day', 'front', 'middle', 'back'] as const)
              .filter((part) => part !== 'day' || props.hasDayPin)
              .map((part) => (
                <button
                  key={part}
                  type="button"
                  aria-pressed={pin === part || (part === 'middle' && pin === 'day' && !props.hasDayPin)}
                  onClick={() => props.onPin(part)}
                >
                  {part === 'day' ? 'as cut' : part}
                </button>
              ))}
          </div>
          <div className="pin-steps">
            <button type="button" aria-label="Pin one pace left" onClick={() => props.onPinStep(-1, 0)}>
              ←
            </button>
            <button type="button" aria-label="Pin one pace further" onClick={() => props.onPinStep(0, 1)}>
              ↑
            </button>
            <button type="button" aria-label="Pin one pace nearer" onClick={() => props.onPinStep(0, -1)}>
              ↓
            </button>
            <button type="button" aria-label="Pin one pace right" onClick={() => props.onPinStep(1, 0)}>
              →
            </button>
          </div>
        </fieldset>
      )}
    </Section>
  )
}

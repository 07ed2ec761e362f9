import type { ReactElement } from 'react'
import type { Day } from '#golf/course/day.ts'
import type { Reader } from '../desk/desk.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { compassPoint, firmnessWord, windSpeed } from '../words.ts'
import { StepSlider } from './step-slider.tsx'

/** How hard the wind blows and from where. */
export function WindSliders(props: {
  readonly wind: Day['wind']
  readonly reader: Reader
  /** How it blows on the hole looked at, after the point of the compass; empty for a whole course. */
  readonly onHole?: string
  readonly onSpeed: (metresPerSecond: number) => void
  readonly onFrom: (degrees: number) => void
}): ReactElement {
  const { wind, reader, onHole = '', onSpeed, onFrom } = props
  const { speedMetresPerSecond, fromDegrees } = wind
  return (
    <>
      <StepSlider
        label="Wind"
        value={speedMetresPerSecond}
        low={0}
        high={DESK_SETTINGS.mostWind}
        step={DESK_SETTINGS.windStep}
        words={windSpeed(speedMetresPerSecond, reader)}
        ends={['calm', windSpeed(DESK_SETTINGS.mostWind, reader)]}
        onChange={onSpeed}
      />
      <StepSlider
        label="From"
        value={fromDegrees}
        low={0}
        high={360 - DESK_SETTINGS.windFromStep}
        step={DESK_SETTINGS.windFromStep}
        words={`${compassPoint(fromDegrees)}${onHole === '' ? '' : `: ${onHole}`}`}
        ends={['north', 'round to north']}
        isRound
        onChange={onFrom}
      />
    </>
  )
}

/** How far the ball runs, and how fast the greens are. */
export function GroundSliders(props: {
  readonly day: Day
  readonly onFirmness: (firmness: number) => void
  readonly onGreenSpeed: (feet: number) => void
}): ReactElement {
  const { day, onFirmness, onGreenSpeed } = props
  return (
    <>
      <StepSlider
        label="Ground"
        value={day.firmness}
        low={DESK_SETTINGS.softest}
        high={DESK_SETTINGS.firmest}
        step={DESK_SETTINGS.firmnessStep}
        words={firmnessWord(day.firmness)}
        ends={['soft', 'firm']}
        onChange={onFirmness}
      />
      <StepSlider
        label="Greens"
        value={day.greenSpeedFeet}
        low={DESK_SETTINGS.slowestGreen}
        high={DESK_SETTINGS.fastestGreen}
        step={DESK_SETTINGS.greenSpeedStep}
        words={`${day.greenSpeedFeet} ft on the ramp`}
        ends={['slow', 'fast']}
        onChange={onGreenSpeed}
      />
    </>
  )
}

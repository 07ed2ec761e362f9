import type { ReactElement } from 'react'
import type { Day } from '#golf/course/day.ts'
import { DAY_RANGES } from '#golf/course/settings.ts'
import type { Reader } from '../desk/desk.ts'
import { StepSlider } from '../ledger/step-slider.tsx'
import { Chosen } from '../page/chosen.tsx'
import { DESK_SETTINGS } from '../settings.ts'
import { compassPoint, firmnessWord, windSpeed } from '../words.ts'

/** What the whole course has in common on a day: date, wind, air, ground, greens and grass. */
export function Weather(props: {
  readonly day: Day
  readonly reader: Reader
  readonly onDay: (change: Partial<Day>) => void
}): ReactElement {
  const { day, reader, onDay } = props
  const { speedMetresPerSecond, fromDegrees } = day.wind
  const wind = (change: Partial<Day['wind']>): void => onDay({ wind: { ...day.wind, ...change } })
  return (
    <>
      <div className="day-facts">
        <label>
          Date
          <input
            type="date"
            value={day.date ?? ''}
            onChange={({ currentTarget: { value } }) => onDay({ date: value === '' ? null : value })}
          />
        </label>
        <Chosen
          label="Rough"
          value={day.rough}
          of={ROUGHS.map((rough) => ({ id: rough, name: rough }))}
          onChoose={(id) => onDay({ rough: ROUGHS.find((rough) => rough === id) ?? 'normal' })}
        />
      </div>
      <StepSlider
        label="Wind"
        value={speedMetresPerSecond}
        low={0}
        high={DESK_SETTINGS.mostWind}
        step={DESK_SETTINGS.windStep}
        words={windSpeed(speedMetresPerSecond, reader)}
        ends={['calm', windSpeed(DESK_SETTINGS.mostWind, reader)]}
        onChange={(speed) => wind({ speedMetresPerSecond: speed })}
      />
      <StepSlider
        label="From"
        value={fromDegrees}
        low={0}
        high={360 - DESK_SETTINGS.windFromStep}
        step={DESK_SETTINGS.windFromStep}
        words={compassPoint(fromDegrees)}
        ends={['north', 'round to north']}
        isRound
        onChange={(degrees) => wind({ fromDegrees: degrees })}
      />
      <StepSlider
        label="Air"
        value={day.temperatureCelsius}
        low={DAY_RANGES.temperatureCelsius.from}
        high={DAY_RANGES.temperatureCelsius.to}
        step={1}
        words={`${Math.round(day.temperatureCelsius)} °C`}
        ends={['cold', 'hot']}
        onChange={(temperatureCelsius) => onDay({ temperatureCelsius })}
      />
      <StepSlider
        label="Ground"
        value={day.firmness}
        low={DESK_SETTINGS.softest}
        high={DESK_SETTINGS.firmest}
        step={DESK_SETTINGS.firmnessStep}
        words={firmnessWord(day.firmness)}
        ends={['soft', 'firm']}
        onChange={(firmness) => onDay({ firmness })}
      />
      <StepSlider
        label="Greens"
        value={day.greenSpeedFeet}
        low={DESK_SETTINGS.slowestGreen}
        high={DESK_SETTINGS.fastestGreen}
        step={DESK_SETTINGS.greenSpeedStep}
        words={`${day.greenSpeedFeet} ft on the ramp`}
        ends={['slow', 'fast']}
        onChange={(greenSpeedFeet) => onDay({ greenSpeedFeet })}
      />
    </>
  )
}

const ROUGHS = ['short', 'normal', 'long'] as const

import type { ReactElement } from 'react'
import type { Day } from '#golf/course/day.ts'
import { DAY_RANGES } from '#golf/course/settings.ts'
import type { Reader } from '../desk/desk.ts'
import { StepSlider } from '../ledger/step-slider.tsx'
import { GroundSliders, WindSliders } from '../ledger/weather-sliders.tsx'
import { Chosen } from '../page/chosen.tsx'

/** What the whole course has in common on a day: date, wind, air, ground, greens and grass. */
export function Weather(props: {
  readonly day: Day
  readonly reader: Reader
  readonly onDay: (change: Partial<Day>) => void
}): ReactElement {
  const { day, reader, onDay } = props
  const wind = (change: Partial<Day['wind']>): void => onDay({ wind: { ...day.wind, ...change } })
  return (
    <>
      <div className="typed-facts">
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
      <WindSliders
        wind={day.wind}
        reader={reader}
        onSpeed={(speedMetresPerSecond) => wind({ speedMetresPerSecond })}
        onFrom={(fromDegrees) => wind({ fromDegrees })}
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
      <GroundSliders
        day={day}
        onFirmness={(firmness) => onDay({ firmness })}
        onGreenSpeed={(greenSpeedFeet) => onDay({ greenSpeedFeet })}
      />
    </>
  )
}

const ROUGHS = ['short', 'normal', 'long'] as const

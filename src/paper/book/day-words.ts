import type { Day } from '#golf/course/day.ts'
import { METRES_PER_SECOND_PER_MPH } from '#numbers/units/units.ts'
import type { Ruler } from '../draw/ruler.ts'

/** The day that the plan is for, in one or two sentences. The wind is a forecast: at the course it may not be measured. */
export function dayWords(day: Day, ruler: Ruler): string {
  const { speedMetresPerSecond: speed, fromDegrees } = day.wind
  const wind =
    speed === 0
      ? 'no wind'
      : `wind ${ruler.sign === 'yd' ? `${Math.round(speed / METRES_PER_SECOND_PER_MPH)} mph` : `${Math.round(speed)} m/s`} from the ${pointOfCompass(fromDegrees)} as forecast`
  return `${day.date ?? 'Any day'}: ${wind}, ${Math.round(day.temperatureCelsius)} °C, ${firmnessWords(day.firmness)} ground, greens ${Number(day.greenSpeedFeet.toFixed(1))} ft on the ramp, rough ${day.rough}.`
}

const POINTS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west']

function pointOfCompass(degrees: number): string {
  return POINTS[((Math.round(degrees / 45) % 8) + 8) % 8] ?? 'north'
}

/** The three words of the day file for run: 0.4, 1 and 1.7 are soft, normal and firm; halfway between is the border. */
function firmnessWords(firmness: number): string {
  return firmness < 0.7 ? 'soft' : firmness > 1.35 ? 'firm' : 'normal'
}

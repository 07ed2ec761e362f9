import {
  CAPTURE_SPEED_METRES_PER_SECOND,
  RAMP_SPEED_METRES_PER_SECOND,
} from '../../src/golf/ball/green-settings.ts'
import { greenSlowing } from '../../src/golf/ball/green-slowing.ts'
import { simulateRoll } from '../../src/golf/ball/simulate-roll.ts'
import { angleOnlyChance, fitPuttingAngle } from '../../src/golf/player/fit-putting-angle.ts'
import { priorPutting } from '../../src/golf/player/prior-near-green.ts'
import { puttingValues } from '../../src/golf/player/putting-values.ts'
import { feetToMetres, metresToFeet } from '../../src/numbers/units/units.ts'
import { LEVELS } from './levels.ts'
import type { PublishedRow } from './published-row.ts'
import { referenceRows } from './reference-rows.ts'

const BOOK = 'Broadie, Every Shot Counts (2014), table 3.10'
const SKILL = 'Broadie 2008'

/** Expected putts and shares of the tour, distances by level, the fit to the putts of 1996, ramp and capture speed. */
export function greensRows(): PublishedRow[] {
  return [...tourRows(), ...levelRows(), ...fitRows(), ...rampRows()]
}

function tourRows(): PublishedRow[] {
  const tour = puttingValues({ putting: priorPutting(LEVELS.tour) })
  const rows = referenceRows('tour_putting.csv').filter((row) => Number(row.distance_ft) <= 60)
  const columns = [
    ['putts from', 'putts', 'published_expected_putts', 3, 0.03],
    ['one putt from', '%', 'published_one_putt_pct', 1, 2],
    ['three putts from', '%', 'published_three_putt_pct', 1, 1.6],
  ] as const
  return columns.flatMap(([name, unit, column, decimals, bound]) =>
    rows
      .filter((row) => row[column] !== '')
      .map((row) => {
        const metres = feetToMetres(Number(row.distance_ft))
        const [one, , three] = tour.shares(metres)
        const ours = { putts: tour.expected(metres), one: 100 * one, three: 100 * three }
        return {
          what: `tour player: ${name} ${row.distance_ft} ft`,
          unit,
          published: Number(row[column]),
          source: unit === 'putts' ? BOOK : 'Broadie, as quoted in print',
          // The status of the file's row is that of its expected putts; the three-putt shares were seen quoted.
          status: row.status === 'DERIVED' ? 'VERIFIED (b)' : (row.status ?? ''),
          ours: unit === 'putts' ? ours.putts : name.startsWith('one') ? ours.one : ours.three,
          decimals,
          bound,
        }
      }),
  )
}

function levelRows(): PublishedRow[] {
  const table = referenceRows('amateur_skill_broadie.csv')
  return (['one-putt 50% distance', 'two putts on average from'] as const).flatMap((quantity) => {
    const row = table.find((one) => one.quantity === quantity)
    return Object.entries(LEVELS).map(([level, handicap]) => {
      const putting = puttingValues({ putting: priorPutting(handicap) })
      const isHalf = quantity.startsWith('one')
      const ours = isHalf
        ? feetWhere((metres) => 1 - putting.shares(metres)[0], 0.5)
        : feetWhere((metres) => putting.expected(metres), 2)
      const published = Number(row?.[level])
      return {
        what: `${level}: ${isHalf ? 'half of the putts holed' : 'two putts on average'} from`,
        unit: 'ft',
        published,
        source: SKILL,
        status: row?.status ?? '',
        ours,
        decimals: 1,
        bound: 0.08 * published,
      }
    })
  })
}

function fitRows(): PublishedRow[] {
  const counts = referenceRows('putts_berry_1996.csv').map((row) => ({
    metres: feetToMetres(Number(row.distance_ft)),
    tries: Number(row.tries),
    holed: Number(row.holed),
  }))
  const sigma = fitPuttingAngle(counts)
  const source = 'Gelman & Nolan, Teaching Statistics 24 (2002), on the putts of 1996 (Berry)'
  const fitted = (
    what: string,
    unit: string,
    published: number,
    ours: number,
    decimals: number,
    bound: number,
    status = 'VERIFIED (a)',
  ): PublishedRow => ({ what, unit, published, source, status, ours, decimals, bound })
  return [
    fitted('spread of direction fitted to 5,988 putts', 'rad', 0.0267, sigma, 4, 0.0004),
    fitted('the same by greatest likelihood', 'rad', 0.026645, sigma, 6, 0.00001, 'DERIVED'),
    fitted('the same in degrees', '°', 1.5, (sigma * 180) / Math.PI, 2, 0.05),
    ...[
      [8, 38.5],
      [20, 16],
    ].map(([feet = 0, percent = 0]) =>
      fitted(
        `holed from ${feet} ft by the fitted angle alone`,
        '%',
        percent,
        100 * angleOnlyChance(feetToMetres(feet), sigma),
        1,
        1,
        'DERIVED',
      ),
    ),
  ]
}

function rampRows(): PublishedRow[] {
  const slowing = referenceRows('stimp_derived.csv')
    .filter((row) => row.slope_pct === '0')
    .map((row) => ({
      what: `slowing of a ball on a level green of ${row.level_stimp_ft} ft`,
      unit: 'm/s²',
      published: Number(row.deceleration_m_per_s2),
      source: 'ramp test: release at 6.00 ft/s, v²/2S',
      status: row.status ?? '',
      ours: greenSlowing(Number(row.level_stimp_ft)),
      decimals: 4,
      bound: 0.002,
    }))
  const slopes = referenceRows('stimp_derived.csv')
    .filter((row) => ['6', '8', '10', '12', '14'].includes(row.level_stimp_ft ?? '') && row.slope_pct !== '0')
    .flatMap((row) =>
      (['up', 'down'] as const).map((way) => ({
        what: `ramp test on a green of ${row.level_stimp_ft} ft, ${row.slope_pct} % ${way}`,
        unit: 'ft',
        published: Number(row[`roll_${way}_ft`]),
        source: 'ramp test: release at 6.00 ft/s; a rolling ball feels 5/7 of the slope',
        status: row.status ?? '',
        ours: rampFeet(Number(row.level_stimp_ft), (way === 'up' ? 1 : -1) * Number(row.slope_pct)),
        decimals: 2,
        // The derived file releases at 1.829 m/s and puts the slope for its sine.
        bound: 0.006 * Number(row[`roll_${way}_ft`]),
      })),
    )
  const capture = {
    what: 'fastest ball that the middle of the hole takes (a setting, taken over)',
    unit: 'm/s',
    published: 1.63,
    source: 'Holmes, American Journal of Physics 59 (1991)',
    status: 'VERIFIED (b)',
    ours: CAPTURE_SPEED_METRES_PER_SECOND,
    decimals: 2,
    bound: 0,
  }
  return [...slowing, ...slopes, capture]
}

/** How far the standard ramp's ball rolls straight up or down a slope, feet. */
function rampFeet(speedFeet: number, risePercent: number): number {
  const start = { x: 0, y: 0, headingRadians: 0, speed: RAMP_SPEED_METRES_PER_SECOND }
  const slopes = { gradientAt: () => [0, risePercent / 100] as const }
  return metresToFeet(simulateRoll(start, slopes, greenSlowing(speedFeet)).y)
}

/** Distance in feet at which a function that rises reaches the target. */
function feetWhere(rising: (metres: number) => number, target: number): number {
  let [low, high] = [1, 80]
  for (let step = 0; step < 40; step += 1) {
    const middle = (low + high) / 2
    if (rising(feetToMetres(middle)) < target) low = middle
    else high = middle
  }
  return low
}

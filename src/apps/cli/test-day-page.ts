import type { LearnedNearGreen } from '#golf/player/near-green-posterior.ts'
import type { Player } from '#golf/player/player.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
import { STATIONS, type Station } from '#golf/player/test-day-stations.ts'
import { beforeAndNow, nearGreenTable } from '#golf/round/near-green-table.ts'
import { METRES_PER_FOOT } from '#numbers/units/units.ts'
import { tableLines, wordTableLines } from './table.ts'
import { lengthText, type ReaderUnits } from './units-of-the-reader.ts'

const FEET_SHOWN = [3, 6, 10, 20, 30]

/** A station in words: `putt from 7 ft`, `chip from rough, 16 yd`. */
export function stationWords({ name, kind, metres }: Station, units: ReaderUnits): string {
  if (kind === 'putt')
    return `putt from ${units === 'yards' ? `${Math.round(metres / METRES_PER_FOOT)} ft` : `${metres} m`}`
  const [shot, lie] = name.split('-')
  const words = lie !== undefined && !/\d/.test(lie) ? `${shot} from ${lie}` : `from ${shot}`
  return `${words}, ${lengthText(metres, units)}`
}

/** What a test day says, for a person; without results the stations. */
export function testDayPage(player: Player, learned: LearnedNearGreen | null, units: ReaderUnits): string[] {
  if (learned === null)
    return [
      `Test day of ${player.name}: ${STATIONS.reduce((sum, { balls }) => sum + balls, 0)} balls in about 40 minutes.`,
      '',
      ...tableLines(
        [{ heading: 'station' }, { heading: 'as typed' }, { heading: 'balls', isFigure: true }],
        STATIONS.map((station) => [stationWords(station, units), station.name, String(station.balls)]),
      ),
      '',
      'Print the sheet with --sheet FILE.svg; type what was played as station,holed,leaves_ft (or leaves_m) and read it with --results FILE.csv.',
    ]
  return [
    `Test day of ${player.name}: ${learned.putts} putts, ${learned.shortShots} short shots.`,
    '',
    ...wordTableLines(nearGreenTable(learned)),
    '',
    'Chance of holing a putt:',
    ...tableLines(
      beforeAndNow('from'),
      FEET_SHOWN.map((feet) => {
        const metres = feet * METRES_PER_FOOT
        const [before, now] = [player, learned.player].map((one) => puttingValues(one).shares(metres)[0]) as [
          number,
          number,
        ]
        const [low, high] = learned.onePuttBand(metres)
        const from = units === 'yards' ? `${feet} ft` : `${metres.toFixed(1)} m`
        return [from, percent(before), percent(now), `${percent(low)} to ${percent(high)}`]
      }),
    ),
  ]
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`
}

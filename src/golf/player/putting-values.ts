import { READING_DIRECTION_SD_DEGREES, READING_DISTANCE_SD_SHARE } from './near-green-settings.ts'
import type { Player, Putting } from './player.ts'
import { type PuttingTable, puttingTable, puttingTableAt } from './putting-table.ts'

/** Putting of one player on a flat green. */
export interface PuttingValues {
  /** Expected putts from this distance, metres; 1 at the hole's edge, never falling with distance. */
  readonly expected: (metres: number) => number
  /** Chance of one, two, and three or more putts; adds up to 1. */
  readonly shares: (metres: number) => readonly [one: number, two: number, three: number]
}

const tables = new Map<string, PuttingTable>()
const MOST_TABLES = 256

/** Expected putts and their shares for this player by distance, out to 60 m (beyond it as at 60). Tables are kept by the two spreads. */
export function puttingValues(player: Pick<Player, 'putting'>): PuttingValues {
  const table = tableOf(player.putting)
  return {
    expected: (metres) => puttingTableAt(table.expected, metres),
    shares: (metres) => {
      const one = puttingTableAt(table.one, metres)
      const two = puttingTableAt(table.two, metres)
      return [one, two, Math.max(0, 1 - one - two)]
    },
  }
}

function tableOf(putting: Putting): PuttingTable {
  const key = `${putting.directionSdDegrees} ${putting.distanceSdShare}`
  const known = tables.get(key)
  if (known !== undefined) return known
  if (tables.size >= MOST_TABLES) tables.clear()
  const table = puttingTable(withReading(putting))
  tables.set(key, table)
  return table
}

/** The whole errors of putts on a flat green: the stroke's, and what reading and grass add. */
export function withReading(putting: Putting): Putting {
  return {
    directionSdDegrees: Math.hypot(putting.directionSdDegrees, READING_DIRECTION_SD_DEGREES),
    distanceSdShare: Math.hypot(putting.distanceSdShare, READING_DISTANCE_SD_SHARE),
  }
}

import { CAPTURE_SPEED_METRES_PER_SECOND, HOLE_RADIUS_METRES } from '../../src/golf/ball/green-settings.ts'
import { greenSlowing } from '../../src/golf/ball/green-slowing.ts'
import { PUTT_PAST_METRES, PUTTING_GREEN_SPEED_FEET } from '../../src/golf/player/near-green-settings.ts'
import type { Player } from '../../src/golf/player/player.ts'
import { withReading } from '../../src/golf/player/putting-values.ts'
import { degreesToRadians } from '../../src/numbers/units/units.ts'
import { numbersOfStroke } from './numbers-of-stroke.ts'

/** Two standard normal numbers: of pace and of direction. */
type Putted = readonly [pace: number, direction: number]

/** Putting of one simulated player on a level green, ball by ball. */
export interface SimulatedPutting {
  /** Where a putt from so far stops, metres from the hole; 0 = holed. */
  readonly putt: (metres: number, how: Putted) => number
  /** Mean putts by our own strikes: only for choosing, never for the score. */
  readonly worth: (metres: number) => number
}

const SLOWING = greenSlowing(PUTTING_GREEN_SPEED_FEET)
const STEP_METRES = 0.5
const FURTHEST_METRES = 40
const STRIKES = 150
const SWEEPS = 3

/** The putter of a player: how far past the hole is meant is found by putting with each pace from every half metre. */
export function simulatedPutting({ putting }: Pick<Player, 'putting'>): SimulatedPutting {
  const { directionSdDegrees, distanceSdShare } = withReading(putting)
  const turn = degreesToRadians(directionSdDegrees)
  const count = FURTHEST_METRES / STEP_METRES
  const past = new Float64Array(count + 1)
  const worths = new Float64Array(count + 1).fill(2)
  const strikes = Array.from({ length: STRIKES }, (_, k): Putted => {
    const { normal } = numbersOfStroke(1, 0, k)
    return [normal(0), normal(1)]
  })
  const puttPast = (metres: number, meant: number, [pace, direction]: Putted): number => {
    const rolls = Math.max(0, (metres + meant) * (1 + distanceSdShare * pace))
    const angle = turn * direction
    const along = metres * Math.cos(angle)
    const aside = Math.abs(metres * Math.sin(angle))
    if (rolls >= along) {
      const speed = Math.sqrt(2 * SLOWING * (rolls - along))
      if (speed <= CAPTURE_SPEED_METRES_PER_SECOND * (1 - (aside / HOLE_RADIUS_METRES) ** 2)) return 0
    }
    return Math.hypot(rolls - along, aside)
  }
  const worth = (metres: number): number => {
    const at = Math.min(count - 1e-9, metres / STEP_METRES)
    const low = Math.floor(at)
    return (worths[low] as number) * (1 + low - at) + (worths[low + 1] as number) * (at - low)
  }
  worths[0] = 1
  for (let sweep = 0; sweep < SWEEPS; sweep++)
    for (let node = 1; node <= count; node++) {
      let least = Number.POSITIVE_INFINITY
      for (const meant of PUTT_PAST_METRES) {
        let strokes = 0
        for (const strike of strikes) {
          const rest = puttPast(node * STEP_METRES, meant, strike)
          strokes += 1 + (rest === 0 ? 0 : worth(rest))
        }
        if (strokes >= least) continue
        least = strokes
        past[node] = meant
      }
      worths[node] = least / STRIKES
    }
  return {
    worth,
    putt: (metres, how) => {
      const node = Math.min(count, Math.max(1, Math.round(metres / STEP_METRES)))
      return puttPast(metres, past[node] as number, how)
    },
  }
}

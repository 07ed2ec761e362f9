import { rollPast } from '#golf/ball/simulate-roll.ts'
import { solvePuttStart } from '#golf/ball/solve-putt-start.ts'
import { aimPuttInto } from './aim-putt.ts'
import type { GreenPutting, GreenRolls } from './green-putting.ts'
import type { Player } from './player.ts'
import { emptyScatter } from './putt-scatter.ts'
import { puttingValues } from './putting-values.ts'
import { rollChart } from './roll-chart.ts'

/** How a putt runs: what a player would have to see. */
export interface PuttLine {
  /** Straight to the hole, metres. */
  readonly distanceMetres: number
  /** How far beside the hole the start line passes, metres; positive = aimed to the right of it, so the putt breaks left. */
  readonly breakMetres: number
  /** Direction of the start line, radians clockwise from the y axis. */
  readonly headingRadians: number
  /** Length of the level putt that needs the same pace to come to the hole as fast, metres. */
  readonly playingMetres: number
  /** m/s at the start. */
  readonly speed: number
  /** How far from the hole the ball would stop if it did not fall, metres. */
  readonly pastMetres: number
}

/** A reading for a lesson: the line, and what this player may expect of the putt. */
export interface PuttReading extends PuttLine {
  readonly expectedPutts: number
  readonly onePutt: number
  /** Three putts or more. */
  readonly threePutt: number
  /** How far from the hole a missed ball lies on average, metres. */
  readonly leaveMetres: number
}

/**
 * The line of a ball that would roll `past` metres beyond the hole were the green level; `null` where no ball comes to the
 * hole so slowly, or at the hole itself.
 */
export function puttLine(
  from: readonly [x: number, y: number],
  rolls: Pick<GreenRolls, 'hole' | 'slopes' | 'slowing'>,
  past: number,
): PuttLine | null {
  const { hole, slopes, slowing } = rolls
  const speedAtHole = Math.sqrt(2 * slowing * past)
  const start = solvePuttStart({ from, hole, slopes, slowing, speedAtHole })
  if (start === null) return null
  const straight = Math.atan2(hole[0] - from[0], hole[1] - from[1])
  const distanceMetres = Math.hypot(hole[0] - from[0], hole[1] - from[1])
  const rest = rollPast({ x: from[0], y: from[1], ...start }, slopes, slowing, hole)
  return {
    distanceMetres,
    breakMetres: distanceMetres * Math.sin(start.headingRadians - straight),
    headingRadians: start.headingRadians,
    playingMetres: (start.speed ** 2 - speedAtHole ** 2) / (2 * slowing),
    speed: start.speed,
    pastMetres: Math.hypot(rest.x - hole[0], rest.y - hole[1]),
  }
}

/**
 * Reads a putt for a lesson, at the pace with the fewest expected putts for this player. Green reading is for lessons and
 * practice, never for a counting round (Rules of Golf 2023, 4.3a). `null` as in {@link puttLine}.
 */
export function readPutt(
  from: readonly [x: number, y: number],
  player: Pick<Player, 'putting'>,
  rolls: GreenRolls,
  putting: GreenPutting,
): PuttReading | null {
  const { hole, slopes, slowing } = rolls
  const chart = rollChart(from, hole, slopes, slowing)
  if (chart === null) return null
  const scatter = emptyScatter()
  const aim = aimPuttInto(scatter, chart, player.putting, slowing, putting.puttsAt)
  const line = puttLine(from, rolls, aim.past)
  if (line === null) return null
  let [missed, left] = [0, 0]
  for (let ball = 0; ball < scatter.count; ball += 1) {
    missed += scatter.weight[ball] ?? 0
    left +=
      (scatter.weight[ball] ?? 0) *
      Math.hypot((scatter.x[ball] ?? 0) - hole[0], (scatter.y[ball] ?? 0) - hole[1])
  }
  const [flatOne, flatTwo] = puttingValues(player).shares(line.distanceMetres)
  const [addedOne, addedTwo] = putting.sharesAt(...from)
  const onePutt = Math.min(1, Math.max(0, flatOne + addedOne))
  return {
    ...line,
    expectedPutts: putting.puttsAt(...from),
    onePutt,
    threePutt: Math.min(1 - onePutt, Math.max(0, 1 - onePutt - flatTwo - addedTwo)),
    leaveMetres: missed > 0 ? left / missed : 0,
  }
}

import { CAPTURE_SPEED_METRES_PER_SECOND } from '#golf/ball/green-settings.ts'
import { captureWidth } from '#golf/ball/hole-pass.ts'
import { normalCdf, normalPdf, normalQuantile } from '#numbers/statistics/normal.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import {
  READING_BREAK_SHARE,
  READING_DIRECTION_SD_DEGREES,
  READING_DISTANCE_SD_SHARE,
} from './near-green-settings.ts'
import type { Putting } from './player.ts'
import { atSpeed, paceOfSpeed, type RollChart, restInto, speedOfPace } from './roll-chart.ts'

/** How a putt is meant: how far past the hole the ball would roll were the green level, metres, and for how much slower a ball it is aimed. */
export interface PuttAim {
  readonly past: number
  /** 0: on the line of the ball as meant; 1: on that of a ball one standard deviation slower, which breaks more. */
  readonly slower: number
}

/** Where the balls of one putt end: the chance that it falls, and the rests of those that do not, in the chart's plane. */
export interface PuttScatter {
  holed: number
  count: number
  readonly x: Float64Array
  readonly y: Float64Array
  /** With `holed` they add up to 1. */
  readonly weight: Float64Array
}

/** Four-point Gauss–Legendre rule on [−1, 1]: abscissae and weights. */
const GAUSS = [
  [-0.8611363115940526, 0.3478548451374538],
  [-0.3399810435848563, 0.6521451548625461],
  [0.3399810435848563, 0.6521451548625461],
  [0.8611363115940526, 0.3478548451374538],
] as const
const FURTHEST_Z = 4
const STRATA = 2
/** Of so few balls, none is followed. */
const NO_BALLS = 1e-9

/** An empty scatter to be written into. */
export function emptyScatter(): PuttScatter {
  const most = 3 * GAUSS.length * 2 * STRATA
  return {
    holed: 0,
    count: 0,
    x: new Float64Array(most),
    y: new Float64Array(most),
    weight: new Float64Array(most),
  }
}

/**
 * Scatters one putt of a player over a chart. Pace errs by a normal share: the stroke's of what the ball is given, the
 * reading's of the way it rolls. Direction errs by a normal angle; the reading's grows with the break, and with how much a
 * ball so slow obeys a fall across it that nobody saw: its way over its playing length. A ball is holed when its start
 * line takes it by the hole within the width that the hole takes at its speed there.
 */
export function scatterInto(
  scatter: PuttScatter,
  chart: RollChart,
  putting: Putting,
  aim: PuttAim,
  slowing: number,
): void {
  // No ball is meant to come more slowly than any can.
  const speed = Math.max(Math.sqrt(2 * slowing * aim.past), slowestOf(chart))
  const pace = paceOfSpeed(chart, speed, slowing)
  const line = atSpeed(chart, chart.line, speed)
  const past = speed ** 2 / (2 * slowing)
  const paceSd = Math.hypot(
    putting.distanceSdShare * pace,
    READING_DISTANCE_SD_SHARE * (chart.distance + past),
  )
  const obeys = (chart.distance + past) / pace
  const lineSd = Math.hypot(
    degreesToRadians(Math.hypot(putting.directionSdDegrees, READING_DIRECTION_SD_DEGREES * obeys)),
    READING_BREAK_SHARE * line,
  )
  const lineOf = (rolls: number): number => atSpeed(chart, chart.line, speedOfPace(chart, rolls, slowing))
  const aimed = line + aim.slower * (lineOf(pace - paceSd) - line)
  const reaches = (atSpeed(chart, chart.playing, 0) - pace) / paceSd
  const tooFast = (paceOfSpeed(chart, CAPTURE_SPEED_METRES_PER_SECOND, slowing) - pace) / paceSd
  const cuts = [-FURTHEST_Z, clampZ(reaches), Math.max(clampZ(reaches), clampZ(tooFast)), FURTHEST_Z]
  const rest: [number, number] = [0, 0]
  let mass = 0
  let holed = 0
  scatter.count = 0
  for (let panel = 0; panel < 3; panel += 1) {
    const [from = 0, to = 0] = [cuts[panel], cuts[panel + 1]]
    if (to <= from) continue
    for (const [abscissa, gauss] of GAUSS) {
      const z = (from + to) / 2 + (abscissa * (to - from)) / 2
      const weight = (gauss * (to - from) * normalPdf(z)) / 2
      const rolls = Math.max(0, pace + paceSd * z)
      let [below, above] = [0.5, 0.5]
      if (panel === 1) {
        const passing = speedOfPace(chart, rolls, slowing)
        const gain = Math.max(1e-6, atSpeed(chart, chart.gain, passing))
        const half = Math.asin(Math.min(1, captureWidth(passing) / gain))
        const middle = atSpeed(chart, chart.line, passing) - aimed
        below = normalCdf((middle - half) / lineSd)
        above = normalCdf(-(middle + half) / lineSd)
      }
      mass += weight
      holed += weight * Math.max(0, 1 - below - above)
      for (let side = -1; side <= 1; side += 2) {
        const missed = side < 0 ? below : above
        if (missed < NO_BALLS) continue
        for (let stratum = 0; stratum < STRATA; stratum += 1) {
          const off = -side * lineSd * normalQuantile((missed * (stratum + 0.5)) / STRATA)
          restInto(rest, chart, rolls, aimed + off)
          scatter.x[scatter.count] = rest[0]
          scatter.y[scatter.count] = rest[1]
          scatter.weight[scatter.count] = (weight * missed) / STRATA
          scatter.count += 1
        }
      }
    }
  }
  scatter.holed = holed / mass
  for (let ball = 0; ball < scatter.count; ball += 1)
    scatter.weight[ball] = (scatter.weight[ball] ?? 0) / mass
}

/** On ground so steep that none comes slowly, the slowest speed solved for; else 0. */
function slowestOf(chart: RollChart): number {
  const slowest = chart.speeds[0] ?? 0
  return slowest > SLOW_SPEED ? slowest : 0
}
const SLOW_SPEED = 0.5

function clampZ(z: number): number {
  return Math.max(-FURTHEST_Z, Math.min(FURTHEST_Z, z))
}

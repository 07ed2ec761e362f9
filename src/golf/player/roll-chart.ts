import { TABLE_PUTT_TOLERANCE_METRES, TABLE_ROLL_STEP } from '#golf/ball/green-settings.ts'
import { type Roll, rollPast, type Slopes } from '#golf/ball/simulate-roll.ts'
import { type PuttStart, solvePuttStart } from '#golf/ball/solve-putt-start.ts'
import { degreesToRadians } from '#numbers/units/units.ts'

/**
 * What a ball does that is putted from one place, for any pace and start line. Paces are level metres: v²/2a, how far
 * the ball would roll on the same green made level. Directions are radians to the right of the straight line to the hole.
 */
export interface RollChart {
  readonly distance: number
  /** Of the straight line to the hole, radians clockwise from the y axis. */
  readonly straightRadians: number
  readonly from: readonly [x: number, y: number]
  /** m/s over the middle of the hole, rising; the next three hold what a ball needs and meets at each. */
  readonly speeds: Float64Array
  /** Level metres to the hole: pace less what is left at it. */
  readonly playing: Float64Array
  /** Start line over the middle of the hole. */
  readonly line: Float64Array
  /** Metres by which a ball passes the hole over the sine of the angle that it starts off that line: the distance, on a level green. */
  readonly gain: Float64Array
  /** Paces at which rests are known, rising, and the start line in the middle of each three. */
  readonly paces: Float64Array
  readonly middle: Float64Array
  /** Where balls stop, three start lines a pace: metres for each level metre, and radians to the right of the start line. */
  readonly stretch: Float64Array
  readonly turn: Float64Array
}

/** Speeds over the hole that putts are solved for, m/s, and where no ball comes so slowly, faster ones. */
const SPEEDS = [0.3, 0.8, 1.4] as const
const FAST_SPEEDS = [0.9, 1.2, 1.5] as const
/** Start lines to each side at which balls are rolled. */
const SIDE_RADIANS: number = degreesToRadians(3)
/** Paces beyond the slowest and fastest putts over the hole at which balls are rolled, as shares of them. */
const SHORT_SHARE = 0.6
const LONG_SHARE = 1.35

/** Rolls of every putt from a place over these slopes; `null` where no ball can be putted so that it falls. */
export function rollChart(
  from: readonly [x: number, y: number],
  hole: readonly [x: number, y: number],
  slopes: Slopes,
  slowing: number,
): RollChart | null {
  return chartAt(from, hole, slopes, slowing, SPEEDS) ?? chartAt(from, hole, slopes, slowing, FAST_SPEEDS)
}

function chartAt(
  from: readonly [x: number, y: number],
  hole: readonly [x: number, y: number],
  slopes: Slopes,
  slowing: number,
  speeds: readonly number[],
): RollChart | null {
  const straightRadians = Math.atan2(hole[0] - from[0], hole[1] - from[1])
  const distance = Math.hypot(hole[0] - from[0], hole[1] - from[1])
  const starts: PuttStart[] = []
  for (const speedAtHole of speeds) {
    const start = solvePuttStart({
      from,
      hole,
      slopes,
      slowing,
      speedAtHole,
      arrivalRadians: starts.at(-1)?.arrivalRadians ?? straightRadians,
      step: TABLE_ROLL_STEP,
      toleranceMetres: TABLE_PUTT_TOLERANCE_METRES,
    })
    if (start === null) return null
    starts.push(start)
  }
  const line = Float64Array.from(starts, (start) => start.headingRadians - straightRadians)
  const levels = starts.map(({ speed }) => speed ** 2 / (2 * slowing))
  const [slow = 0, fast = 0] = [levels[0], levels.at(-1)]
  const paces = Float64Array.of(SHORT_SHARE * slow, slow, fast, LONG_SHARE * fast)
  const [slowLine = 0, fastLine = 0] = [line[0], line.at(-1)]
  const middle = Float64Array.of(slowLine, slowLine, fastLine, fastLine)
  const stretch = new Float64Array(12)
  const turn = new Float64Array(12)
  const gains = new Float64Array(4)
  for (let pace = 0; pace < 4; pace += 1) {
    const rolls: Roll[] = []
    for (let side = 0; side < 3; side += 1) {
      const start = (middle[pace] ?? 0) + (side - 1) * SIDE_RADIANS
      const headingRadians = straightRadians + start
      const speed = Math.sqrt(2 * slowing * (paces[pace] ?? 0))
      const roll = rollPast(
        { x: from[0], y: from[1], headingRadians, speed },
        slopes,
        slowing,
        hole,
        TABLE_ROLL_STEP,
      )
      const [right, ahead] = [roll.x - from[0], roll.y - from[1]]
      stretch[3 * pace + side] = Math.hypot(right, ahead) / (paces[pace] ?? 1)
      turn[3 * pace + side] = lessTurns(Math.atan2(right, ahead) - headingRadians)
      rolls.push(roll)
    }
    gains[pace] = gainOf(rolls, distance)
  }
  const [slowGain = distance, fastGain = distance] = [gains[1], gains[2]]
  return {
    distance,
    straightRadians,
    from,
    speeds: Float64Array.from(speeds),
    playing: Float64Array.from(levels, (level, index) => level - (speeds[index] ?? 0) ** 2 / (2 * slowing)),
    line,
    gain: Float64Array.of(slowGain, (slowGain + fastGain) / 2, fastGain),
    paces,
    middle,
    stretch,
    turn,
  }
}

/** The same for a level green, without rolling a ball. */
export function levelRollChart(distance: number, slowing: number): RollChart {
  const levels = SPEEDS.map((speed) => distance + speed ** 2 / (2 * slowing))
  const [slow = 0, fast = 0] = [levels[0], levels.at(-1)]
  return {
    distance,
    straightRadians: 0,
    from: [0, -distance],
    speeds: Float64Array.from(SPEEDS),
    playing: new Float64Array(3).fill(distance),
    line: new Float64Array(3),
    gain: new Float64Array(3).fill(distance),
    paces: Float64Array.of(SHORT_SHARE * slow, slow, fast, LONG_SHARE * fast),
    middle: new Float64Array(4),
    stretch: new Float64Array(12).fill(1),
    turn: new Float64Array(12),
  }
}

/** One of the quantities of a chart at a speed over the hole; straight pieces between the solved speeds and beyond them. */
export function atSpeed(chart: RollChart, quantity: Float64Array, speed: number): number {
  const piece = speed < (chart.speeds[1] ?? 0) ? 0 : 1
  const [low = 0, high = 0] = [chart.speeds[piece], chart.speeds[piece + 1]]
  const share = (speed - low) / (high - low)
  return (quantity[piece] ?? 0) * (1 - share) + (quantity[piece + 1] ?? 0) * share
}

/** Pace, level metres, of a ball that goes over the middle of the hole at this speed. */
export function paceOfSpeed(chart: RollChart, speed: number, slowing: number): number {
  return atSpeed(chart, chart.playing, speed) + speed ** 2 / (2 * slowing)
}

/** Speed over the middle of the hole of a ball with this pace; 0 for one that does not reach it. */
export function speedOfPace(chart: RollChart, pace: number, slowing: number): number {
  let speed = 0
  // The playing length hardly changes with the speed, so this settles at once.
  for (let round = 0; round < 4; round += 1)
    speed = Math.sqrt(Math.max(0, 2 * slowing * (pace - atSpeed(chart, chart.playing, speed))))
  return speed
}

/** Writes where a ball of this pace and start line stops, metres in the chart's plane. */
export function restInto(out: [number, number], chart: RollChart, pace: number, line: number): void {
  const { paces, middle } = chart
  const piece = pace < (paces[1] ?? 0) ? 0 : pace < (paces[2] ?? 0) ? 1 : 2
  const [low = 0, high = 1] = [paces[piece], paces[piece + 1]]
  const share = Math.min(1, Math.max(0, (pace - low) / (high - low)))
  const below = (line - (middle[piece] ?? 0)) / SIDE_RADIANS
  const above = (line - (middle[piece + 1] ?? 0)) / SIDE_RADIANS
  const stretch =
    (1 - share) * through(chart.stretch, piece, below) + share * through(chart.stretch, piece + 1, above)
  const turn = (1 - share) * through(chart.turn, piece, below) + share * through(chart.turn, piece + 1, above)
  const heading = chart.straightRadians + line + turn
  out[0] = chart.from[0] + pace * Math.max(0, stretch) * Math.sin(heading)
  out[1] = chart.from[1] + pace * Math.max(0, stretch) * Math.cos(heading)
}

/** The parabola through three values at −1, 0 and 1; straight beyond twice that, where it would be a guess. */
function through(values: Float64Array, pace: number, at: number): number {
  const [left = 0, middle = 0, right = 0] = [values[3 * pace], values[3 * pace + 1], values[3 * pace + 2]]
  const slope = (right - left) / 2
  const bend = (right + left) / 2 - middle
  const held = Math.max(-2, Math.min(2, at))
  return middle + slope * held + bend * held * held + (at - held) * (slope + 2 * bend * held)
}

/** Metres of offset at the hole over the sine of the start's angle, from the balls on both sides; from one where the other stopped short. */
function gainOf(rolls: readonly Roll[], distance: number): number {
  const [left, , right] = rolls.map(({ pass }) => pass?.offsetMetres)
  const gain =
    left !== undefined && right !== undefined
      ? (right - left) / (2 * Math.sin(SIDE_RADIANS))
      : right !== undefined
        ? right / Math.sin(SIDE_RADIANS)
        : left !== undefined
          ? -left / Math.sin(SIDE_RADIANS)
          : distance
  return gain > 0 ? gain : distance
}

/** The same angle between −π and π. */
function lessTurns(radians: number): number {
  return radians - 2 * Math.PI * Math.round(radians / (2 * Math.PI))
}

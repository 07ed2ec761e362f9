import { CAPTURE_SPEED_METRES_PER_SECOND, HOLE_RADIUS_METRES } from '../../src/golf/ball/green-settings.ts'
import { greenSlowing } from '../../src/golf/ball/green-slowing.ts'
import type { Ground } from '../../src/golf/course/ground.ts'
import type { Lie, Player } from '../../src/golf/player/player.ts'
import {
  FAT_CARRY,
  FAT_SAND_CARRY,
  FAT_SHARE,
  LADDER_GREEN_SPEED_FEET,
  SHORT_METRES_FROM,
  THIN_CARRY,
  THIN_ROLL_FACTOR,
  THIN_SAND_CARRY,
} from '../../src/golf/player/short-game-settings.ts'
import { type ShortShot, shortShots } from '../../src/golf/player/short-shots.ts'
import { degreesToRadians } from '../../src/numbers/units/units.ts'
import type { GroundUnder } from './ground-grid.ts'
import { type NumbersOfStroke, numbersOfStroke } from './numbers-of-stroke.ts'
import type { SimulatedPutting } from './play-putts.ts'

type Point = readonly [x: number, y: number]

/** A short shot as it is meant: which, and how far it flies, metres. */
interface ShortChoice {
  readonly shot: ShortShot
  readonly carry: number
}

/** Plays one short shot at the flag; `holed`, or where it stopped. */
export type PlayChip = (from: Point, lie: Lie, numbers: NumbersOfStroke) => Point | 'holed'

/** How each ground slows a rolling ball, feet on the ramp, and what rolling energy a landing there keeps. Our own round figures, in the order of common practice. */
const GROUND: Readonly<Partial<Record<Ground, { readonly ramp: number; readonly keeps: number }>>> = {
  fairway: { ramp: 5, keeps: 0.8 },
  tee: { ramp: 5, keeps: 0.8 },
  rough: { ramp: 1.2, keeps: 0.25 },
  heavy: { ramp: 0.6, keeps: 0.1 },
}
const SAND = { ramp: 0.4, keeps: 0 } as const
const LADDER_SLOWING = greenSlowing(LADDER_GREEN_SPEED_FEET)
const ROLL_STEP_METRES = 0.5

/** Plays balls about a level green: carries, bounces and rolls over the grid, falls in the hole where it goes by slowly enough. */
function chipOver(groundUnder: GroundUnder, pin: Point, greenFeet: number) {
  const of = (ground: Ground): { readonly ramp: number; readonly keeps: number } =>
    ground === 'green' ? { ramp: greenFeet, keeps: 1 } : (GROUND[ground] ?? SAND)
  return (from: Point, { shot, carry }: ShortChoice, numbers: NumbersOfStroke): Point | 'holed' => {
    const { spread, kind, rollPerCarry } = shot
    const isPoor = numbers.uniform(0) < spread.poorShare
    const isFat = numbers.uniform(1) < FAT_SHARE
    const [fat, thin] = kind === 'sand' ? [FAT_SAND_CARRY, THIN_SAND_CARRY] : [FAT_CARRY, THIN_CARRY]
    const total = carry * (1 + rollPerCarry)
    const sd =
      spread.carrySdShare + (spread.carrySdMetres * (1 - Math.exp(-total / SHORT_METRES_FROM))) / total
    const [mean, scatter] = isPoor ? (isFat ? fat : thin) : [1, sd]
    const flies = carry * Math.max(0.02, mean + scatter * numbers.normal(2))
    const rolls =
      flies *
      rollPerCarry *
      Math.max(0, 1 + spread.rollSdShare * numbers.normal(3)) *
      (isPoor && !isFat ? THIN_ROLL_FACTOR : 1)
    const heading =
      Math.atan2(pin[0] - from[0], pin[1] - from[1]) +
      degreesToRadians(spread.directionSdDegrees) * numbers.normal(4)
    const [east, north] = [Math.sin(heading), Math.cos(heading)]
    let [x, y] = [from[0] + flies * east, from[1] + flies * north]
    // The square of the speed, which falls evenly with the way.
    let square = 2 * LADDER_SLOWING * rolls * of(groundUnder(x, y)).keeps
    for (;;) {
      const ground = groundUnder(x, y)
      const slowing = 2 * greenSlowing(of(ground).ramp)
      const step = Math.min(ROLL_STEP_METRES, square / slowing)
      const ahead = (pin[0] - x) * east + (pin[1] - y) * north
      if (ahead >= 0 && ahead <= step) {
        const aside = Math.hypot(pin[0] - x - ahead * east, pin[1] - y - ahead * north)
        const speed = Math.sqrt(square - slowing * ahead)
        if (speed <= CAPTURE_SPEED_METRES_PER_SECOND * (1 - (aside / HOLE_RADIUS_METRES) ** 2)) return 'holed'
      }
      x += step * east
      y += step * north
      square -= slowing * step
      if (step < ROLL_STEP_METRES) return [x, y]
    }
  }
}

const LONGEST_METRES = 50
const PASTS_METRES = [0, 0.5, 1.2] as const
const STRIKES = 120
/** About the radius of a green of the study: on which a player makes up his mind how to chip. */
const PLAIN_GREEN_METRES = 12

/** The short game of one simulated player on a hole: from each lie and metre the shot that came out best in trials on a plain round green. */
export function simulatedChips(
  player: Player,
  putting: SimulatedPutting,
  { groundUnder, pin, greenFeet }: { groundUnder: GroundUnder; pin: Point; greenFeet: number },
): PlayChip {
  const choices = new Map<string, ShortChoice>()
  const strikes = Array.from({ length: STRIKES }, (_, k) => {
    const { normal, uniform } = numbersOfStroke(2, 0, k)
    const [uniforms, normals] = [[0, 1].map(uniform), [0, 1, 2, 3, 4].map(normal)]
    return {
      uniform: (which: number) => uniforms[which] as number,
      normal: (which: number) => normals[which] as number,
    }
  })
  const missed = 1 + putting.worth(PLAIN_GREEN_METRES / 2)
  function choose(lie: Lie, metres: number): ShortChoice {
    const known = choices.get(`${lie} ${metres}`)
    if (known !== undefined) return known
    const own: Ground = lie === 'fairway' || lie === 'heavy' || lie === 'bunker' ? lie : 'rough'
    const radius = Math.min(PLAIN_GREEN_METRES, 0.9 * metres)
    const chip = chipOver(
      (x, y) => (Math.hypot(x, y) <= radius ? 'green' : y < 0 ? own : 'rough'),
      [0, 0],
      greenFeet,
    )
    let best: ShortChoice | null = null
    let least = Number.POSITIVE_INFINITY
    for (const shot of shortShots(player, lie))
      for (const past of PASTS_METRES) {
        if (shot.kind === 'putt') continue
        const meant = (metres + past) / (1 + (shot.rollPerCarry * greenFeet) / LADDER_GREEN_SPEED_FEET)
        const carry = Math.min(shot.carryMetres[1], Math.max(shot.carryMetres[0], meant))
        let strokes = 0
        for (const strike of strikes) {
          const end = chip([0, -metres], { shot, carry }, strike)
          if (end === 'holed') continue
          const left = Math.hypot(...end)
          strokes += left <= PLAIN_GREEN_METRES ? putting.worth(left) : missed
        }
        if (strokes >= least) continue
        least = strokes
        best = { shot, carry }
      }
    if (best === null) throw new Error(`no short shot from ${lie} at ${metres} m`)
    choices.set(`${lie} ${metres}`, best)
    return best
  }
  const chip = chipOver(groundUnder, pin, greenFeet)
  return (from, lie, numbers) => {
    const metres = Math.hypot(pin[0] - from[0], pin[1] - from[1])
    return chip(from, choose(lie, Math.min(LONGEST_METRES, Math.max(2, Math.round(metres)))), numbers)
  }
}

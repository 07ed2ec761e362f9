import type { ShortShot } from '#golf/player/short-shots.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { playShortShot, type ShortAim, shortBall, strokesOf } from './play-short-shot.ts'
import { GREEN, type ShortScene } from './short-scene.ts'
import type { ShortStrikes } from './short-strikes.ts'

/** A shot with an aim and what it costs. */
export interface ShortCandidate {
  readonly shot: ShortShot
  readonly aim: ShortAim
  readonly strokes: number
}

/** How many aims are tried. */
export interface AimSearch {
  /** How far past the hole a ball that goes as meant should stop, metres; the best is taken. */
  readonly past: readonly number[]
  /** Landing spots tried on the green whatever the roll, metres from its edge. */
  readonly on: readonly number[]
  /** Lengths tried about the best one, as shares of it, and then lines beside it, degrees. */
  readonly shares: readonly number[]
  readonly lines: readonly number[]
}

/** For a plan: the landing spots a pace and two on are those of the trade's rule. */
const WHOLE_SEARCH: AimSearch = {
  past: [-0.3, 0.3, 0.9],
  on: [0.9, 1.8],
  shares: [0.9, 0.95, 1.05, 1.1],
  lines: [-4, -2, 2, 4],
}

/** For the field of a hole, where differences count and not the last hundredth. */
export const QUICK_SEARCH: AimSearch = { past: [0.3], on: [1.2], shares: [0.9, 1.1], lines: [] }

const SOLVES = 8
const EDGE_STEP_METRES = 0.25

/**
 * The cheapest landing spot and line of one shot from a place: of those that would stop near the hole, of those that land
 * a pace on the green, and of their neighbours. `null` when the shot cannot be played so short or so long.
 */
export function bestShortAim(
  scene: ShortScene,
  shot: ShortShot,
  from: readonly [number, number],
  strikes: ShortStrikes,
  search: AimSearch = WHOLE_SEARCH,
): ShortCandidate | null {
  const distance = Math.hypot(scene.pin[0] - from[0], scene.pin[1] - from[1])
  const [least, most] = shot.carryMetres
  let best: ShortCandidate | null = null
  const tried = new Set<string>()
  const attempt = (carry: number, heading: number): void => {
    const held = Math.min(most, Math.max(least, carry))
    const key = `${held.toFixed(2)} ${heading.toFixed(4)}`
    if (held > 1.6 * distance + 5 || tried.has(key)) return
    tried.add(key)
    const aim = { carryMetres: held, heading }
    const strokes = strokesOf(scene, playShortShot(scene, shot, from, aim, strikes))
    if (best === null || strokes < best.strokes) best = { shot, aim, strokes }
  }
  for (const past of search.past) {
    const aim = aimPast(scene, shot, from, distance, past)
    attempt(aim.carryMetres, aim.heading)
  }
  const toPin = Math.atan2(scene.pin[0] - from[0], scene.pin[1] - from[1])
  if (shot.kind !== 'putt')
    for (const on of search.on) attempt(edgeOfGreen(scene, from, distance) + on, toPin)
  const middle = best as ShortCandidate | null
  if (middle === null) return null
  for (const share of search.shares) attempt(middle.aim.carryMetres * share, middle.aim.heading)
  const finer = best as ShortCandidate | null
  if (finer !== null)
    for (const degrees of search.lines)
      attempt(finer.aim.carryMetres, finer.aim.heading + degreesToRadians(degrees))
  return best
}

/** How far it is to the green on the way to the pin, metres: where the last ground before it ends. */
export function edgeOfGreen(scene: ShortScene, from: readonly [number, number], distance: number): number {
  const [ux, uy] = [(scene.pin[0] - from[0]) / distance, (scene.pin[1] - from[1]) / distance]
  for (let left = 0; left < distance; left += EDGE_STEP_METRES) {
    const at = distance - left
    if (scene.codeAt(from[0] + at * ux, from[1] + at * uy) !== GREEN) return at + EDGE_STEP_METRES
  }
  return 0
}

/** Length and heading of a ball without error that would pass over the hole's place and stop `past` metres beyond it. */
function aimPast(
  scene: ShortScene,
  shot: ShortShot,
  from: readonly [number, number],
  distance: number,
  past: number,
): ShortAim {
  const toPin = Math.atan2(scene.pin[0] - from[0], scene.pin[1] - from[1])
  const wanted = distance + past
  let carryMetres = wanted / (1 + shot.rollPerCarry)
  let heading = toPin
  for (let solve = 0; solve < SOLVES; solve++) {
    const roll = shot.kind === 'putt' ? carryMetres : carryMetres * shot.rollPerCarry
    const ball = shortBall(scene, from, shot.kind === 'putt' ? 0 : carryMetres, heading, roll, false)
    const dx = ball.x - from[0]
    const dy = ball.y - from[1]
    const went = Math.hypot(dx, dy)
    const off = Math.atan2(dx, dy) - toPin
    const miss = wanted - went * Math.cos(off)
    if (Math.abs(miss) < 0.02 && Math.abs(went * Math.sin(off)) < 0.02) break
    // Half a step where the last one may have crossed an edge of grass.
    carryMetres *= Math.min(1.5, Math.max(0.6, 1 + miss / Math.max(1, wanted)))
    heading -= Math.atan2(Math.sin(off), Math.cos(off)) * 0.9
  }
  return { carryMetres, heading }
}

import type { Day } from '#golf/course/day.ts'
import type { Ground } from '#golf/course/ground.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Lie, Player } from '#golf/player/player.ts'
import { type ShortShot, shortShots } from '#golf/player/short-shots.ts'
import { groundOf, type Places } from '../places.ts'
import { SHORT_GAME_METRES } from '../settings.ts'
import { bestShortAim, QUICK_SEARCH } from './find-short-aims.ts'
import { holeScene } from './hole-scene.ts'
import { plainScene } from './plain-scene.ts'
import type { GreenAdditions, ShortScene } from './short-scene.ts'
import { type ShortStrikes, shortStrikes } from './short-strikes.ts'

/** Rings and rays about the pin at which this green is played to; in between it is interpolated. */
const RINGS_METRES = [5, 11, 20, 36] as const
const RAYS = 8
const STRIKES: ShortStrikes = shortStrikes({ good: 16, poor: 2 })
/** No more than this is added or taken off, strokes: beyond it the coarse figures are not trusted. Our assumption. */
const MOST_ADDED = 1
const MOST_TAKEN = 0.3

/** The lies that are told apart, each standing for its like. */
const STANDS_FOR: Partial<Record<Ground, 'fairway' | 'rough' | 'bunker'>> = {
  fairway: 'fairway',
  fringe: 'fairway',
  tee: 'fairway',
  path: 'fairway',
  'first-cut': 'rough',
  rough: 'rough',
  heavy: 'rough',
  bunker: 'bunker',
}

/**
 * Strokes that this green adds off it to the short game's values, by place: the best short shot here less the best on a
 * level plain green from as far and from the same lie. So being short-sided, a green that falls away and a bunker between
 * cost what they cost. `onGreen`: what putting on its slopes adds. Coarse: a few shots, few strikes, and nodes some metres apart.
 */
export function offGreenStrokes(
  hole: Hole,
  places: Places,
  player: Player,
  day: Pick<Day, 'greenSpeedFeet' | 'firmness'>,
  onGreen: GreenAdditions | null,
  lookUp?: () => void,
): Float64Array {
  const strokes = new Float64Array(places.count)
  const scene = holeScene(hole, places, player, day, 3, onGreen)
  const shots = new Map<Lie, ShortShot[]>()
  const plain = new Map<string, number>()
  const nodes = new Map<string, Float64Array>()
  const shotsOf = (lie: Lie): ShortShot[] => {
    const known = shots.get(lie) ?? fewShots(shortShots(player, lie))
    shots.set(lie, known)
    return known
  }
  const added = (lie: 'fairway' | 'rough' | 'bunker', ring: number, ray: number): number => {
    const metres = RINGS_METRES[ring] as number
    const key = `${lie} ${ring}`
    let level = plain.get(key)
    if (level === undefined) {
      level = leastStrokes(plainScene(player, lie, metres, day), shotsOf(lie), [0, -metres])
      plain.set(key, level)
    }
    const table = nodes.get(lie) ?? new Float64Array(RINGS_METRES.length * RAYS).fill(Number.NaN)
    nodes.set(lie, table)
    const node = ring * RAYS + ray
    if (Number.isNaN(table[node])) {
      lookUp?.()
      const turn = (ray * 2 * Math.PI) / RAYS
      const from = [hole.pin[0] + metres * Math.sin(turn), hole.pin[1] + metres * Math.cos(turn)] as const
      const here = leastStrokes(scene, shotsOf(lie), from)
      table[node] = Math.min(MOST_ADDED, Math.max(-MOST_TAKEN, here - level))
    }
    return table[node] as number
  }
  for (let place = 0; place < places.count; place++) {
    const lie = STANDS_FOR[groundOf(places, place)]
    const metres = places.toPin[place] as number
    if (lie === undefined || metres > SHORT_GAME_METRES) continue
    const turn = Math.atan2(
      (places.x[place] as number) - hole.pin[0],
      (places.y[place] as number) - hole.pin[1],
    )
    strokes[place] = between(metres, turn, (ring, ray) => added(lie, ring, ray))
  }
  return strokes
}

/** Straight between rings and rays. */
function between(metres: number, turn: number, at: (ring: number, ray: number) => number): number {
  let ring = 0
  while (ring < RINGS_METRES.length - 2 && metres > (RINGS_METRES[ring + 1] as number)) ring++
  const [low, high] = [RINGS_METRES[ring] as number, RINGS_METRES[ring + 1] as number]
  const out = Math.min(1, Math.max(0, (metres - low) / (high - low)))
  const along = ((turn / (2 * Math.PI)) * RAYS + RAYS) % RAYS
  const ray = Math.floor(along) % RAYS
  const next = (ray + 1) % RAYS
  const share = along - Math.floor(along)
  const on = (which: number): number => (1 - share) * at(which, ray) + share * at(which, next)
  return (1 - out) * on(ring) + out * on(ring + 1)
}

/** At most four shots that differ: the lowest, the highest, and two between. */
function fewShots(shots: readonly ShortShot[]): ShortShot[] {
  if (shots.length <= 4) return [...shots]
  const last = shots.length - 1
  return [0, 1 / 3, 2 / 3, 1].map((share) => shots[Math.round(share * last)] as ShortShot)
}

function leastStrokes(
  scene: ShortScene,
  shots: readonly ShortShot[],
  from: readonly [number, number],
): number {
  return Math.min(
    ...shots.map((shot) => bestShortAim(scene, shot, from, STRIKES, QUICK_SEARCH)?.strokes ?? 9),
  )
}

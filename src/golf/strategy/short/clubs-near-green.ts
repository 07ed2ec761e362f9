import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import { shortGameValue } from '#golf/player/short-game-values.ts'
import type { ShortShot } from '#golf/player/short-shots.ts'
import type { Situation } from '../evaluate-stroke.ts'
import type { NearGreenCorrections } from '../near-green-corrections.ts'
import type { Places } from '../places.ts'
import { bestShortAim, type ShortCandidate } from './find-short-aims.ts'
import { holeScene } from './hole-scene.ts'
import { playShortShot, strokesOf } from './play-short-shot.ts'
import type { ShortScene } from './short-scene.ts'
import { type ShortStrikes, shortStrikes } from './short-strikes.ts'

const SEARCH_STRIKES: ShortStrikes = shortStrikes({ good: 48, poor: 8 })
export const FINAL_STRIKES: ShortStrikes = shortStrikes({ good: 256, poor: 32 })

/** The ground about the pin as one stroke from a situation meets it. */
export function nearGreenScene(
  { hole, day }: { readonly hole: Hole; readonly day: Pick<Day, 'greenSpeedFeet' | 'firmness'> },
  places: Places,
  { x, y, lie }: Situation,
  player: Player,
  nearGreen: NearGreenCorrections | null,
): ShortScene {
  const metres = Math.hypot(x - hole.pin[0], y - hole.pin[1])
  return holeScene(hole, places, player, day, shortGameValue(player, lie, metres), nearGreen)
}

/** The best shot of each club, cheapest first, weighed with many strikes. */
export function shortByClub(
  scene: ShortScene,
  shots: readonly ShortShot[],
  from: readonly [number, number],
): ShortCandidate[] {
  const best = new Map<string, ShortCandidate>()
  for (const shot of shots) {
    const found = bestShortAim(scene, shot, from, SEARCH_STRIKES)
    if (found === null) continue
    const strokes = strokesOf(scene, playShortShot(scene, shot, from, found.aim, FINAL_STRIKES))
    const known = best.get(shot.club)
    if (known === undefined || strokes < known.strokes) best.set(shot.club, { ...found, strokes })
  }
  return [...best.values()].sort((a, b) => a.strokes - b.strokes)
}

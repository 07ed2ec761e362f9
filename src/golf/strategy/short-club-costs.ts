import { shortShots } from '#golf/player/short-shots.ts'
import type { Situation } from './evaluate-stroke.ts'
import type { HoleModel } from './hole-model.ts'
import { nearGreenScene, shortByClub } from './short/clubs-near-green.ts'

/** What each club costs near the green on its best landing spot and line, strokes more than the best one; cheapest first. */
export function shortClubCosts(
  model: HoleModel,
  situation: Situation,
): readonly { readonly club: string; readonly cost: number }[] {
  const { hole, places, player, today, nearGreen } = model
  const scene = nearGreenScene({ hole, day: today }, places, situation, player, nearGreen)
  const best = shortByClub(scene, shortShots(player, situation.lie), [situation.x, situation.y])
  const least = best[0]?.strokes ?? 0
  return best.map(({ shot, strokes }) => ({ club: shot.club, cost: strokes - least }))
}

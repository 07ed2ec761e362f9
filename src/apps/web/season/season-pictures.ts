import type { Season } from '#golf/round/season.ts'
import { struckWords } from '#golf/round/season-words.ts'
import { drawSeason } from '#paper/draw/draw-season.ts'
import type { WallPicture } from '../wall/wall.tsx'

/** A drawing fills the wall, so a small sheet is large type. */
const WIDTH = 380

/** A season for the wall: how each part of the game was struck, under the sentence on what stands out. */
export function seasonPictures(season: Season): readonly WallPicture[] {
  return [{ words: struckWords(season), picture: drawSeason(season, WIDTH) }]
}

import type { Season } from '#golf/round/season.ts'
import { seasonWords } from '#golf/round/season-words.ts'
import { drawSeason } from '#paper/draw/draw-season.ts'
import type { WallPicture } from '../wall/wall.tsx'

/** A drawing fills the wall, so a small sheet is large type. */
const WIDTH = 380

/** A season for the wall: how each part of the game was struck, under the letter's own sentence on what stands out. */
export function seasonPictures(season: Season): readonly WallPicture[] {
  const words = seasonWords(season).at(season.judged === 0 ? 1 : 2) ?? ''
  return [{ words, picture: drawSeason(season, WIDTH) }]
}

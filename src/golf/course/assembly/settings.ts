/** Tuning numbers of putting a course together: unit, meaning, source. */

/** A hole line shorter or longer than this is set aside, metres. The page on real ground of this project: no hole is under 60 m or over 700 m. */
export const SHORTEST_HOLE_METRES = 60
export const LONGEST_HOLE_METRES = 700

/** Holes are numbered from 1 to this; a higher number is a mistake or another scheme. Two courses of 18. */
export const HIGHEST_REF = 36

/** From the end of one hole to the start of the next of the same course, metres, at most. Our assumption, from real maps. */
export const STEP_TO_NEXT_HOLE_METRES = 400

/** Ground further than this from every hole line is left out of the course, metres. Our assumption: nothing is hit there. */
export const FAR_FROM_PLAY_METRES = 300

/** Tees, pins and greens that name a hole but lie further than this from its line are doubted, metres. Our assumption. */
export const NAMED_HOLE_WITHIN_METRES = 300

/** A card length may differ from the line by this share before it is reported. Our assumption: markers move, lines are traced. */
export const CARD_LENGTH_TOLERANCE_SHARE = 0.05

/** Width of what sources draw as a line, metres, where they do not say. Our assumption. */
export const DITCH_WIDTH_METRES = 1.5
export const STREAM_WIDTH_METRES = 2.5
export const RIVER_WIDTH_METRES = 10
export const CART_PATH_WIDTH_METRES = 2.5
export const FOOTPATH_WIDTH_METRES = 1.5
export const TREE_ROW_WIDTH_METRES = 6

/**
 * The longest hole of par 3, 4 and 5 when par must be guessed from length, metres: the middle of the overlap of the
 * length ranges of par for men in the Rules of Handicapping, appendix F (up to 260 yd, 240–490, 450–710, from 670 on; from memory).
 */
export const LONGEST_OF_PAR: readonly (readonly [par: number, metres: number])[] = [
  [3, 228.6],
  [4, 429.8],
  [5, 630.9],
]

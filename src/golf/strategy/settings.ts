/** Side of a cell of the hole, metres. Measured: `docs/method.md`, "Grid and quadrature". */
export const CELL_METRES = 3
/** Side of a cell near the pin, metres: strokes there depend on feet. */
export const FINE_CELL_METRES = 1
/** Within this distance of the pin, metres, a stroke is a chip, a pitch or a putt and its value comes from the short game. */
export const SHORT_GAME_METRES = 45
/** Ground kept beside, behind and beyond the hole line, metres: wide enough for the widest club's finishes. */
export const CORRIDOR_METRES = 100
export const BEHIND_TEE_METRES = 40
export const BEYOND_PIN_METRES = 70

/** Strikes that stand for a club's pattern while the whole hole is solved, and for the stroke that is asked about. */
export const SOLVE_QUADRATURE = { good: 48, mishit: 16 } as const
export const STROKE_QUADRATURE = { good: 384, mishit: 128 } as const

/** After the solve its kept actions are weighed again with more strikes: measured in `docs/method.md`, "Grid and quadrature". */
export const REFINED_QUADRATURE = { good: 192, mishit: 64 } as const
export const REFINED_ACTIONS = 3
export const REFINED_TOLERANCE = 1e-5

/** Lines tried from every cell: degrees to each side of the pin and of the next bend, and the step between them. */
export const LINE_STEP_DEGREES = 2
export const LINES_ABOUT_PIN_DEGREES = 20
export const LINES_ABOUT_BEND_DEGREES = 12
/** From trees and scrub also sideways, degrees to each side and step. */
export const SIDEWAYS_DEGREES = 90
export const SIDEWAYS_STEP_DEGREES = 10
/** Lines of the stroke that is asked about: finer and wider. */
export const STROKE_LINE_STEP_DEGREES = 0.5
export const STROKE_LINES_DEGREES = 30
/** A line is not tried when the middle of its finishes lies further off the hole line than this, metres: other holes and other people are there. Our assumption: half of what commonly lies between two holes' lines. */
export const MOST_OFF_LINE_METRES = 45
/** A club whose stock total is longer than the distance by more than this is not tried, metres. */
export const OVERCLUB_METRES = 40
/** Partial swings are for approaches: they are tried only within this much more than their own total of the pin, metres. Our assumption. */
export const PARTIAL_SWING_METRES = 40
/** Runs are followed in steps of this length, metres, and along headings rounded to this many degrees. */
export const RUN_STEP_METRES = 1.5
export const RUN_HEADING_STEP_DEGREES = 4
/** On the green runs are told apart by this length, metres, and followed in such steps: strokes there depend on feet. */
export const GREEN_RUN_STEP_METRES = 0.5
/** Actions are weighed in single precision; those within so many strokes of the cheapest are weighed again in double. */
export const SCREENED_STROKES = 3e-5
/** Actions this much dearer than the value, strokes, are still weighed anew in every sweep, so that a state has several to keep. */
export const KEPT_WITHIN_STROKES = 0.02
/** Actions of a state that are kept between full sweeps. */
export const KEPT_ACTIONS = 6

/** Least carry of a mishit as a share of stock: a topped ball. Our assumption. */
export const LEAST_MISHIT_CARRY_SHARE = 0.05

/** Shares of balls that cannot be played, and that are not found, where the course file does not say. Our assumption. */
export const DEFAULT_SHARES = {
  trees: { unplayable: 0.25, lost: 0.05 },
  scrub: { unplayable: 0.6, lost: 0.2 },
  heavy: { unplayable: 0, lost: 0.03 },
} as const

/** A club-length of the longest club but the putter, metres: about 45 in. Rules of Golf 2023, definition "club-length". */
export const CLUB_LENGTH_METRES = 1.14
/** A stroke made this near to the middle between the markers is made from the teeing area, metres. Our assumption: markers stand 5 m apart. */
export const TEEING_AREA_METRES = 3
/** Distances behind the reference point at which back-on-the-line relief is tried, metres; the Rules set no limit. */
export const BACK_ON_LINE_METRES = [1, 3, 6, 9, 12, 16, 20, 25, 30, 40, 50, 65, 80, 100, 125, 150] as const
/** A ball is followed back to where it crossed the edge of a penalty area no further than this, metres. */
export const LONGEST_CROSSING_METRES = 300

/** A ground is kept from one player to the next until its tables take so many bytes: those of two or three bags, of one where woods line the hole. */
export const MOST_KEPT_TABLE_BYTES = 120e6

/** Draws of the player's pattern that stand for what is not known of it. */
export const DRAWS = 16
/** Under this gap in strokes, or this share of draws, it is too close to call; under the second gap it is close. */
export const TOO_CLOSE_STROKES = 0.03
export const TOO_CLOSE_SHARE = 0.8
export const CLOSE_STROKES = 0.08
/** A choice is clear only from this share of draws on, so that hardly one in twenty is wrong for the true player. Measured: `npm run false-clear-study`, `docs/method.md`, "How sure". */
export const CLEAR_SHARE = 0.95
/** Scores are reported up to this many strokes; the last one holds the rest. */
export const MOST_STROKES = 15
/** Costs of aiming elsewhere are reported this far to each side of the best line, degrees. */
export const AIM_COSTS_DEGREES = 12
/** Lines tried for one stroke when only the order of the clubs is asked for: step and reach about each club's best, degrees. */
export const COMPARE_LINE_STEP_DEGREES = 1
export const COMPARE_LINES_DEGREES = 10
export const COMPARE_QUADRATURE = { good: 192, mishit: 64 } as const
/** Lines tried about the last best one when nearly the same is planned again, degrees: a step of the wind or of a hazard hardly turns it further. */
export const NEARBY_LINES_DEGREES = 1.5
/** Of the kept actions, so many are tried then; clubs dearer than the plan by more than this are weighed, but what follows them is not settled anew. */
export const NEARBY_ACTIONS = 2
export const NEARBY_STROKES = 0.3
/** Of the kept actions, so many are tried in a neighbouring problem. */
export const NEIGHBOUR_ACTIONS = 3
/** States that balls come to with a smaller chance than this keep their value in a neighbouring problem. */
export const LEAST_REACH = 1e-4
/** Values of a neighbouring problem are settled this far, strokes: a tenth of what is called too close. */
export const NEIGHBOUR_TOLERANCE = 1e-3
/**
 * A quick answer while the full one is worked out: rough cells, few strikes, fewer lines about the pin and about the
 * stroke that is asked about. Our choice: on holes 3 and 7 its value lies 0.05 and 0.12 under the full one, costs within 0.02.
 */
export const QUICK = {
  cellMetres: 8,
  quadrature: { good: 12, mishit: 4 },
  aboutPinDegrees: 10,
  strokeLineStepDegrees: 1,
} as const
/** Partners who play by turns: their values have settled when none moves further, strokes; and sweeps at most. */
export const ALTERNATE_TOLERANCE = 1e-4
export const ALTERNATE_SWEEPS = 60
/**
 * Who tees off in a foursome is worth a word from so many strokes on at one hole, and over a round; under it the grid and the
 * short game taken in the mean decide. Our assumption: a plan's own limit for the round of a hole, and three times it.
 */
export const MATTERING_HOLE_STROKES = 0.05
export const MATTERING_ROUND_STROKES = 0.15
/** A club that the plans of a round ask for less often than this is never the answer, strokes a round. Our assumption: once in twenty rounds. */
export const SELDOM_STROKES = 0.05
/** Bellman residual at which a hole counts as solved, strokes. */
export const SOLVE_TOLERANCE = 1e-7

/** A hole plays as long as its strokes of at most this length do, with the clubs of a bag whose driver carries so far, metres. Our assumption: an ordinary drive with its run, and its carry. */
export const PLAYING_STROKE_METRES = 200
export const PLAYING_DRIVER_METRES = 200
/** A green's slopes are read off every so many metres, out to so far beyond its furthest putt. Measured: within 1 cm of the surface's own rest in 6 m. */
export const SLOPE_CELL_METRES = 0.5
export const APRON_METRES = 5

/** Headings along which crowns are looked for, degrees: from every cell while the hole is solved, and from the ball. A whole number of them makes a turn. */
export const CELL_RAY_STEP_DEGREES = 2
export const BALL_RAY_STEP_DEGREES = 0.25
/** Step along such a ray from the ball, metres; from a cell it is the cell's own side. */
export const BALL_RAY_STEP_METRES = 1
/** No ball flies further, metres. */
export const RAY_REACH_METRES = 320
/** A stretch of crowns is passed in pieces of at most this length, metres: the path is straight enough over one. */
export const CROWN_PIECE_METRES = 6
/** Growth lower than this, metres, catches what flies through it, not what comes down into it: the run on its ground says that already. */
export const LOW_GROWTH_METRES = 3
/** A ball that can be struck lies in an opening: so far nothing is in its way, metres. Our assumption. */
export const OPENING_METRES = 3
/** Along a slant crowns are looked at at least this often, metres. */
export const SLANT_STEP_METRES = 3
/** Slants are told apart by rises, ceilings and reaches this factor apart. */
export const SLANT_STEPS = 1.35
/** A mishit that carries less than this share of the club's usual mishit meets nothing above the ground. Our assumption. */
export const LEAST_SLANT_SHARE = 0.5
/** The rise of a slant is taken up to the tallest growth, or to this share of the apex where that is lower. Our assumption. */
export const HIGHEST_LOOK_SHARE = 0.6
/** Heights of a mishit as a share of a good strike's for the same carry: most are thin. Our assumption. */
export const MISHIT_HEIGHT_SHARE = 0.6
/**
 * Trees hamper a stroke when within this distance, metres, and this many degrees of the way ahead they stand higher than
 * this share of their distance, about the launch of a middle iron: then low shots and lines to the side are tried too.
 * Our assumption; what is tried there is still weighed by its cost.
 */
export const HAMPERING_METRES = 60
export const HAMPERING_DEGREES = 8
export const HAMPERING_SLOPE = 0.2
/** Further than this to the side of the pin and of the next bend, degrees, a stroke is sideways. Our assumption; lines further than 30° are tried only where trees are in the way. */
export const SIDEWAYS_FROM_DEGREES = 30
/** Crowns at least this high, metres, are worth saying that a ball flies over them; lower ones only when in the way. Our assumption. */
export const TREES_WORTH_SAYING_METRES = 4
/** A way on which the middle strike is caught with at least this chance goes through the trees, and a direction with twice it is shut. Our assumption. */
export const CAUGHT_ON_THE_WAY = 0.25
/** How far to each side of a line a gap's edges are looked for, degrees, and the step. */
export const GAP_DEGREES = 30
export const GAP_STEP_DEGREES = 0.5
/** Lines to the side of the stroke that is asked about, degrees and step, where trees are in the way. */
export const STROKE_SIDEWAYS_DEGREES = 100
export const STROKE_SIDEWAYS_STEP_DEGREES = 4
/** Strokes. Costs are printed to 0.01 in tables; a smaller one is printed as none. Our assumption. */
export const SMALLEST_PRINTED_COST = 0.005

import { holeGround } from '../../src/golf/strategy/hole-model.ts'
import { LEVELS } from './levels.ts'
import { playerOfIndex } from './player-of-index.ts'
import type { PublishedRow } from './published-row.ts'
import { referenceRows } from './reference-rows.ts'
import { type SolvedHole, solvedHole } from './solved-hole.ts'
import { yardstickHole } from './yardstick-hole.ts'

const TABLE = 'Broadie, Interfaces 42 (2012), table 9'

/** A usual green, and the smaller one that short holes are given (common practice: the shorter the approach, the smaller the green), m². */
const USUAL_GREEN = 500
const SHORT_HOLE_GREEN = 380
/** Lengths of the two holes, metres: a long par 4 or par 5, on which every shorter distance is played too, and a short par 4. */
const LONG_HOLE = 480
const SHORT_HOLE = 311

/** Side of a cell, metres. With cells of 3 m no figure of the golfer averaging 90 moves by more than 0.03 (method.md, section 11). */
const CELL_METRES = 10

/** Expected strokes by distance and lie, and rounds by level, from solved yardstick holes. */
export function solvedRows(): PublishedRow[] {
  const ground = holeGround(yardstickHole(LONG_HOLE, USUAL_GREEN), CELL_METRES)
  const long = (level: keyof typeof LEVELS | 'scratch'): SolvedHole =>
    solvedHole(ground, playerOfIndex(level === 'scratch' ? 0 : LEVELS[level]))
  const mid = long('mid (84-97)')
  return [
    ...tourRows(long('tour')),
    ...lineRows(mid),
    ...roundRows(long('scratch'), {
      'low (70-83)': long('low (70-83)'),
      'mid (84-97)': mid,
      'high (98-120)': long('high (98-120)'),
    }),
  ]
}

type Asked = 'tee' | 'fairway' | 'rough' | 'bunker'
const COLUMNS: Readonly<Record<Asked, string>> = {
  tee: 'tee_strokes',
  fairway: 'fairway_strokes',
  rough: 'rough_strokes',
  bunker: 'sand_strokes',
}
/** Distances asked of each lie, yards: every row of the table from the first to the second, then those named. */
const ASKED: Readonly<Record<Asked, readonly [from: number, to: number, ...more: number[]]>> = {
  tee: [100, 500],
  fairway: [60, 240, 300, 400, 500],
  rough: [60, 240, 300, 400, 500],
  bunker: [60, 240],
}
const BOUNDS: Readonly<Record<Asked, number>> = { tee: 0.12, fairway: 0.12, rough: 0.2, bunker: 0.2 }

function tourRows(long: SolvedHole): PublishedRow[] {
  const short = solvedHole(
    holeGround(yardstickHole(SHORT_HOLE, SHORT_HOLE_GREEN), CELL_METRES),
    playerOfIndex(LEVELS.tour),
  )
  return (['tee', 'fairway', 'rough', 'bunker'] as const).flatMap((lie) => {
    const [from, to, ...more] = ASKED[lie]
    return referenceRows('tour_expected_strokes_paper.csv').flatMap((row) => {
      const yards = Number(row.distance_yd)
      if ((yards < from || yards > to) && !more.includes(yards)) return []
      const reason = reasonFor(lie, yards)
      return {
        what: `tour player: strokes from ${yards} yd, ${lie}, solved`,
        unit: 'strokes',
        published: Number(row[COLUMNS[lie]]),
        source: TABLE,
        status: row.status ?? '',
        ours: (lie === 'tee' && isShortHole(yards) ? short : long).strokesFrom(lie, yards),
        decimals: 2,
        bound: BOUNDS[lie],
        ...(reason && { reason }),
      }
    })
  })
}

/** Tees of short par 3s, and of par 4s whose green a drive may reach. */
function isShortHole(yards: number): boolean {
  return yards <= 140 || (yards >= 260 && yards <= 320)
}

function reasonFor(lie: Asked, yards: number): string | undefined {
  if (lie !== 'tee') return undefined
  if (yards >= 200 && yards <= 240) return LONG_THREES
  return yards >= 260 && yards <= 320 ? SHORT_FOURS : yards >= 400 && yards < 500 ? UNEVEN : undefined
}

const LONG_THREES =
  'The yardstick’s trees stand as near beside the green as beside the drive; around long par 3s there is more room. Without them ours is 3.26 from 240 yd.'

const UNEVEN =
  'The table rises by 0.09 from 400 to 440 yd and by 0.33 from there to 500; ours rises evenly, and its dips are not chased.'

const SHORT_FOURS =
  'Short par 4s are built so that the green is not driven at, and the published rounds laid up: without driver and 3-wood our player needs 3.74 from 280 yd and 3.86 from 300. Between 240 and 300 yd, moreover, the table runs from the last par 3s to the first par 4s.'

function lineRows(mid: SolvedHole): PublishedRow[] {
  return [100, 150, 200, 250, 300, 350, 400, 450, 500].map((yards) => ({
    what: `golfer averaging 90 (index ${LEVELS['mid (84-97)']}): strokes from a tee of ${yards} yd, solved, on the line 2.79 + 0.0066 d`,
    unit: 'strokes',
    published: 2.79 + 0.0066 * yards,
    source: 'Broadie 2008, quoted in 2012',
    status: 'VERIFIED (b)',
    ours: mid.strokesFrom('tee', yards),
    decimals: 2,
    bound: 0.2,
    reason: HARDER_COURSES,
  }))
}

const HARDER_COURSES =
  'The published rounds were played on courses thicker with trees and trouble than the yardstick; against a scratch player on the same hole the golfer loses what is published (below).'

/** Holes of a round of 6,460 yd by their length: a usual mixture of pars (our assumption). */
const ROUND = [
  [165, 4],
  [380, 10],
  [500, 4],
] as const

function roundRows(
  scratch: SolvedHole,
  levels: Readonly<Partial<Record<keyof typeof LEVELS, SolvedHole>>>,
): PublishedRow[] {
  const lost = referenceRows('amateur_skill_broadie.csv').find((row) =>
    row.quantity?.startsWith('strokes lost'),
  )
  const round = (hole: SolvedHole): number =>
    ROUND.reduce((sum, [yards, holes]) => sum + holes * hole.strokesFrom('tee', yards), 0)
  return Object.entries(levels).map(([level, hole]) => ({
    what: `${level}: strokes lost to a scratch player in a round, solved`,
    unit: 'strokes',
    published: Number(lost?.[level]),
    source: 'Broadie 2008',
    status: lost?.status ?? '',
    ours: round(hole) - round(scratch),
    decimals: 1,
    bound: 2,
    ...(level.startsWith('low') && { reason: LOW_BAND }),
  }))
}

const LOW_BAND =
  'The band is wide. Index 6 stands for it by the spread of its drives; four strokes lost to scratch are rather an index of 4.'

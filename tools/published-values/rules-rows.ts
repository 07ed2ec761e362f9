import { courseHandicap, playingHandicap, type TeeRating } from '../../src/golf/rules/course-handicap.ts'
import { cappedIndexTenths, handicapIndexTenths } from '../../src/golf/rules/handicap-index.ts'
import { scoreDifferentialTenths } from '../../src/golf/rules/score-differential.ts'
import { stablefordPoints } from '../../src/golf/rules/stableford-points.ts'
import type { PublishedRow } from './published-row.ts'
import { referenceRows } from './reference-rows.ts'

/** Our answer to a worked example of the handicap system, by the start of its wording. */
const ANSWERS: readonly (readonly [startsWith: string, answer: () => number])[] = [
  ['index, 3 differentials 15.3', () => index(153, 152, 166)],
  ['index, 3 differentials 40.7', () => index(407, 424, 361)],
  ['index, 6 differentials 40.7', () => index(407, 424, 361, 459, 436, 450)],
  ['soft cap: average of 8 = 11.6', () => cappedIndexTenths(116, 65) / 10],
  ['soft cap: average of 8 = 13.4', () => cappedIndexTenths(134, 100) / 10],
  ['hard cap: average of 8 = 18.2', () => cappedIndexTenths(182, 102) / 10],
  ['course handicap: index 27.7', () => courseHandicap(home(277))],
  ['course handicap: index 7.9', () => courseHandicap(home(79))],
  [
    'score differential: adjusted gross 85',
    () =>
      scoreDifferentialTenths({
        adjustedGross: 85,
        courseRatingTenths: 715,
        slopeRating: 128,
        adjustmentTenths: 0,
      }) / 10,
  ],
]

/** Worked examples of the handicap system, and points by net score. */
export function rulesRows(): PublishedRow[] {
  const examples = referenceRows('whs_worked_examples.csv')
  const worked = ANSWERS.map(([startsWith, answer]) => {
    const example = examples.find((row) => row.case?.startsWith(startsWith))
    const what = example?.case ?? startsWith
    const row = exact(what, '', Number(example?.result), example?.status, answer(), HANDICAP)
    return startsWith.startsWith('course handicap: index 7.9') ? { ...row, reason: CUT } : row
  })
  const allowances = [
    ['index 27.7, slope 129, rating 71.1, par 72: playing handicap at 85 %', 277, 26],
    ['index 7.9, slope 129, rating 71.1, par 72: playing handicap at 85 %', 79, 7],
  ] as const
  const playing = allowances.map(([what, tenths, published]) =>
    exact(what, '', published, 'VERIFIED', playingHandicap(home(tenths), 85), HANDICAP),
  )
  const points = referenceRows('stableford_points.csv').flatMap((row) => {
    const against = Number(row.net_score_against_fixed_score_strokes)
    if (Number.isNaN(against)) return []
    const what = `net score of ${5 + against} on a hole of par 5`
    return exact(what, 'points', Number(row.points), row.status, stablefordPoints(5 + against, 5), POINTS)
  })
  return [...worked, ...playing, ...points]
}

const HANDICAP = 'World Handicap System, Rules of Handicapping 2024'
const CUT = 'The published working cuts after the third digit: 7.9 × 129/113 − 0.9 = 8.1186.'
const POINTS = 'Rules of Golf 2023, Rule 21.1b'

function exact(
  what: string,
  unit: string,
  published: number,
  status: string | undefined,
  ours: number,
  source: string,
): PublishedRow {
  return {
    what,
    unit,
    published,
    source,
    status: status ?? '',
    ours,
    decimals: digitsOf(published),
    bound: 0,
  }
}

/** Digits behind the point of a number as it was printed. */
function digitsOf(published: number): number {
  return String(published).split('.')[1]?.length ?? 0
}

function index(...tenths: number[]): number {
  return (handicapIndexTenths(tenths) ?? Number.NaN) / 10
}

function home(indexTenths: number): TeeRating {
  return { indexTenths, slopeRating: 129, courseRatingTenths: 711, par: 72 }
}

import { Failure } from '#faults/failure.ts'
import type { Lie } from '#golf/player/player.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { parseCount, parseLie, parsePin, parsePoint } from './parse-values.ts'
import type { PlanOptions } from './plan-options.ts'
import { MOST_DRAWS } from './settings.ts'

/** What is asked of a hole besides who plays it and on what day. */
export interface Question {
  readonly tee: string | undefined
  readonly pin: 'front' | 'middle' | 'back' | Point | undefined
  readonly from: Point | undefined
  readonly lie: Lie | undefined
  readonly club: string | undefined
  readonly draws: number | undefined
  /** As typed, such as `into:7`: what it means depends on the hole. */
  readonly wind: string | undefined
  readonly flips: boolean
}

/** The options of a plan as values. Throws MAR-USAGE-002 and 003, before any file is read. */
export function parseQuestion(options: PlanOptions): Question {
  refuseObjective(options.objective)
  if (options.lie !== undefined && options.from === undefined)
    throw new Failure('MAR-USAGE-002', 'A lie needs its place: give --from as well.', '--lie')
  if (options.hole === 'all' && (options.from !== undefined || options.picture !== undefined))
    throw new Failure(
      'MAR-USAGE-002',
      'A ball and a picture are of one hole: give its number to --hole.',
      '--hole',
    )
  return {
    tee: options.tee,
    pin: options.pin === undefined ? undefined : parsePin(options.pin),
    from: options.from === undefined ? undefined : parsePoint(options.from, '--from'),
    lie: options.lie === undefined ? undefined : parseLie(options.lie),
    club: options.club,
    draws: options.draws === undefined ? undefined : parseCount(options.draws, '--draws', 0, MOST_DRAWS),
    wind: options.wind,
    // The page of a round has no room for them.
    flips: options.flips && (options.hole !== 'all' || options.json === true),
  }
}

function refuseObjective(objective: string | undefined): void {
  if (objective === undefined || objective === 'strokes') return
  if (/^(points|match|at-most:\d+)$/.test(objective))
    throw new Failure(
      'MAR-USAGE-003',
      `Plans for ${objective} are not made yet; only strokes.`,
      '--objective',
    )
  throw new Failure(
    'MAR-USAGE-002',
    `"${objective}" is no objective. Write strokes; points, match and at-most:K will follow.`,
    '--objective',
  )
}

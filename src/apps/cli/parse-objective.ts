import { Failure } from '#faults/failure.ts'
import type { AskedObjective } from '#golf/strategy/asked-objective.ts'
import { MOST_STROKES } from '#golf/strategy/settings.ts'
import { parseCount } from './parse-values.ts'
import type { PlanOptions } from './plan-options.ts'

/** An objective as typed; a player file named in it is not opened yet. */
export type TypedObjective = AskedObjective<string>

/** Holes of a round. */
const MOST_HOLES = 18
/** Most handicap strokes on one hole, either way. */
const MOST_RECEIVED = 4

/** The objective of a plan; `undefined` = the fewest strokes. Throws MAR-USAGE-002. */
export function parseObjective(options: PlanOptions): TypedObjective | undefined {
  const { objective = 'strokes', opponent, opponentScore, strokesReceived, played, through, up } = options
  const isMatch = objective === 'match'
  const isPoints = objective === 'points'
  if (!isMatch)
    refuse(opponent ?? opponentScore, opponent === undefined ? '--opponent-score' : '--opponent', 'match')
  if (!isMatch && !isPoints) refuse(strokesReceived, '--strokes-received', 'points or match')
  if (!isMatch) refuse(up, '--up', 'match')
  if (isPoints || objective === 'strokes') refuse(through, '--through', 'at-most:K or match')
  if (objective === 'strokes') {
    refuse(played, '--played', 'points, match or at-most:K')
    return undefined
  }
  if (options.hole === 'all' && (!isPoints || strokesReceived !== undefined || played !== undefined))
    throw new Failure(
      'MAR-USAGE-002',
      'A round is planned for strokes, or for points with strokes by the card: give the number of one hole to --hole.',
      '--objective',
    )
  const used = played === undefined ? 0 : parseCount(played, '--played', 0, MOST_STROKES)
  const received =
    strokesReceived === undefined
      ? undefined
      : parseCount(strokesReceived, '--strokes-received', -MOST_RECEIVED, MOST_RECEIVED)
  if (isPoints) return { kind: 'points', received, played: used }
  if (isMatch) {
    if ((opponent === undefined) === (opponentScore === undefined))
      throw new Failure(
        'MAR-USAGE-002',
        'A match needs an opponent: give --opponent with a player file, or --opponent-score with strokes on the hole.',
        '--objective',
      )
    const against = opponent ?? parseCount(opponentScore as string, '--opponent-score', 1, MOST_STROKES)
    if (through !== undefined && opponent === undefined)
      throw new Failure(
        'MAR-USAGE-002',
        'How the later holes of a match go is worked out from a player: give --opponent.',
        '--through',
      )
    const lead = up === undefined ? 0 : parseCount(up, '--up', -MOST_HOLES, MOST_HOLES)
    const isOfMatch = through !== undefined || up !== undefined
    const match = isOfMatch ? { through, up: lead } : undefined
    return { kind: 'match', received, opponent: against, match, played: used }
  }
  const atMost = /^at-most:(.*)$/.exec(objective)
  if (atMost === null)
    throw new Failure(
      'MAR-USAGE-002',
      `"${objective}" is no objective. Write strokes, points, match or at-most:K with a number of strokes.`,
      '--objective',
    )
  return {
    kind: 'at-most',
    strokes: parseCount(
      atMost[1] as string,
      '--objective',
      1,
      through === undefined ? MOST_STROKES - 1 : MOST_HOLES * MOST_STROKES,
    ),
    through,
    played: used,
  }
}

function refuse(value: string | undefined, option: string, objectives: string): void {
  if (value !== undefined)
    throw new Failure('MAR-USAGE-002', `${option} goes with --objective ${objectives} only.`, option)
}

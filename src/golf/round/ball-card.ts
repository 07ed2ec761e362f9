import type { Course } from '#golf/course/course.ts'
import { type HoleLimit, holeLimit } from '#golf/rules/hole-limit.ts'
import { holeResult } from '#golf/rules/match-state.ts'
import { maximumScore } from '#golf/rules/maximum-score.ts'
import { stablefordPoints } from '#golf/rules/stableford-points.ts'
import { strokesReceived } from '#golf/rules/strokes-received.ts'
import type { Counting } from './competition.ts'
import { hasScore, type Round, scoreOf } from './round.ts'

/** One hole of one ball. */
export interface BallHole {
  readonly ref: string
  readonly par: number | null
  readonly strokeIndex: number | null
  /** `null` = not holed out. */
  readonly gross: number | null
  readonly received: number
  /** What it counts: net strokes, points, or +1, 0, −1 against par; `null` = no score. */
  readonly counts: number | null
}

/** What the holes of a ball are counted by. */
export interface CountedBy {
  readonly by: Counting
  /** For maximum score only. */
  readonly limit: HoleLimit
}

/**
 * The holes of a ball as they were logged, with the strokes received by stroke index (0 on a hole without one). Throws a RangeError where
 * points, par or a limit by par are asked for on a hole of unknown par. Sources: Rules of Golf 2023, 3.2, 3.3, 21.1 to 21.3.
 */
export function ballCard(course: Course, round: Round, handicap: number, counted: CountedBy): BallHole[] {
  return round.holes.map((logged) => {
    const line = course.holes.find(({ ref }) => ref === logged.ref)
    const { par, strokeIndex } = line ?? { par: null, strokeIndex: null }
    const gross = hasScore(logged) ? scoreOf(logged) : null
    const received = strokeIndex === null ? 0 : strokesReceived(handicap, strokeIndex)
    const counts = countOf(counted, { ref: logged.ref, par, gross, received })
    return { ref: logged.ref, par, strokeIndex, gross, received, counts }
  })
}

function countOf(
  { by, limit }: CountedBy,
  { ref, par, gross, received }: Pick<BallHole, 'ref' | 'par' | 'gross' | 'received'>,
): number | null {
  const net = gross === null ? null : gross - received
  if (by === 'strokes' || by === 'match') return net
  if (par === null) throw new RangeError(`hole ${ref} has no par`)
  if (by === 'points') return stablefordPoints(net, par)
  if (by === 'par') return holeResult(net, par)
  return maximumScore(gross, holeLimit(limit, par, received)) - received
}

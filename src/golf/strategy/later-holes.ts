import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import { evaluateStroke } from './evaluate-stroke.ts'
import { prospectsFrom, prospectsOfFewest } from './format/evaluate-format.ts'
import { formatStrokes } from './format/format-strokes.ts'
import { solveLevels } from './format/levels.ts'
import { SURE_CHANCE } from './format-settings.ts'
import { holeGround, holeModel } from './hole-model.ts'
import type { HoleScoresOptions } from './hole-scores.ts'
import { scoreChances, scoresOfStroke } from './score-distribution.ts'
import {
  COMPARE_LINE_STEP_DEGREES,
  COMPARE_QUADRATURE,
  REFINED_QUADRATURE,
  SOLVE_QUADRATURE,
} from './settings.ts'
import { solveHole } from './solve-hole.ts'
import { strokeTries } from './stroke-tries.ts'

/**
 * The best chance of playing holes one after the other in at most `m` strokes, `chances[m]` for `m` up to `most`, standing on
 * the first tee. Worked backwards from the last hole: on each the worth of a score is the chance that what it leaves is
 * enough, and every stroke is chosen for it, so nothing is taken as played for the mean. Every hole must have a green.
 */
export function chancesOfLaterHoles(
  holes: readonly Hole[],
  player: Player,
  day: Day,
  most: number,
  options: HoleScoresOptions = {},
): number[] {
  let after = [1]
  // Every hole before this one takes at least one stroke.
  for (const [before, hole] of [...holes.entries()].reverse())
    after = chancesOnHole(hole, player, day, Math.max(0, most - before), after, options)
  return after
}

/** By strokes left on the tee; `after` is the same for the tee of the next hole, its last entry that of all above. */
function chancesOnHole(
  hole: Hole,
  player: Player,
  day: Day,
  most: number,
  after: readonly number[],
  options: HoleScoresOptions,
): number[] {
  const model = holeModel((options.layGround ?? holeGround)(hole, options.cellMetres), player, day)
  const { problem, values } = solveHole(model, options.quadrature)
  const chances = scoreChances(model, problem, values)
  const situation = { x: 0, y: 0, lie: 'tee' } as const
  const evaluation = evaluateStroke(model, values, {
    situation,
    quadrature: COMPARE_QUADRATURE,
    tries: strokeTries(model, problem.shots, situation, COMPARE_LINE_STEP_DEGREES),
  })
  const candidates = [...evaluation.candidates].sort((a, b) => a.strokes - b.strokes)
  const [first] = candidates
  if (!first) return new Array<number>(most + 1).fill(0)
  const worths = [
    ...Array.from(
      { length: most + 1 },
      (_, used) => after[Math.min(most - used, after.length - 1)] as number,
    ),
    0,
  ]
  const fewest = prospectsOfFewest(
    { worths },
    scoresOfStroke(model, first.ends, chances, values, evaluation.value, null),
  )
  // With so many strokes left that even the plan for the fewest is sure to do, none is planned.
  let least = 0
  while (least < most && fewest(least).worth >= SURE_CHANCE) least++
  const levels = solveLevels(
    model,
    chances,
    { worths, first: least + 1 },
    formatStrokes(model, problem, {
      all: options.quadrature ?? SOLVE_QUADRATURE,
      best: options.quadrature ?? REFINED_QUADRATURE,
    }),
  )
  const best = prospectsFrom(levels, candidates, fewest)
  return Array.from({ length: most + 1 }, (_, left) => {
    const used = most - left
    return (used < least ? fewest(used) : best(used)).worth
  })
}

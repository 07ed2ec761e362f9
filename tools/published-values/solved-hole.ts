import { REFERENCE_DAY } from '../../src/golf/course/day.ts'
import type { Lie, Player } from '../../src/golf/player/player.ts'
import { evaluateStroke } from '../../src/golf/strategy/evaluate-stroke.ts'
import { type HoleGround, holeModel } from '../../src/golf/strategy/hole-model.ts'
import { holeProblem } from '../../src/golf/strategy/hole-problem.ts'
import { COMPARE_QUADRATURE, OVERCLUB_METRES, SOLVE_QUADRATURE } from '../../src/golf/strategy/settings.ts'
import { isLow, shotsOf } from '../../src/golf/strategy/shots.ts'
import { strokeLines } from '../../src/golf/strategy/stroke-lines.ts'
import { solveShortestPath } from '../../src/numbers/solver/solve-shortest-path.ts'
import { degreesToRadians, yardsToMetres } from '../../src/numbers/units/units.ts'

/** A hole solved once for one player. */
export interface SolvedHole {
  /** Expected strokes from this lie on the hole line, so many yards from the pin: the mean over 10 yd to either side. */
  readonly strokesFrom: (lie: Lie, yards: number) => number
}

const TOLERANCE = 1e-3
/** Lines tried, degrees to each side of the pin and between two lines. */
const LINES_DEGREES = 16
const LINE_STEP_DEGREES = 2
/** The published tables are smooth over distance; a bag has gaps between its clubs, which this evens out. */
const ABOUT_YARDS: readonly number[] = [-10, 0, 10]

/** Solves a hole for a player on a calm day; one solve answers for every distance and lie. */
export function solvedHole(ground: HoleGround, player: Player): SolvedHole {
  const model = holeModel(ground, player, REFERENCE_DAY)
  const { values } = solveShortestPath(holeProblem(model, { quadrature: SOLVE_QUADRATURE }), {
    tolerance: TOLERANCE,
  })
  const shots = shotsOf(player)
  const strokesAt = (lie: Lie, yards: number): number => {
    const left = yardsToMetres(yards)
    const y = ground.hole.lengthMetres - left
    const situation = { x: 0, y, lie }
    const headings = strokeLines(model, situation, LINE_STEP_DEGREES).headings.filter(
      (line) => Math.abs(line) <= degreesToRadians(LINES_DEGREES) + 1e-9,
    )
    return evaluateStroke(model, values, {
      situation,
      quadrature: COMPARE_QUADRATURE,
      tries: shots
        .filter((shot) => !isLow(shot) && shot.stock.totalMetres < left + OVERCLUB_METRES)
        .map((shot) => ({ shot, headings })),
    }).value
  }
  return {
    strokesFrom: (lie, yards) =>
      ABOUT_YARDS.reduce((sum, more) => sum + strokesAt(lie, yards + more), 0) / ABOUT_YARDS.length,
  }
}

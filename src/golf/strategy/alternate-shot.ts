import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import { type Candidate, type Situation, triedStrokes } from './evaluate-stroke.ts'
import { type HoleModel, holeGround, holeModel, type LayGround } from './hole-model.ts'
import { type HoleProblem, holeProblem } from './hole-problem.ts'
import { type MainHazard, mainHazard } from './main-hazard.ts'
import { placeAt } from './places.ts'
import { ALTERNATE_SWEEPS, ALTERNATE_TOLERANCE, COMPARE_QUADRATURE, QUICK } from './settings.ts'
import { situationOf } from './situation.ts'
import { strokeShares } from './stroke-cost.ts'
import { strokeTries } from './stroke-tries.ts'

/** Two partners of a foursome who play one ball by turns. */
export type Partners<Of> = readonly [Of, Of]

/** What a hole costs a pair when one of the two tees off. */
export interface TeeTurn {
  /** Expected strokes to hole out, penalties counted. */
  readonly strokes: number
  /** The stroke from the tee that is best for the pair. */
  readonly best: { readonly shot: Pick<Candidate['shot'], 'club' | 'shape'>; readonly heading: number }
  /** What its balls find most dearly. */
  readonly hazard: MainHazard | null
}

/** A hole for a pair, by who of the two tees off. */
export interface AlternateShot {
  readonly turns: Partners<TeeTurn>
  /** Largest change of the last sweep, strokes, and sweeps of each partner's strokes. */
  readonly residual: number
  readonly sweeps: number
}

/** A pair on a hole. Both play from the hole's markers. */
export interface AlternateQuestion {
  readonly hole: Hole
  readonly players: Partners<Player>
  readonly day: Day
  /** Absent = the coarse grid of quick answers: what is asked is a difference, in which its error is much the same twice. */
  readonly cellMetres?: number
}

/**
 * The best play of two partners who strike one ball by turns (Rules of Golf 2023, Rule 22.3: penalties do not change whose turn
 * it is). Each partner's stroke is chosen by what the place it comes to costs when the other plays next, so a partner is not
 * left the shot he or she cannot play. Near the pin, where strokes are short, a place costs the mean of what it costs each
 * alone: our assumption, since chips and putts go by turns too. Throws what {@link situationOf} throws.
 */
export function alternateShot(
  { hole, players, day, cellMetres = QUICK.cellMetres }: AlternateQuestion,
  layGround: LayGround = holeGround,
): AlternateShot {
  const ground = layGround(hole, cellMetres)
  const models = players.map((player) => holeModel(ground, player, day)) as unknown as Partners<HoleModel>
  const problems = models.map((model) =>
    holeProblem(model, {
      quadrature: QUICK.quadrature,
      aboutPinDegrees: QUICK.aboutPinDegrees,
      isByTurns: true,
    }),
  ) as unknown as Partners<HoleProblem>
  const solved = settleByTurns(models, problems)
  const situation = situationOf({}, ground.places)
  const turns = teeTurns(models, problems, solved.values, situation)
  return { turns, residual: solved.residual, sweeps: solved.sweeps }
}

/** Values of every place by who plays next: each from what the other's are, until none moves. */
function settleByTurns(
  [a, b]: Partners<HoleModel>,
  [first, second]: Partners<HoleProblem>,
): { readonly values: Partners<Float64Array>; readonly residual: number; readonly sweeps: number } {
  const [ownA, ownB] = [first.startValues(), second.startValues()]
  // Places of the short game are ends: no sweep writes to them.
  const mean = ownA.map((value, place) => (value + (ownB[place] as number)) / 2)
  let values: Partners<Float64Array> = [mean, Float64Array.from(mean)]
  let residual = Number.POSITIVE_INFINITY
  let sweeps = 0
  while (residual > ALTERNATE_TOLERANCE && sweeps < ALTERNATE_SWEEPS) {
    const [whenB, whenA] = [Float64Array.from(values[1]), Float64Array.from(values[0])]
    first.improve(whenB)
    second.improve(whenA)
    residual = Math.max(furthest(a, values[0], whenB), furthest(b, values[1], whenA))
    values = [whenB, whenA]
    sweeps += 1
  }
  return { values, residual, sweeps }
}

function furthest({ states }: HoleModel, before: Float64Array, after: Float64Array): number {
  return states.order.reduce((most, state) => {
    const [was, is] = [before[state] as number, after[state] as number]
    return was === is ? most : Math.max(most, Math.abs(was - is))
  }, 0)
}

/** Rounds over both partners at the markers; each gains the chance of playing from there once more. */
const ROUNDS = 60

/** The best stroke of each from the markers. What comes back there is the partner's to play again. */
function teeTurns(
  models: Partners<HoleModel>,
  problems: Partners<HoleProblem>,
  values: Partners<Float64Array>,
  situation: Situation,
): Partners<TeeTurn> {
  const tried = models.map((model, index) =>
    triedStrokes(model, {
      situation,
      quadrature: COMPARE_QUADRATURE,
      tries: strokeTries(
        model,
        (problems[index] as HoleProblem).shots,
        situation,
        QUICK.strokeLineStepDegrees,
      ),
    }),
  )
  const place = placeAt(models[0].places, situation.x, situation.y)
  const here = values.map((of) => of[place] as number) as unknown as [number, number]
  const costs = (turn: 0 | 1): number[] => {
    const other = turn === 0 ? 1 : 0
    const model = models[turn]
    model.costs.valuesMoved()
    return (tried[turn] ?? []).map(({ ends }) => {
      const { sum, back } = strokeShares(model.costs, ends, values[other], here[other])
      return 1 + sum + back * (1 + here[other])
    })
  }
  for (let round = 0; round < ROUNDS; round++) {
    const next = [Math.min(...costs(0)), Math.min(...costs(1))] as const
    const isAtRest = Math.abs(next[0] - here[0]) < 1e-9 && Math.abs(next[1] - here[1]) < 1e-9
    ;[here[0], here[1]] = next
    if (isAtRest) break
  }
  return ([0, 1] as const).map((turn): TeeTurn => {
    const all = costs(turn)
    const best = tried[turn]?.[all.indexOf(Math.min(...all))]
    if (best === undefined) throw new Error('there is no stroke from the markers')
    const hazard = mainHazard(models[turn], [{ ...best, strokes: here[turn] }])
    const { shot, heading } = best
    return { strokes: here[turn], best: { shot: { club: shot.club, shape: shot.shape }, heading }, hazard }
  }) as unknown as Partners<TeeTurn>
}

import type { Day } from '#golf/course/day.ts'
import { groundReader } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import type { Lie, Player } from '#golf/player/player.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { pointAlong } from '#numbers/geometry/polyline.ts'
import { cautionsOf } from './cautions.ts'
import { numberOfTotal } from './green-numbers.ts'
import { holeGround, holeModel, type LayGround } from './hole-model.ts'
import { lieOfGround } from './lie-of-ground.ts'
import { requireGreen } from './require-green.ts'
import { SHORT_GAME_METRES, TOO_CLOSE_STROKES } from './settings.ts'
import { solveHole } from './solve-hole.ts'
import { bandsOf } from './thumb/bands.ts'
import { bestLeave } from './thumb/best-leave.ts'
import { goOrLayUp } from './thumb/go-or-lay-up.ts'
import { ruleBands } from './thumb/rule-bands.ts'
import { cheapest, type RuleScene, ruleScene } from './thumb/rule-scene.ts'
import { rulesOfHole } from './thumb/rules-of-hole.ts'
import { PLACE_STEP_METRES } from './thumb/settings.ts'
import type { LieThumb, Thumb, ThumbPlace } from './thumb.ts'

/** What is asked: a hole, a player and a day. */
export interface ThumbQuestion {
  readonly courseName: string
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
  /** What the ball sits in along the hole, besides the tee; fairway and rough when absent. */
  readonly lies?: readonly Lie[]
  readonly stepMetres?: number
  readonly cellMetres?: number
  readonly quadrature?: { readonly good: number; readonly mishit: number }
}

/**
 * Where the trade's rules of thumb are right, indifferent and wrong along a hole, and by how much; where to go for the
 * green; which number to play to; what to leave. The hole is solved once, then every stroke is weighed from places on
 * its line. `layGround` may keep what it laid. Throws a Failure when the survey lacks the green.
 */
export function rulesOfThumb(question: ThumbQuestion, layGround: LayGround = holeGround): Thumb {
  const { hole, player, day } = question
  requireGreen(hole)
  const stepMetres = question.stepMetres ?? PLACE_STEP_METRES
  const ground = layGround(hole, question.cellMetres)
  const model = holeModel(ground, player, day)
  const { problem, values, solution } = solveHole(model, question.quadrature)
  const measures = measureHole(hole)
  const rules = rulesOfHole(measures)
  const sceneFrom = (from: Point, lie: Lie): RuleScene =>
    ruleScene(model, measures, problem.shots, values, from, lie)
  const places = placesOnLine(hole, stepMetres)
  const lies = question.lies ?? DEFAULT_LIES
  const scenes = new Map<Lie, RuleScene[]>([['tee', [sceneFrom([0, 0], 'tee')]]])
  for (const lie of lies)
    if (lie !== 'tee')
      scenes.set(
        lie,
        places.map((from) => sceneFrom(from, lie)),
      )
  const fairway = scenes.get('fairway') ?? places.map((from) => sceneFrom(from, 'fairway'))
  return {
    schema: 'thumb/1',
    course: question.courseName,
    hole: { ref: hole.ref, par: hole.par, length_m: hole.lengthMetres, tee: hole.teeName },
    player: player.name,
    lies: [...scenes].map(
      ([lie, along]): LieThumb => ({
        lie,
        places: along.flatMap(thumbPlace),
        rules: rules.flatMap((rule) => ruleBands(rule, along) ?? []),
        go: goOrLayUp(along),
        numbers: numberBands(along.flatMap(thumbPlace)),
      }),
    ),
    leave: bestLeave(
      fairway.flatMap((scene) => {
        const strokes = cheapest(scene.options)?.strokes
        return strokes === undefined ? [] : [{ leave_m: scene.toPin, strokes }]
      }),
    ),
    cautions: cautionsOf(hole, day, player.guesses, solution.converged),
    guesses: [...player.guesses],
    method: {
      cell_m: ground.places.coarse.resolution,
      states: ground.states.order.length,
      step_m: stepMetres,
      too_close_strokes: TOO_CLOSE_STROKES,
      residual: solution.residual,
      converged: solution.converged,
      milliseconds: 0,
    },
  }
}

const DEFAULT_LIES: readonly Lie[] = ['fairway', 'rough']

/** Places on the hole line from where its fairway begins to the last full stroke, far to near; none in water or out. */
function placesOnLine(hole: Hole, step: number): Point[] {
  const groundAt = groundReader(hole)
  const line = pointsOnLine(hole, step)
  const first = line.findIndex((point) => groundAt(point) === 'fairway')
  return line
    .slice(Math.max(0, first))
    .filter((point) => distance(point, hole.pin) > SHORT_GAME_METRES && lieOfGround(groundAt(point)) !== null)
}

/** Whole steps from the pin back along the hole line, far to near. */
function pointsOnLine({ line, lengthMetres }: Hole, step: number): Point[] {
  const count = Math.floor(lengthMetres / step)
  return Array.from({ length: count }, (_, index) => pointAlong(line, lengthMetres - (count - index) * step))
}

function thumbPlace(scene: RuleScene): ThumbPlace[] {
  const best = cheapest(scene.options)
  if (best === null) return []
  return [
    {
      from_m: scene.toPin,
      strokes: best.strokes,
      club: best.shot.club,
      shape: best.shot.shape,
      number: numberOfTotal(scene.numbers, best.total),
      leave_m: best.toPin,
      nearest_m: Math.min(...scene.options.map(({ toPin }) => toPin)),
    },
  ]
}

function numberBands(places: readonly ThumbPlace[]): LieThumb['numbers'] {
  return bandsOf(places, ({ number }) => number).map(({ label, items }) => ({
    from_m: items[0]?.from_m ?? Number.NaN,
    to_m: items.at(-1)?.from_m ?? Number.NaN,
    number: label,
  }))
}

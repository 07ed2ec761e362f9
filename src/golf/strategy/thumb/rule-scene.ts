import type { HoleMeasures } from '#golf/course/hole-measures.ts'
import type { Lie } from '#golf/player/player.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { projectOnPolyline } from '#numbers/geometry/polyline.ts'
import { type Candidate, evaluateStroke } from '../evaluate-stroke.ts'
import { type GreenNumbers, greenNumbers, numberOfTotal } from '../green-numbers.ts'
import type { HoleModel } from '../hole-model.ts'
import { COMPARE_LINE_STEP_DEGREES, COMPARE_QUADRATURE, SHORT_GAME_METRES } from '../settings.ts'
import type { Shot } from '../shots.ts'
import { strokeTries } from '../stroke-tries.ts'
import { usualTotal } from './usual-total.ts'

/** One shot on one line, and where the middle of its good strikes finishes. Metres. */
export interface RuleOption {
  readonly shot: Shot
  readonly strokes: number
  /** Heading of the pattern's centre, wind included, radians. */
  readonly heading: number
  readonly total: number
  readonly finish: Point
  /** Of the finish: along the hole line from the markers, and straight to the pin. */
  readonly along: number
  readonly toPin: number
}

/** A place of the ball with everything that may be played from it. Metres. */
export interface RuleScene {
  readonly measures: HoleMeasures
  readonly model: HoleModel
  readonly from: Point
  readonly lie: Lie
  /** Along the hole line from the markers, and straight to the pin. */
  readonly along: number
  readonly toPin: number
  readonly numbers: GreenNumbers
  readonly options: readonly RuleOption[]
}

/** Weighs every shot on every line from a place of the hole line. */
export function ruleScene(
  model: HoleModel,
  measures: HoleMeasures,
  shots: readonly Shot[],
  values: Float64Array,
  from: Point,
  lie: Lie,
): RuleScene {
  const { hole } = model
  const situation = { x: from[0], y: from[1], lie }
  const { candidates } = evaluateStroke(model, values, {
    situation,
    quadrature: COMPARE_QUADRATURE,
    tries: strokeTries(model, shots, situation, COMPARE_LINE_STEP_DEGREES),
  })
  const optionOf = (candidate: Candidate): RuleOption => {
    const { shot, strokes, table } = candidate
    const { change, turn } = table
    const heading = candidate.heading + turn + Math.atan2(change.driftShare, change.carryShare)
    const total = usualTotal(model.places, candidate, from[0], from[1])
    const finish: Point = [from[0] + total * Math.sin(heading), from[1] + total * Math.cos(heading)]
    const { along } = projectOnPolyline(hole.line, finish)
    return { shot, strokes, heading, total, finish, along, toPin: distance(finish, hole.pin) }
  }
  return {
    measures,
    model,
    from,
    lie,
    along: projectOnPolyline(hole.line, from).along,
    toPin: distance(from, hole.pin),
    numbers: greenNumbers(hole, from),
    options: candidates.map(optionOf),
  }
}

/** The cheapest of some options; `null` of none. */
export function cheapest(options: readonly RuleOption[]): RuleOption | null {
  return options.reduce<RuleOption | null>(
    (least, one) => (least === null || one.strokes < least.strokes ? one : least),
    null,
  )
}

/** Whether an option goes for the green: to its front number and no further from the pin than a chip or pitch. */
export function isAtGreen({ numbers }: RuleScene, { total, toPin }: RuleOption): boolean {
  return numberOfTotal(numbers, total) !== 'layup' && toPin <= SHORT_GAME_METRES
}

import { groundAt } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import { RULES_2023 } from '#golf/rules/rules-2023.ts'
import { lieOfGround } from '#golf/strategy/lie-of-ground.ts'
import { type BallInTrouble, ballSituation } from '#golf/strategy/relief/ball-situation.ts'
import { reliefChoices } from '#golf/strategy/relief/relief-choices.ts'
import { emptyOf, pointOf, ranked, rowOf } from '#golf/strategy/relief/relief-rows.ts'
import type { Relief } from '#golf/strategy/relief.ts'
import type { Point } from '#numbers/geometry/point.ts'

/**
 * What the Rules give a ball played from the markers, with figures made up instead of solved: a stroke more for each
 * 150 m to the pin. Areas, spots and order are the real ones.
 */
export function inventedRelief(hole: Hole, ball: Point, said: BallInTrouble['said'] = 'nothing'): Relief {
  const trouble: BallInTrouble = { from: [0, 0], isFromTee: true, ball, crossed: null, path: null, said }
  const situation = ballSituation(hole, trouble)
  const choices = reliefChoices(hole, trouble, situation, { hand: 'right', clubLengthMetres: 1.14 })
  const isOverEdge = ['penalty-red', 'penalty-yellow', 'out'].includes(situation.relief)
  const crossing = isOverEdge ? situation.reference : null
  const rows = choices.flatMap((choice) => {
    if ('reason' in choice) return []
    const spot = choice.spots[Math.min(choice.spots.length - 1, 12)] ?? ball
    const toPin = Math.hypot(spot[0] - hole.pin[0], spot[1] - hole.pin[1])
    const ground = groundAt(hole, spot)
    const lie = choice.lie ?? lieOfGround(ground)
    const strokes = choice.isValued ? 2.6 + toPin / 150 : null
    return [rowOf(hole, choice, { spot, ground, lie, strokes })]
  })
  return {
    schema: 'relief/1',
    course: 'Invented',
    hole: { ref: hole.ref, par: hole.par, length_m: hole.lengthMetres, tee: hole.teeName },
    player: 'A. Player',
    rules: {
      edition: RULES_2023.edition,
      in_force_from: RULES_2023.inForceFrom,
      local_rules: hole.localRules,
      ruling: '',
    },
    situation: {
      what: situation.relief,
      from: { x_m: 0, y_m: 0, lie: 'tee' },
      ball: pointOf(ball),
      ground: situation.ground,
      crossing: crossing && pointOf(crossing),
      path: [pointOf([0, 0]), pointOf(ball)],
    },
    ...ranked(rows),
    empty: choices.flatMap((choice) => ('reason' in choice ? [emptyOf(choice)] : [])),
    notes: [],
    method: { cell_m: 3, club_length_m: 1.14, residual: 0, converged: true, milliseconds: 0 },
  }
}

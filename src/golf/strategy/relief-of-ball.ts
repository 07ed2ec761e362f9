import type { Day } from '#golf/course/day.ts'
import { groundAt } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Lie, Player } from '#golf/player/player.ts'
import { RULES_2023 } from '#golf/rules/rules-2023.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { holeGround, holeModel, type LayGround } from './hole-model.ts'
import { lieOfGround } from './lie-of-ground.ts'
import { type BallInTrouble, ballSituation } from './relief/ball-situation.ts'
import type { EmptyChoice, ReliefChoice } from './relief/relief-choice.ts'
import { reliefChoices } from './relief/relief-choices.ts'
import { RULING, reliefNotes } from './relief/relief-notes.ts'
import { type ChosenSpot, emptyOf, pointOf, ranked, rowOf } from './relief/relief-rows.ts'
import { bestSpot } from './relief/value-of-spot.ts'
import type { Relief } from './relief.ts'
import { requireGreen } from './require-green.ts'
import { CLUB_LENGTH_METRES, TEEING_AREA_METRES } from './settings.ts'
import { solveHole } from './solve-hole.ts'

/** What is asked: a ball on a hole, what happened to it, and who plays on. */
export interface ReliefQuestion {
  readonly courseName: string
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
  /** Where the last stroke was made, hole frame; absent = from the markers. */
  readonly from?: Point
  /** Where the ball lies, or for a lost ball is thought to lie. */
  readonly ball?: Point
  /** Where it was seen to cross the edge of a penalty area or boundary; absent = worked out from its path. */
  readonly crossed?: Point
  /** The ball's way over the ground, as `ballPath` lays it; absent = straight from the stroke to the ball. */
  readonly path?: readonly Point[]
  /** Absent = the ground under the ball decides. */
  readonly said?: 'unplayable' | 'lost' | 'out'
  /** Length of the longest club but the putter, metres. */
  readonly clubLengthMetres?: number
  readonly cellMetres?: number
  readonly quadrature?: { readonly good: number; readonly mishit: number }
}

/**
 * Every option that the Rules of Golf give a ball, each with its clause, its relief area on the ground, the best spot
 * in it and what it costs, cheapest first. Throws a Failure when the survey lacks the green, or where what is said of
 * the ball and the survey contradict each other. `layGround` may keep what it laid.
 */
export function reliefOfBall(question: ReliefQuestion, layGround: LayGround = holeGround): Relief {
  const { hole, player } = question
  requireGreen(hole)
  const trouble = troubleOf(question)
  const situation = ballSituation(hole, trouble)
  const clubLengthMetres = question.clubLengthMetres ?? CLUB_LENGTH_METRES
  const choices = reliefChoices(hole, trouble, situation, { hand: player.hand, clubLengthMetres })
  const model = holeModel(layGround(hole, question.cellMetres), player, question.day)
  const solved = solveHole(model, question.quadrature)
  const rows = choices.flatMap((choice) => {
    if (isEmpty(choice)) return []
    const best = choice.isValued ? bestSpot(model, solved, choice) : unvalued(hole, choice)
    return best === null ? [] : [rowOf(hole, choice, best)]
  })
  const isOverEdge = ['penalty-red', 'penalty-yellow', 'out'].includes(situation.relief)
  const crossing = isOverEdge ? situation.reference : null
  return {
    schema: 'relief/1',
    course: question.courseName,
    hole: { ref: hole.ref, par: hole.par, length_m: hole.lengthMetres, tee: hole.teeName },
    player: player.name,
    rules: {
      edition: RULES_2023.edition,
      in_force_from: RULES_2023.inForceFrom,
      local_rules: hole.localRules,
      ruling: RULING,
    },
    situation: {
      what:
        situation.canPlayOn && situation.relief.startsWith('unplayable') ? 'as-it-lies' : situation.relief,
      from: { ...pointOf(trouble.from), lie: lieOfStroke(hole, trouble) },
      ball: trouble.ball && pointOf(trouble.ball),
      ground: situation.ground,
      crossing: crossing && pointOf(crossing),
      path: pathOf(trouble, crossing).map(pointOf),
    },
    ...ranked(rows),
    empty: choices.flatMap((choice) => (isEmpty(choice) ? [emptyOf(choice)] : [])),
    notes: reliefNotes(
      trouble,
      situation,
      choices.some(({ option }) => option.kind === 'free-relief'),
    ),
    method: {
      cell_m: model.places.coarse.resolution,
      club_length_m: clubLengthMetres,
      residual: solved.solution.residual,
      converged: solved.solution.converged,
      milliseconds: 0,
    },
  }
}

function troubleOf({ from, ball, crossed, path, said }: ReliefQuestion): BallInTrouble {
  const stroke = from ?? [0, 0]
  return {
    from: stroke,
    isFromTee: distance(stroke, [0, 0]) <= TEEING_AREA_METRES,
    ball: ball ?? null,
    crossed: crossed ?? null,
    path: path ?? null,
    said: said ?? 'nothing',
  }
}

function lieOfStroke(hole: Hole, { from, isFromTee }: BallInTrouble): Lie {
  return isFromTee ? 'tee' : (lieOfGround(groundAt(hole, from)) ?? 'rough')
}

function pathOf({ from, ball, path, crossed }: BallInTrouble, crossing: Point | null): readonly Point[] {
  if (path !== null) return path
  const over = crossed !== null && crossing !== null ? [crossing] : []
  return [from, ...over, ...(ball === null ? [] : [ball])]
}

/** A ball that stays where it is, where the survey cannot tell what a stroke costs. */
function unvalued(hole: Hole, { reference }: ReliefChoice): ChosenSpot {
  return { spot: reference, ground: groundAt(hole, reference), lie: null, strokes: null }
}

function isEmpty(choice: ReliefChoice | EmptyChoice): choice is EmptyChoice {
  return 'reason' in choice
}

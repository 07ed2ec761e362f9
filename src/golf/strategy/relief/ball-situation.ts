import { Failure } from '#faults/failure.ts'
import type { Ground } from '#golf/course/ground.ts'
import { groundAt } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { ReliefSituation } from '#golf/rules/relief-options.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { areaOfCourse } from './areas-of-the-course.ts'
import { crossingPoint, nearestCrossing } from './crossing-point.ts'
import { isInSurvey } from './survey-window.ts'

/** A ball and what happened to it, hole frame. */
export interface BallInTrouble {
  /** Where the last stroke was made. */
  readonly from: Point
  readonly isFromTee: boolean
  /** Where the ball came to rest, or for a lost ball is thought to lie; `null` = not known. */
  readonly ball: Point | null
  /** Where the ball was seen to cross the edge; `null` = worked out from its path. */
  readonly crossed: Point | null
  /** The ball's way over the ground from the stroke to rest; `null` = straight. */
  readonly path: readonly Point[] | null
  /** `nothing` = the ground under the ball decides. */
  readonly said: 'nothing' | 'unplayable' | 'lost' | 'out'
}

/** What the Rules make of it. */
export interface BallSituation {
  readonly relief: ReliefSituation
  /** The ground where the ball lies or ended; `null` for a lost ball without a place. */
  readonly ground: Ground | null
  /** Where it last crossed the edge of the penalty area or boundary, else where it lies; `null` when neither is known. */
  readonly reference: Point | null
  /** Whether the ball can be played where it lies, as far as was said. */
  readonly canPlayOn: boolean
}

/** An edge that was pointed at lies at most so far from the one surveyed, metres. Our assumption: what an eye misses across a pond. */
const CROSSED_NEAR_METRES = 15

const EDGED: readonly Ground[] = ['penalty-red', 'penalty-yellow', 'out']

/** Tells the situation of a ball from what was said and from the survey. Throws a Failure where the two contradict each other or say too little. */
export function ballSituation(hole: Hole, trouble: BallInTrouble): BallSituation {
  const { ball, crossed, from, said } = trouble
  for (const [name, point] of [
    ['ball', ball],
    ['from', from],
    ['crossed', crossed],
  ] as const)
    if (point && !isInSurvey(hole, point))
      throw new Failure(
        'MAR-PLAN-004',
        `The ${name === 'ball' ? 'ball lies' : name === 'from' ? 'stroke was made' : 'crossing lies'} outside the surveyed corridor of the hole.`,
        placeText(name, point),
      )
  const fromArea = areaOfCourse(groundAt(hole, from))
  if (!trouble.isFromTee && (fromArea === 'penalty-area' || fromArea === 'out'))
    throw new Failure(
      'MAR-RELIEF-001',
      fromArea === 'out'
        ? 'No stroke is made from out of bounds: check where it was played from.'
        : 'The stroke was played from a penalty area; relief after that (Rule 17.2) is not worked out here. Ask the Committee or a referee.',
      placeText('from', from),
    )
  if (said === 'lost') return lostBall(hole, trouble)
  if (crossed !== null) return ballOverEdge(hole, trouble, edgeSeen(hole, trouble, crossed))
  if (ball === null)
    throw new Failure(
      'MAR-RELIEF-002',
      'Only a lost ball can do without a place: say where the ball lies or where it crossed the edge.',
      'ball',
    )
  const ground = groundAt(hole, ball)
  const area = areaOfCourse(ground)
  if (said === 'out' && area !== 'out')
    throw new Failure(
      'MAR-RELIEF-003',
      `By the survey the ball lies in bounds, on ${wordsOf(ground)}. A ball is out only when all of it is (Rule 18.2a).`,
      placeText('ball', ball),
    )
  if (said === 'unplayable' && area === 'penalty-area')
    throw new Failure(
      'MAR-RELIEF-004',
      'A ball in a penalty area cannot be declared unplayable (Rule 19.1): leave that out to see the relief from the penalty area.',
      placeText('ball', ball),
    )
  if (said === 'unplayable' && area === 'out')
    throw new Failure(
      'MAR-RELIEF-004',
      'A ball out of bounds cannot be declared unplayable (Rule 19.1 is for a ball on the course): leave that out.',
      placeText('ball', ball),
    )
  if (area === 'out' || area === 'penalty-area') {
    const path = trouble.path ?? [from, ball]
    const point = crossingPoint(hole, ground, path)
    if (point === null)
      throw new Failure(
        'MAR-RELIEF-005',
        'The way from the stroke to the ball crosses no edge of the ground it ended in: say where it crossed.',
        placeText('ball', ball),
      )
    return ballOverEdge(hole, trouble, { ground, point })
  }
  return {
    relief: area === 'bunker' ? 'unplayable-in-bunker' : 'unplayable',
    ground,
    reference: ball,
    canPlayOn: said !== 'unplayable',
  }
}

function lostBall(hole: Hole, { ball, crossed }: BallInTrouble): BallSituation {
  const reference = ball ?? crossed
  const ground = reference === null ? null : groundAt(hole, reference)
  if (ground === 'bunker' || ground === 'green' || ground === 'tee')
    throw new Failure(
      'MAR-RELIEF-006',
      `No ball stays lost ${ground === 'bunker' ? 'in a bunker' : `on a ${ground}`}: check the place, or leave it out when it is not known.`,
      reference === null ? '' : placeText('ball', reference),
    )
  return { relief: 'lost', ground, reference, canPlayOn: false }
}

/** The edge nearest to where the ball was seen to cross: of the ground in which it ended when that is known. */
function edgeSeen(
  hole: Hole,
  { ball, said }: BallInTrouble,
  crossed: Point,
): { readonly ground: Ground; readonly point: Point } {
  const ended = ball === null ? null : groundAt(hole, ball)
  const wanted =
    said === 'out' ? (['out'] as const) : ended !== null && EDGED.includes(ended) ? [ended] : EDGED
  const edge = nearestCrossing(hole, wanted, crossed)
  if (edge === null || edge.distance > CROSSED_NEAR_METRES)
    throw new Failure(
      'MAR-RELIEF-007',
      `No edge of a penalty area or boundary lies within ${CROSSED_NEAR_METRES} m of where the ball was seen to cross.`,
      placeText('crossed', crossed),
    )
  return edge
}

function ballOverEdge(
  hole: Hole,
  { said, ball, crossed }: BallInTrouble,
  { ground, point }: { readonly ground: Ground; readonly point: Point },
): BallSituation {
  if (said === 'unplayable')
    throw new Failure(
      'MAR-RELIEF-004',
      'A ball over the edge of a penalty area or boundary cannot be declared unplayable (Rule 19.1).',
      crossed === null ? '' : placeText('crossed', crossed),
    )
  const ended = ball === null ? ground : groundAt(hole, ball)
  if (!EDGED.includes(ended))
    throw new Failure(
      'MAR-RELIEF-008',
      `By the survey the ball lies on ${wordsOf(ended)}, over no edge: leave out where it crossed, or correct its place.`,
      ball === null ? '' : placeText('ball', ball),
    )
  return {
    relief: ended === 'out' ? 'out' : ended === 'penalty-red' ? 'penalty-red' : 'penalty-yellow',
    ground: ended,
    reference: point,
    canPlayOn: ended !== 'out',
  }
}

function wordsOf(ground: Ground): string {
  return ground.replace('-', ' ')
}

function placeText(name: string, [x, y]: Point): string {
  return `${name} ${x.toFixed(1)},${y.toFixed(1)}`
}

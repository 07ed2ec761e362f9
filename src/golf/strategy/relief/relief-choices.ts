import type { Ground } from '#golf/course/ground.ts'
import { groundRegion } from '#golf/course/ground-pieces.ts'
import type { Hole } from '#golf/course/hole.ts'
import { freeRelief, playedAsItLies, type ReliefOption, reliefOptions } from '#golf/rules/relief-options.ts'
import { RULES_2023 } from '#golf/rules/rules-2023.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import type { BallInTrouble, BallSituation } from './ball-situation.ts'
import { sameArea } from './crossing-point.ts'
import { distanceChoice } from './distance-choice.ts'
import { fairwayChoice } from './fairway-choice.ts'
import { lateralChoice } from './lateral-choice.ts'
import { lineChoice } from './line-choice.ts'
import { obstructionChoice } from './obstruction-choice.ts'
import type { EmptyChoice, ReliefChoice } from './relief-choice.ts'

/** The player's part in it. */
export interface Dropper {
  readonly hand: 'right' | 'left'
  /** Length of the longest club but the putter, metres. */
  readonly clubLengthMetres: number
}

/** Every option that the Rules give a ball, with the places it allows or the reason why it gives none here. */
export function reliefChoices(
  hole: Hole,
  trouble: BallInTrouble,
  situation: BallSituation,
  dropper: Dropper,
): (ReliefChoice | EmptyChoice)[] {
  const { ground, reference, canPlayOn } = situation
  const { ball } = trouble
  const choices: (ReliefChoice | EmptyChoice)[] = []
  if (canPlayOn) choices.push(asItLies(ball ?? reference, isWater(ground)))
  if (ground === 'path' && situation.relief === 'unplayable' && ball)
    choices.push(obstructionChoice(hole, freeRelief(), ball, dropper.hand, dropper.clubLengthMetres))
  for (const option of reliefOptions({ situation: situation.relief, localRules: hole.localRules }))
    choices.push(choiceOf(hole, trouble, situation, option, dropper))
  return choices
}

function choiceOf(
  hole: Hole,
  { from, isFromTee }: BallInTrouble,
  situation: BallSituation,
  option: ReliefOption,
  { clubLengthMetres }: Dropper,
): ReliefChoice | EmptyChoice {
  const { reference, ground } = situation
  if (option.kind === 'stroke-and-distance')
    return distanceChoice(hole, option, from, isFromTee, clubLengthMetres)
  if (reference === null) return { option, reason: 'it needs the place where the ball is thought to lie' }
  const metres = (option.clubLengths ?? 0) * clubLengthMetres
  const bunker = ground === 'bunker' ? bunkerAround(hole, reference) : []
  const limits = {
    metres,
    except:
      isWater(ground) && ground !== null
        ? sameArea(hole, ground, reference)
        : option.kind === 'back-on-the-line-out-of-bunker'
          ? bunker
          : [],
    within: option.isInBunker ? bunker : null,
  }
  switch (option.kind) {
    case 'lateral':
      return lateralChoice(hole, option, reference, limits)
    case 'local-rule-E-5': {
      const { sideClubLengths } = RULES_2023.lostOrOut.nearFairway
      return fairwayChoice(hole, option, reference, sideClubLengths * clubLengthMetres)
    }
    default:
      return lineChoice(hole, option, reference, limits)
  }
}

function asItLies(at: Point | null, isInWater: boolean): ReliefChoice | EmptyChoice {
  const option = playedAsItLies(isInWater ? 'penalty-area' : 'elsewhere')
  if (at === null) return { option, reason: 'where the ball lies is not known' }
  return { option, reference: at, spots: [at], areaAt: () => [], isValued: !isInWater }
}

/** The bunker that holds a point, what is painted over it left out. */
function bunkerAround(hole: Hole, point: Point): Polygon[] {
  return groundRegion(hole, 'bunker').filter((polygon) => polygonContains(polygon, point))
}

function isWater(ground: Ground | null): boolean {
  return ground === 'penalty-red' || ground === 'penalty-yellow'
}

import { RULES_2023 } from './rules-2023.ts'

/** Where a ball is that cannot be played as it lies. */
export type ReliefSituation =
  | 'penalty-red'
  | 'penalty-yellow'
  | 'out'
  | 'lost'
  | 'unplayable'
  | 'unplayable-in-bunker'

/** One way on: under penalty, free, or without relief. */
export interface ReliefOption {
  readonly kind:
    | 'as-it-lies'
    | 'free-relief'
    | 'stroke-and-distance'
    | 'back-on-the-line'
    | 'lateral'
    | 'back-on-the-line-out-of-bunker'
    | 'local-rule-E-5'
  readonly penaltyStrokes: number
  readonly clause: string
  /** What the relief is measured from: where the last stroke was made, where the ball last crossed the edge, or where it lies (for a lost ball: is estimated to lie), or the nearest point where nothing is in the way. */
  readonly reference: 'last-stroke' | 'crossing-point' | 'ball' | 'nearest-point'
  /** Size of the relief area in club-lengths (longest club but the putter); `null` where the option is not measured so. */
  readonly clubLengths: number | null
  /** Whether the ball must stay in the bunker in which it lay. */
  readonly isInBunker: boolean
  /** Whether the reference must be known; stroke and distance needs no ball. */
  readonly needsSpot: boolean
}

/**
 * Every option that the Rules of 2023 give under penalty, cheapest in strokes first; never nearer the hole than the
 * reference. `localRules` names the model Local Rules in force, such as `E-5` (two strokes and a drop by the fairway
 * for a ball lost or out of bounds; not for penalty areas and unplayable balls).
 */
export function reliefOptions(query: {
  readonly situation: ReliefSituation
  readonly localRules: readonly string[]
}): ReliefOption[] {
  const { penaltyArea, lostOrOut, unplayable } = RULES_2023
  switch (query.situation) {
    case 'penalty-red':
      return [
        fromLastStroke(penaltyArea.strokeAndDistance),
        onTheLine(penaltyArea.backOnTheLine, 'crossing-point'),
        lateral(penaltyArea.lateral, 'crossing-point'),
      ]
    case 'penalty-yellow':
      return [
        fromLastStroke(penaltyArea.strokeAndDistance),
        onTheLine(penaltyArea.backOnTheLine, 'crossing-point'),
      ]
    case 'out':
    case 'lost':
      return [
        fromLastStroke(lostOrOut.strokeAndDistance),
        ...(query.localRules.includes(lostOrOut.nearFairway.localRule) ? [nearFairway(query.situation)] : []),
      ]
    case 'unplayable':
      return [
        fromLastStroke(unplayable.strokeAndDistance),
        onTheLine(unplayable.backOnTheLine, 'ball'),
        lateral(unplayable.lateral, 'ball'),
      ]
    case 'unplayable-in-bunker': {
      const { clause } = unplayable.inBunker
      return [
        fromLastStroke(unplayable.strokeAndDistance),
        { ...onTheLine({ ...unplayable.backOnTheLine, clause }, 'ball'), isInBunker: true },
        { ...lateral({ ...unplayable.lateral, clause }, 'ball'), isInBunker: true },
        { ...onTheLine(unplayable.outOfBunker, 'ball'), kind: 'back-on-the-line-out-of-bunker' },
      ]
    }
  }
}

/** Playing on without relief: always open to a ball on the course, in a penalty area too. Source: from memory. */
export function playedAsItLies(place: 'penalty-area' | 'elsewhere'): ReliefOption {
  const { asItLies } = RULES_2023
  return {
    ...fromLastStroke({
      clause: place === 'penalty-area' ? asItLies.penaltyAreaClause : asItLies.clause,
      penaltyStrokes: 0,
    }),
    kind: 'as-it-lies',
    reference: 'ball',
    needsSpot: true,
  }
}

/** Free relief from an immovable obstruction in the general area, such as a path with a made surface. */
export function freeRelief(): ReliefOption {
  return { ...onTheLine(RULES_2023.immovableObstruction, 'nearest-point'), kind: 'free-relief' }
}

interface Clause {
  readonly clause: string
  readonly penaltyStrokes: number
}

function fromLastStroke({ clause, penaltyStrokes }: Clause): ReliefOption {
  return {
    kind: 'stroke-and-distance',
    penaltyStrokes,
    clause,
    reference: 'last-stroke',
    clubLengths: null,
    isInBunker: false,
    needsSpot: false,
  }
}

function onTheLine(
  { clause, penaltyStrokes, clubLengths }: Clause & { readonly clubLengths: number },
  reference: ReliefOption['reference'],
): ReliefOption {
  return {
    kind: 'back-on-the-line',
    penaltyStrokes,
    clause,
    reference,
    clubLengths,
    isInBunker: false,
    needsSpot: true,
  }
}

function lateral(
  clause: Clause & { readonly clubLengths: number },
  reference: ReliefOption['reference'],
): ReliefOption {
  return { ...onTheLine(clause, reference), kind: 'lateral' }
}

function nearFairway(situation: 'out' | 'lost'): ReliefOption {
  const { clause, penaltyStrokes } = RULES_2023.lostOrOut.nearFairway
  return {
    kind: 'local-rule-E-5',
    penaltyStrokes,
    clause,
    reference: situation === 'out' ? 'crossing-point' : 'ball',
    clubLengths: null,
    isInBunker: false,
    needsSpot: true,
  }
}

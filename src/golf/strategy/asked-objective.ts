import type { TeeSet } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import { HANDICAP_ALLOWANCES } from '#golf/rules/handicap-allowances.ts'
import { matchStrokes } from '#golf/rules/match-strokes.ts'
import { strokesReceived } from '#golf/rules/strokes-received.ts'
import { handicapOn } from './handicap-on.ts'
import { type HoleScoresOptions, holeScores } from './hole-scores.ts'
import { chancesOfLaterHoles } from './later-holes.ts'
import { matchStakes } from './match-stakes.ts'
import {
  atMostObjective,
  holeChances,
  matchObjective,
  type Objective,
  ONE_HOLE,
  pointMass,
  pointsObjective,
  targetObjective,
} from './objective.ts'

/** An objective as a person asks for it. Strokes received are counted by the card where they are not given. */
export type AskedObjective<Opponent = Player> = { readonly played: number } & (
  | { readonly kind: 'points'; readonly received: number | undefined }
  | {
      readonly kind: 'at-most'
      readonly strokes: number
      /** The last hole that counts; absent = this one. */
      readonly through: string | undefined
    }
  | {
      readonly kind: 'match'
      readonly received: number | undefined
      /** Who plays against, or a score on the hole that is known. */
      readonly opponent: Opponent | number
      /** The last hole of the match and how it stands; absent = the hole stands for itself. */
      readonly match: { readonly through: string | undefined; readonly up: number } | undefined
    }
)

/** Where an objective is played for. */
export interface ObjectiveSetting {
  readonly teeSets: readonly TeeSet[]
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
  /** The holes after this one that count too, in their order; each has a green. */
  readonly later: readonly Hole[]
  /** How holes are laid out while an opponent and later holes are worked out. */
  readonly options?: HoleScoresOptions
}

/**
 * What every score is worth, from what was asked: an opponent who is a player is planned on the same holes, and holes that
 * count too are worked out first.
 */
export function objectiveOf(asked: AskedObjective, setting: ObjectiveSetting): Objective {
  if (asked.kind === 'at-most') return targetOf(asked, setting)
  if (asked.kind === 'match') return matchOf(asked, setting)
  const { hole, player } = setting
  const own = handicapOf(setting, player, HANDICAP_ALLOWANCES['Individual Stableford'])
  const { received, notes } = counted(asked.received, hole, own === null ? null : [own, 0])
  return pointsObjective(hole.par, received, { played: asked.played, notes })
}

function targetOf(
  { strokes, through, played }: AskedObjective & { readonly kind: 'at-most' },
  { hole, player, day, later, options }: ObjectiveSetting,
): Objective {
  if (through === undefined) return atMostObjective(strokes, { played, notes: [] })
  const chances = chancesOfLaterHoles(later, player, day, Math.max(0, strokes - 1), options)
  const aim = `${strokes} or better on holes ${hole.ref} to ${through}`
  const notes = ['The holes after this one are planned for the same target.']
  return targetObjective(strokes, chances, aim, { played, notes })
}

function matchOf(
  { opponent, received: given, match, played }: AskedObjective & { readonly kind: 'match' },
  setting: ObjectiveSetting,
): Objective {
  const { hole, player, day, later, options } = setting
  const aim = match === undefined ? 'the hole' : 'the match'
  if (typeof opponent === 'number') {
    const stakes = match === undefined ? ONE_HOLE : matchStakes(match.up, [])
    return matchObjective(pointMass(opponent), given ?? 0, { played, notes: [] }, stakes, aim)
  }
  const allowance = HANDICAP_ALLOWANCES['Individual match play']
  const [own, theirs] = [player, opponent].map((one) => handicapOf(setting, one, allowance))
  const differences = own == null || theirs == null ? null : (matchStrokes([own, theirs]) as [number, number])
  const { received, notes } = counted(given, hole, differences)
  const laterChances = later.map((one) =>
    holeChances(
      holeScores(one, player, day, options),
      holeScores(one, opponent, day, options),
      counted(undefined, one, differences).received,
    ),
  )
  const stakes = match === undefined ? ONE_HOLE : matchStakes(match.up, laterChances)
  const others = later.length > 0 ? ', and on later holes so are you' : ''
  return matchObjective(
    holeScores(hole, opponent, day, options),
    received,
    {
      played,
      notes: [...notes, `${opponent.name} is taken to play the plan for the fewest strokes${others}.`],
    },
    stakes,
    aim,
  )
}

function handicapOf({ teeSets, hole }: ObjectiveSetting, player: Player, allowance: number): number | null {
  return handicapOn(teeSets, hole.teeName, player, allowance)
}

/**
 * Handicap strokes on the hole as given, else those of the player less those of the opponent by its stroke index, else
 * none; and what to say of it. `handicaps`: whole strokes of both, `null` where the card does not tell.
 */
function counted(
  given: number | undefined,
  { strokeIndex }: Hole,
  handicaps: readonly [own: number, theirs: number] | null,
): { readonly received: number; readonly notes: readonly string[] } {
  if (given !== undefined) return { received: given, notes: [] }
  if (handicaps === null || strokeIndex === null)
    return {
      received: 0,
      notes: ['No handicap strokes are counted: the card lacks ratings of these tees or the stroke index.'],
    }
  const [own, theirs] = handicaps
  const received = strokesReceived(own, strokeIndex) - strokesReceived(theirs, strokeIndex)
  return {
    received,
    notes: [`Handicap strokes on this hole by the card, stroke index ${strokeIndex}: ${received}.`],
  }
}

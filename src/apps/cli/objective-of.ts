import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import { HANDICAP_ALLOWANCES } from '#golf/rules/handicap-allowances.ts'
import { matchStrokes } from '#golf/rules/match-strokes.ts'
import { strokesReceived } from '#golf/rules/strokes-received.ts'
import { holeScores } from '#golf/strategy/hole-scores.ts'
import {
  atMostObjective,
  matchObjective,
  type Objective,
  pointMass,
  pointsObjective,
} from '#golf/strategy/objective.ts'
import { handicapOn } from './handicap-on.ts'
import { loadPlayer } from './load-player.ts'
import type { AskedObjective } from './parse-objective.ts'

/** Where an objective is played for. */
export interface ObjectiveSetting {
  readonly course: Course
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
}

/**
 * What every score is worth, from what was asked: handicap strokes are counted by the card where they are not given, and
 * an opponent in a file is planned on the same hole. Throws what is wrong with that file.
 */
export function objectiveOf(asked: AskedObjective, setting: ObjectiveSetting): Objective {
  const { played } = asked
  if (asked.kind === 'at-most') return atMostObjective(asked.strokes, { played, notes: [] })
  const { hole, player, day } = setting
  const handicapOf = (one: Player, allowance: number): number | null =>
    handicapOn(setting.course.teeSets, hole.teeName, one, allowance)
  if (asked.kind === 'points') {
    const own = handicapOf(player, HANDICAP_ALLOWANCES['Individual Stableford'])
    const { received, notes } = counted(asked.received, hole, own)
    return pointsObjective(hole.par, received, { played, notes })
  }
  if (typeof asked.opponent === 'number') {
    const { received, notes } = counted(asked.received ?? 0, hole, null)
    return matchObjective(pointMass(asked.opponent), received, { played, notes })
  }
  const opponent = loadPlayer(asked.opponent)
  const allowance = HANDICAP_ALLOWANCES['Individual match play']
  const own = handicapOf(player, allowance)
  const theirs = handicapOf(opponent, allowance)
  const [mine = 0, other = 0] = own === null || theirs === null ? [] : matchStrokes([own, theirs])
  const { received, notes } = counted(
    asked.received,
    hole,
    own === null || theirs === null ? null : mine - other,
  )
  return matchObjective(holeScores(hole, opponent, day), received, {
    played,
    notes: [...notes, `${opponent.name} is taken to play the plan for the fewest strokes.`],
  })
}

/** Handicap strokes on the hole as given, else by its stroke index, else none; and what to say of it. */
function counted(
  given: number | undefined,
  { strokeIndex }: Hole,
  handicap: number | null,
): { readonly received: number; readonly notes: readonly string[] } {
  if (given !== undefined) return { received: given, notes: [] }
  if (handicap === null || strokeIndex === null)
    return {
      received: 0,
      notes: ['No handicap strokes are counted: the card lacks ratings of these tees or the stroke index.'],
    }
  const received = strokesReceived(handicap, strokeIndex)
  return {
    received,
    notes: [`Handicap strokes on this hole by the card, stroke index ${strokeIndex}: ${received}.`],
  }
}

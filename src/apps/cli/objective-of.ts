import { Failure } from '#faults/failure.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import { type AskedObjective, objectiveOf as objectiveFrom } from '#golf/strategy/asked-objective.ts'
import { holesAfter } from '#golf/strategy/holes-after.ts'
import type { Objective } from '#golf/strategy/objective.ts'
import { loadPlayer } from './load-player.ts'

/** Where an objective is played for. */
export interface ObjectiveSetting {
  readonly course: Course
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
}

/**
 * What every score is worth, from what was typed: an opponent in a file is read, and holes that count too are cut. Throws
 * what is wrong with that file, and MAR-USAGE-002 for a last hole that does not follow.
 */
export function objectiveOf(asked: AskedObjective<string>, setting: ObjectiveSetting): Objective {
  const { course, hole, player, day } = setting
  const later = laterHoles(throughOf(asked), setting)
  return objectiveFrom(opponentRead(asked), { teeSets: course.teeSets, hole, player, day, later })
}

function opponentRead(asked: AskedObjective<string>): AskedObjective {
  if (asked.kind !== 'match') return asked
  const { opponent } = asked
  return { ...asked, opponent: typeof opponent === 'number' ? opponent : loadPlayer(opponent) }
}

function throughOf(asked: AskedObjective<string>): string | undefined {
  if (asked.kind === 'at-most') return asked.through
  return asked.kind === 'match' ? asked.match?.through : undefined
}

function laterHoles(through: string | undefined, { course, hole, day }: ObjectiveSetting): readonly Hole[] {
  if (through === undefined) return []
  const later = holesAfter(course, hole, day, through)
  if (later === null)
    throw new Failure('MAR-USAGE-002', `There is no hole ${through} after hole ${hole.ref}.`, '--through')
  return later
}

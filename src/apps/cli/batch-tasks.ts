import { Failure } from '#faults/failure.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Player } from '#golf/player/player.ts'
import type { PlanQuestion } from '#golf/strategy/plan-hole.ts'
import { type AskedHole, askHole, planQuestion } from './ask-hole.ts'
import type { Question } from './parse-question.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

/** A player and the file that he or she is from, as typed. */
export interface FiledPlayer {
  readonly file: string
  readonly player: Player
}

/** Who plays which holes, when, and what is asked. */
export interface BatchQuestion {
  readonly course: Course
  /** A hole of the course, or `all`. */
  readonly hole: string
  readonly players: readonly FiledPlayer[]
  readonly day: Day
  readonly question: Question
  readonly units: ReaderUnits
}

/** One hole for one player, to be planned. */
export interface BatchTask {
  readonly asked: AskedHole
  readonly player: FiledPlayer
  readonly question: PlanQuestion
}

/** A hole that has no plan for a player, and why. */
export interface UnplannedHole {
  readonly hole: string
  readonly code: string
  readonly message: string
  /** Where the fault is, as far as it is known: a field, an option. */
  readonly where: string
}

/** What there is to plan, hole by hole, and the holes that cannot be chosen at all. */
export interface BatchTasks {
  readonly tasks: readonly BatchTask[]
  readonly refused: readonly { readonly player: FiledPlayer; readonly unplanned: UnplannedHole }[]
}

/**
 * Every hole for every player. Of a round a hole that cannot be chosen is set aside with its reason; throws a Failure when
 * no hole can, and what choosing throws when one hole was named.
 */
export function batchTasks({ course, hole, players, day, question, units }: BatchQuestion): BatchTasks {
  if (hole !== 'all') return { tasks: tasksOf(askHole(course, hole, day, question)), refused: [] }
  if (course.holes.length === 0)
    throw new Failure('MAR-COURSE-001', `${course.name || 'This course'} has no holes.`, '--hole')
  const tasks: BatchTask[] = []
  const refused: { player: FiledPlayer; unplanned: UnplannedHole }[] = []
  for (const { ref } of course.holes) {
    try {
      tasks.push(...tasksOf(askHole(course, ref, day, question)))
    } catch (error) {
      if (!(error instanceof Failure)) throw error
      const { code, message, where } = error
      refused.push(...players.map((player) => ({ player, unplanned: { hole: ref, code, message, where } })))
    }
  }
  refuseUnknownTee(refused, tasks.length, question.tee)
  return { tasks, refused }

  function tasksOf(asked: AskedHole): BatchTask[] {
    return players.map((player) => ({
      asked,
      player,
      question: planQuestion(asked, course, player.player, question, units),
    }))
  }
}

/** A tee that no hole has is a slip on the command line, not a fault of the course. Throws MAR-COURSE-002. */
function refuseUnknownTee(
  refused: BatchTasks['refused'],
  plannedCount: number,
  tee: string | undefined,
): void {
  if (tee === undefined || plannedCount > 0) return
  const first = refused.find(({ unplanned }) => unplanned.code === 'MAR-COURSE-002')
  if (first !== undefined) throw new Failure('MAR-COURSE-002', first.unplanned.message, '--tee')
}

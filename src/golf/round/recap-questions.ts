import { errorFault } from '#faults/answered.ts'
import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import type { Player } from '#golf/player/player.ts'
import type { RecapQuestion } from './recap-hole.ts'
import type { RoundHole } from './round.ts'

/** Who played where, from which tees and on what day. `tee`: `null` = those that a plan takes. */
export interface PlayedOn {
  readonly course: Course
  readonly player: Player
  readonly day: Day
  readonly tee: string | null
}

/** A question a logged hole, in the order of the log; what cannot be asked is a fault of its own and stops no other. */
export function recapQuestions(
  { course, player, day, tee }: PlayedOn,
  holes: readonly RoundHole[],
): { readonly questions: readonly RecapQuestion[]; readonly faults: readonly Fault[] } {
  const questions: RecapQuestion[] = []
  const faults: Fault[] = []
  for (const logged of holes) {
    try {
      const hole = holeFromCourse(course, logged.ref, { tee: tee ?? undefined, day })
      questions.push({ hole, player, day, logged })
    } catch (error) {
      if (!(error instanceof Failure)) throw error
      faults.push(errorFault(error))
    }
  }
  return { questions, faults }
}

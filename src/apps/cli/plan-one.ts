import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Player } from '#golf/player/player.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import { type AskedHole, askHole, planQuestion } from './ask-hole.ts'
import type { Question } from './parse-question.ts'
import { timedPlan } from './timed-plan.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

/** One hole, who plays it, when, and what is asked. */
export interface HoleQuestion {
  readonly course: Course
  readonly ref: string
  readonly player: Player
  readonly day: Day
  readonly question: Question
  readonly units: ReaderUnits
}

/** A hole as asked, the day with the wind as asked, and the plan. */
export interface PlannedHole extends AskedHole {
  readonly plan: Plan
}

/** Chooses the hole and plans it here. Throws what choosing and planning throw. */
export function planOne({ course, ref, player, day, question, units }: HoleQuestion): PlannedHole {
  const asked = askHole(course, ref, day, question)
  return { ...asked, plan: timedPlan(planQuestion(asked, course, player, question, units)) }
}

import { performance } from 'node:perf_hooks'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { parseRelativeWind } from '#golf/course/parse-relative-wind.ts'
import type { Player } from '#golf/player/player.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import { planHole } from '#golf/strategy/plan-hole.ts'
import type { Question } from './parse-question.ts'
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
export interface PlannedHole {
  readonly hole: Hole
  readonly day: Day
  readonly plan: Plan
}

/** Chooses the hole and plans it, with the time it took in the plan. Throws what choosing and planning throw. */
export function planOne({ course, ref, player, day, question, units }: HoleQuestion): PlannedHole {
  const hole = holeFromCourse(course, ref, { tee: question.tee, day, pin: question.pin })
  const { from, lie, stance, club, draws, wind, flips } = question
  const windy = wind === undefined ? day : { ...day, wind: parseRelativeWind(wind, hole.bearingDegrees) }
  const started = performance.now()
  const plan = planHole({
    courseName: course.name,
    hole,
    player,
    day: windy,
    units,
    flips,
    ...(from === undefined ? {} : { from }),
    ...lie,
    ...(stance === undefined ? {} : { stance }),
    ...(club === undefined ? {} : { club }),
    ...(draws === undefined ? {} : { draws }),
  })
  const milliseconds = Math.round(performance.now() - started)
  return { hole, day: windy, plan: { ...plan, method: { ...plan.method, milliseconds } } }
}

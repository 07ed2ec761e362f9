import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { parseRelativeWind } from '#golf/course/parse-relative-wind.ts'
import type { Player } from '#golf/player/player.ts'
import type { PlanQuestion } from '#golf/strategy/plan-hole.ts'
import { objectiveOf } from './objective-of.ts'
import type { Question } from './parse-question.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

/** A hole as asked about, and the day with the wind as asked. */
export interface AskedHole {
  readonly hole: Hole
  readonly day: Day
}

/** Chooses the hole with its markers and pin. Throws what choosing throws. */
export function askHole(course: Course, ref: string, day: Day, { tee, pin, wind }: Question): AskedHole {
  const hole = holeFromCourse(course, ref, { tee, day, pin })
  return {
    hole,
    day: wind === undefined ? day : { ...day, wind: parseRelativeWind(wind, hole.bearingDegrees) },
  }
}

/** What the planner is asked about the hole: a plain record, which any thread can be handed. Throws what an opponent's file throws. */
export function planQuestion(
  { hole, day }: AskedHole,
  course: Course,
  player: Player,
  { from, lie, stance, club, draws, isQuick, flips, objective }: Question,
  units: ReaderUnits,
): PlanQuestion {
  return {
    courseName: course.name,
    hole,
    player,
    day,
    units,
    flips,
    ...(from === undefined ? {} : { from }),
    ...lie,
    ...(stance === undefined ? {} : { stance }),
    ...(club === undefined ? {} : { club }),
    ...(draws === undefined ? {} : { draws }),
    ...(isQuick ? { isQuick } : {}),
    ...(objective === undefined ? {} : { objective: objectiveOf(objective, { course, hole, player, day }) }),
  }
}

import { SingleBar } from 'cli-progress'
import { Failure } from '#faults/failure.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Player } from '#golf/player/player.ts'
import type { Machine } from './machine.ts'
import type { Question } from './parse-question.ts'
import { type PlannedHole, planOne } from './plan-one.ts'
import type { PlanOptions } from './plan-options.ts'
import { printJson, printLines } from './print-answer.ts'
import { roundPage } from './round-page.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

/** What a round is planned from. */
export interface RoundQuestion {
  readonly course: Course
  readonly player: Player
  readonly day: Day
  readonly question: Question
  readonly options: PlanOptions
  readonly units: ReaderUnits
}

/** A hole of the round that has no plan, and why. */
export interface UnplannedHole {
  readonly hole: string
  readonly code: string
  readonly message: string
}

/** Every hole of a course planned in turn. Returns the exit code: 1 when a hole could not be planned. */
export function planRound(asked: RoundQuestion, machine: Machine): number {
  const { course, player, day, question, options, units } = asked
  if (course.holes.length === 0)
    throw new Failure('MAR-COURSE-001', `${course.name || 'This course'} has no holes.`, '--hole')
  const planned: PlannedHole[] = []
  const unplanned: UnplannedHole[] = []
  const bar = progressBar(machine, options.quiet === true)
  bar?.start(course.holes.length, 0)
  for (const { ref } of course.holes) {
    try {
      planned.push(planOne({ course, ref, player, day, question, units }))
    } catch (error) {
      if (!(error instanceof Failure)) throw error
      unplanned.push({ hole: ref, code: error.code, message: error.message })
    }
    bar?.increment()
  }
  bar?.stop()
  refuseUnknownTee(unplanned, planned.length, question.tee)
  const plans = planned.map(({ plan }) => plan)
  const strokes = plans.reduce((sum, plan) => sum + plan.value.strokes, 0)
  if (options.json)
    printJson(
      {
        schema: 'round-plan/1',
        course: course.name,
        player: player.name,
        value: { strokes },
        plans,
        unplanned,
      },
      machine,
    )
  else printLines(roundPage(planned, unplanned, strokes, units), machine)
  return unplanned.length === 0 ? 0 : 1
}

/** A tee that no hole has is a slip on the command line, not a fault of the course. Throws MAR-COURSE-002. */
function refuseUnknownTee(
  unplanned: readonly UnplannedHole[],
  plannedCount: number,
  tee: string | undefined,
): void {
  if (tee === undefined || plannedCount > 0) return
  const [first] = unplanned.filter(({ code }) => code === 'MAR-COURSE-002')
  if (first !== undefined) throw new Failure('MAR-COURSE-002', first.message, '--tee')
}

/** A bar on standard error, only where a person watches. */
function progressBar(machine: Machine, isQuiet: boolean): SingleBar | null {
  if (!machine.isWatched || isQuiet) return null
  return new SingleBar({
    format: 'hole {value} of {total} {bar}',
    stream: process.stderr,
    clearOnComplete: true,
  })
}

import { errorFault } from '#faults/answered.ts'
import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import type { Round, RoundHole } from './round.ts'

/** A round under the name by which it is known, with its own day; `null` = no conditions of that day are known. */
export interface RoundOfDay {
  readonly name: string
  readonly round: Round
  readonly day: Day | null
}

/** A hole with all that was logged on it on days alike. */
export interface HoleOfRounds {
  readonly hole: Hole
  readonly day: Day
  readonly logged: readonly { readonly round: Round; readonly hole: RoundHole }[]
}

/** The holes of rounds, each tee and day apart; `calm` stands for a day nobody wrote down, `tee`: `null` = as each round says. */
export function holesOfRounds(
  course: Course,
  rounds: readonly RoundOfDay[],
  calm: Day,
  tee: string | null,
): { readonly holes: readonly HoleOfRounds[]; readonly faults: readonly Fault[] } {
  const groups = new Map<string, HoleOfRounds & { readonly logged: { round: Round; hole: RoundHole }[] }>()
  const faults: Fault[] = []
  for (const { name, round, day } of rounds)
    for (const logged of round.holes) {
      const markers = tee ?? round.tee
      const key = JSON.stringify([logged.ref, markers, day])
      const known = groups.get(key)
      if (known !== undefined) {
        known.logged.push({ round, hole: logged })
        continue
      }
      try {
        const played = day ?? calm
        const hole = holeFromCourse(course, logged.ref, { tee: markers ?? undefined, day: played })
        groups.set(key, { hole, day: played, logged: [{ round, hole: logged }] })
      } catch (error) {
        if (!(error instanceof Failure)) throw error
        faults.push({ ...errorFault(error), place: `${name}, ${error.where}` })
      }
    }
  return { holes: [...groups.values()], faults }
}

/** The day of a round's date; the only one where a round has no date. */
export function dayOfRound({ date }: Pick<Round, 'date'>, days: readonly Day[]): Day | null {
  if (date === null) return days.length === 1 ? (days[0] ?? null) : null
  return days.find((day) => day.date === date) ?? null
}

import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import type { Round, RoundHole } from '#golf/round/round.ts'
import { roundKey } from '#golf/round/round-key.ts'
import { loadDay } from './load-day.ts'
import { loadRound } from './load-round.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'
import { errorFault } from './work-holes.ts'

/** A round from a file, with the day it was played on where there is a day file of it. */
export interface LoadedRound {
  readonly file: string
  readonly round: Round
  /** What tells it from every other round. */
  readonly key: string
  readonly day: Day | null
}

/** Reads rounds and the day files of their dates. Throws MAR-ROUND-020 for a round that is given twice. */
export function loadRounds(
  options: GlobalOptions & { readonly round: readonly string[]; readonly day: readonly string[] },
  course: Course,
  units: ReaderUnits,
  machine: Machine,
): { readonly rounds: readonly LoadedRound[]; readonly faults: readonly Fault[] } {
  const days = options.day.map((file) => loadDay(file, course, options, machine))
  const faults: Fault[] = []
  const seen = new Map<string, string>()
  const rounds = options.round.map((file): LoadedRound => {
    const read = loadRound(file, units)
    faults.push(...read.faults.map((fault) => ({ ...fault, place: `${file}, ${fault.place}` })))
    const key = roundKey(read)
    const before = seen.get(key)
    if (before !== undefined)
      throw new Failure('MAR-ROUND-020', `${file} is the same round as ${before}.`, '--round')
    seen.set(key, file)
    return { file, round: read.round, key, day: dayOf(read.round, days) }
  })
  return { rounds, faults }
}

/** A hole with all that was logged on it on days alike. */
export interface HoleOfRounds {
  readonly hole: Hole
  readonly day: Day
  readonly logged: readonly { readonly round: Round; readonly hole: RoundHole }[]
}

/** The holes of rounds, each tee and day apart; \`calm\` stands for a day nobody wrote down. */
export function holesOfRounds(
  course: Course,
  rounds: readonly LoadedRound[],
  calm: Day,
  tee: string | undefined,
): { readonly holes: readonly HoleOfRounds[]; readonly faults: readonly Fault[] } {
  const groups = new Map<string, HoleOfRounds & { readonly logged: { round: Round; hole: RoundHole }[] }>()
  const faults: Fault[] = []
  for (const { file, round, day } of rounds)
    for (const logged of round.holes) {
      const markers = tee ?? round.tee ?? undefined
      const key = JSON.stringify([logged.ref, markers ?? null, day])
      const known = groups.get(key)
      if (known !== undefined) {
        known.logged.push({ round, hole: logged })
        continue
      }
      try {
        const played = day ?? calm
        const hole = holeFromCourse(course, logged.ref, { tee: markers, day: played })
        groups.set(key, { hole, day: played, logged: [{ round, hole: logged }] })
      } catch (error) {
        if (!(error instanceof Failure)) throw error
        faults.push({ ...errorFault(error), place: `${file}, ${error.where}` })
      }
    }
  return { holes: [...groups.values()], faults }
}

/** The day file of a round's date; the only one where a round has no date. */
function dayOf({ date }: Round, days: readonly Day[]): Day | null {
  if (date === null) return days.length === 1 ? (days[0] ?? null) : null
  return days.find((day) => day.date === date) ?? null
}

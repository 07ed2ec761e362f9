import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import type { Player } from '#golf/player/player.ts'
import { dayOfRound } from '#golf/round/holes-of-rounds.ts'
import type { RoundToRead } from '#golf/round/read-rounds.ts'
import { roundKey } from '#golf/round/round-key.ts'
import { loadDay } from './load-day.ts'
import { loadRound } from './load-round.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

/**
 * Reads rounds and the day files of their dates, of one of `players` where there are any. Throws MAR-ROUND-020 for a round that is
 * given twice, and what reading one throws.
 */
export function loadRounds(
  options: GlobalOptions & { readonly round: readonly string[]; readonly day: readonly string[] },
  course: Course,
  units: ReaderUnits,
  machine: Machine,
  players: readonly Player[],
): { readonly rounds: readonly RoundToRead[]; readonly faults: readonly Fault[] } {
  const days = options.day.map((file) => loadDay(file, course, options, machine))
  const faults: Fault[] = []
  const seen = new Map<string, string>()
  const rounds = options.round.map((file): RoundToRead => {
    const read = loadRound(file, units, { course: course.name, players })
    faults.push(...read.faults.map((fault) => ({ ...fault, place: `${file}, ${fault.place}` })))
    const key = roundKey(read)
    const before = seen.get(key)
    if (before !== undefined)
      throw new Failure('MAR-ROUND-020', `${file} is the same round as ${before}.`, '--round')
    seen.set(key, file)
    return {
      name: file,
      round: read.round,
      planNumbers: read.planNumbers,
      key,
      day: dayOfRound(read.round, days),
    }
  })
  return { rounds, faults }
}

import type { Fault } from '#faults/fault.ts'
import type { Player } from '#golf/player/player.ts'
import { type RoundsRead, readRounds, roundShotsQuestions } from '#golf/round/read-rounds.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { parseWorkers } from './parse-workers.ts'
import { roundShotsPool } from './plan-pool.ts'
import { loadRounds } from './rounds-of-days.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'
import { workHoles } from './work-holes.ts'

/** Which rounds are learned from, as typed. */
export interface RoundsOptions extends GlobalOptions {
  readonly course: string
  readonly round: readonly string[]
  readonly day: readonly string[]
  readonly tee?: string
  readonly full?: boolean
  readonly workers?: string
}

/** What rounds say of a player, and what in their files does not make sense. */
export interface RoundsOfFiles extends RoundsRead {
  readonly faults: readonly Fault[]
}

/** What rounds say, hole by hole in threads. A round that the player was learned from before is told and left out. */
export async function loadRoundShots(
  player: Player,
  options: RoundsOptions,
  units: ReaderUnits,
  machine: Machine,
): Promise<RoundsOfFiles> {
  const { course } = await loadCourse(options.course)
  const loaded = loadRounds(options, course, units, machine, [player])
  const isOld = ({ key }: (typeof loaded.rounds)[number]): boolean =>
    player.learnedRounds?.includes(key) === true
  const rounds = loaded.rounds.filter((one) => !isOld(one))
  const calm = loadDay(undefined, course, options, machine)
  const asked = roundShotsQuestions(
    rounds,
    { course, player, day: calm, tee: options.tee ?? null },
    options.full !== true,
  )
  const workers = parseWorkers(options.workers)
  const worked = await workHoles(roundShotsPool, asked.questions, workers, options.quiet === true, machine)
  return {
    ...readRounds(
      rounds,
      worked.answers.map(({ answer }) => answer.ofHole),
    ),
    faults: [
      ...loaded.rounds.filter(isOld).map(
        ({ name }): Fault => ({
          severity: 'warning',
          code: 'MAR-ROUND-021',
          message: `${player.name} was learned from this round before: it was left out.`,
          place: name,
          advice: 'Give the player file of before it to learn from it anew.',
        }),
      ),
      ...loaded.faults,
      ...asked.faults,
      ...worked.faults,
    ],
  }
}

import type { Fault } from '#faults/fault.ts'
import type { Player } from '#golf/player/player.ts'
import { holesOfRounds } from '#golf/round/holes-of-rounds.ts'
import type { ReadRounds } from '#golf/round/learn-from-rounds.ts'
import type { RoundShotsQuestion } from '#golf/round/round-tasks.ts'
import { addShots, type ShotsOfHole } from '#golf/round/shots-of-hole.ts'
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

/** What rounds say of a player. */
export interface RoundsRead extends ShotsOfHole {
  readonly rounds: number
  /** Rounds without a day file of their date: taken as played on a calm, normal day. */
  readonly withoutDay: number
  /** What tells each of them from every other round. */
  readonly keys: readonly string[]
  readonly faults: readonly Fault[]
}

/** No rounds at all. */
export const NO_ROUNDS: ReadRounds = { shots: [], putts: [], strokes: [], keys: [] }

/** What rounds say, hole by hole in threads. A round that the player was learned from before is told and left out. */
export async function readRounds(
  player: Player,
  options: RoundsOptions,
  units: ReaderUnits,
  machine: Machine,
): Promise<RoundsRead> {
  const { course } = await loadCourse(options.course)
  const loaded = loadRounds(options, course, units, machine)
  const isOld = ({ key }: (typeof loaded.rounds)[number]): boolean =>
    player.learnedRounds?.includes(key) === true
  const rounds = loaded.rounds.filter((one) => !isOld(one))
  const calm = loadDay(undefined, course, options, machine)
  const asked = holesOfRounds(course, rounds, calm, options.tee ?? null)
  const questions = asked.holes.map(
    ({ hole, day, logged }): RoundShotsQuestion => ({
      ...{ hole, player, day, isQuick: options.full !== true },
      logged: logged.map((one) => ({ date: one.round.date, hole: one.hole })),
    }),
  )
  const workers = parseWorkers(options.workers)
  const worked = await workHoles(roundShotsPool, questions, workers, options.quiet === true, machine)
  return {
    ...addShots(worked.answers.map(({ answer }) => answer.ofHole)),
    rounds: rounds.length,
    withoutDay: rounds.filter(({ day }) => day === null).length,
    keys: rounds.map(({ key }) => key),
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

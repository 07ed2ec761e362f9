import { availableParallelism } from 'node:os'
import { clubWords } from '#golf/player/club-words.ts'
import type { LearnedFromShots } from '#golf/player/learn-from-shots.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import { type PlanChange, planChange } from '#golf/strategy/plan-change.ts'
import { batchTasks, type UnplannedHole } from './batch-tasks.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { parseQuestion } from './parse-question.ts'
import { planBatch } from './plan-batch.ts'
import { planPool } from './plan-pool.ts'
import { progressBar } from './progress-bar.ts'
import { lengthText, type ReaderUnits, sideText } from './units-of-the-reader.ts'
import { whileInterruptible } from './while-interruptible.ts'

/** Which plans are asked whether they change. */
export interface PlansOptions extends GlobalOptions {
  readonly course: string
  readonly hole?: string
}

/** What shots change in the plans of a course. */
export interface ChangedPlans {
  readonly course: string
  /** How many holes were planned for the player of before and of now. */
  readonly compared: number
  readonly changes: readonly PlanChange[]
  readonly unplanned: readonly UnplannedHole[]
}

/** Plans the holes by quick settings for the player before the shots and after them, in threads, and compares. Throws what choosing a hole throws. */
export async function changedPlans(
  { before, learned }: LearnedFromShots,
  options: PlansOptions,
  units: ReaderUnits,
  machine: Machine,
): Promise<ChangedPlans> {
  const { course } = await loadCourse(options.course)
  const hole = options.hole ?? 'all'
  const question = parseQuestion({ ...options, hole, player: [options.course], flips: false })
  const players = [before, learned.player].map((player) => ({ file: '', player }))
  const day = loadDay(undefined, course, options, machine)
  const batch = batchTasks({ course, hole, players, day, question, units })
  const tasks = batch.tasks.map((task) => ({ ...task, question: { ...task.question, isQuick: true } }))
  const plans = players.map(() => new Map<string, Plan>())
  const unplanned = new Map<string, UnplannedHole>()
  const pool = planPool(Math.min(availableParallelism(), tasks.length))
  const bar = progressBar('plan', machine, options.quiet === true)
  bar?.start(tasks.length, 0)
  try {
    await whileInterruptible(async (signal) => {
      for await (const row of planBatch({ ...batch, tasks }, pool, signal, (done) => bar?.update(done))) {
        if ('unplanned' in row) unplanned.set(row.unplanned.hole, row.unplanned)
        else plans[players.indexOf(row.player)]?.set(row.planned.hole.ref, row.planned.plan)
      }
    })
  } finally {
    await pool.close()
    bar?.stop()
  }
  const pairs = course.holes.flatMap(({ ref }) => {
    const [was, now] = plans.map((of) => of.get(ref))
    return was === undefined || now === undefined ? [] : [[was, now] as const]
  })
  return {
    course: course.name,
    compared: pairs.length,
    changes: pairs.flatMap(([was, now]) => planChange(was, now) ?? []),
    unplanned: [...unplanned.values()],
  }
}

/** The plans that change, a line each, for a person. */
export function changedPlanLines(
  { course, compared, changes, unplanned }: ChangedPlans,
  units: ReaderUnits,
): string[] {
  const over = `${compared} ${compared === 1 ? 'hole' : 'holes'} of ${course}`
  return [
    ...(changes.length === 0 ? [`no plan changes on ${over}: play on as before`] : []),
    ...changes.flatMap(({ hole, first, approaches }) => [
      ...(first === null ? [] : [`Hole ${hole}: ${firstText(first, units)}`]),
      ...approaches.map(
        ({ lie, before, after }) =>
          `Hole ${hole}, from ${lie}: ${numberText(after)}, it was ${numberText(before)}`,
      ),
    ]),
    ...(changes.length === 0 ? [] : [`Compared on ${over}; where nothing is said the plan stays.`]),
    ...unplanned.map(({ hole, code, message }) => `Hole ${hole} has no plan: ${code} ${message}`),
  ]
}

function firstText(
  { what, before, after, cost }: NonNullable<PlanChange['first']>,
  units: ReaderUnits,
): string {
  const line = ({ aim }: typeof before): string =>
    `${sideText(aim.offset_m, units)} at ${lengthText(aim.at_m, units)}`
  const price = cost === null ? 'is not played any more' : `would cost ${cost.toFixed(2)}`
  return what === 'club'
    ? `${clubWords(after.club)}, ${line(after)}; the ${clubWords(before.club)} of before ${price}`
    : `${clubWords(after.club)}, now ${line(after)}; the line of before, ${line(before)}, ${price}`
}

function numberText(number: PlanChange['approaches'][number]['after']): string {
  return number === 'layup' ? 'lay up' : `to the ${number} number`
}

import type { Fault } from '#faults/fault.ts'
import { concerning } from './concerning.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import { loadField } from './load-field.ts'
import type { Machine } from './machine.ts'
import { parseQuestion } from './parse-question.ts'
import { plainText } from './plain-text.ts'
import { planOne } from './plan-one.ts'
import type { PlanOptions } from './plan-options.ts'
import { planPage } from './plan-page.ts'
import { planPicture } from './plan-picture.ts'
import { printJson, printLines } from './print-answer.ts'
import { exitCodeOf, faultLines } from './print-faults.ts'
import { requireClub } from './require-club.ts'
import { runBatch } from './run-batch.ts'
import { parseUnits } from './units-of-the-reader.ts'
import { whileWorking } from './while-working.ts'
import { writeText } from './write-file.ts'

/** `marram plan`: the plan of one hole or of the round, for one player or several. Returns the exit code. */
export async function planCommand(path: string, options: PlanOptions, machine: Machine): Promise<number> {
  const units = parseUnits(options.units)
  const question = parseQuestion(options)
  const { course, faults } = await loadCourse(path)
  const players = loadField(options.player)
  for (const { player } of players) requireClub(player, question.club)
  const day = loadDay(options.day, course, options, machine, options.pins)
  const [one, ...others] = players
  if (one === undefined || others.length > 0 || options.hole === 'all' || options.jsonLines)
    return runBatch(
      { course, hole: options.hole, players, day, question, units },
      question.workers,
      options,
      machine,
    )
  const { player } = one

  const concerned = concerning(faults, options.hole)
  const planned = whileWorking(`Planning hole ${options.hole}`, options.quiet === true, machine, () =>
    planOne({ course, ref: options.hole, player, day, question, units }),
  )
  const { plan } = planned
  const club = question.club ?? null
  if (options.picture !== undefined)
    writeText(options.picture, planPicture({ ...planned, course, player, club, units }))
  if (options.json) printJson(plan, machine)
  else printLines(planPage(planned, units, machine), machine)
  if (!options.quiet && !options.json && exitCodeOf(concerned) === 1)
    machine.err(`${plainText(errorLines(concerned, machine), machine.hasColour)}\n`)
  return exitCodeOf(concerned)
}

function errorLines(faults: readonly Fault[], machine: Machine): string {
  const errors = faults.filter(({ severity }) => severity === 'error')
  return faultLines(errors, machine).join('\n')
}

import { performance } from 'node:perf_hooks'
import { Failure } from '#faults/failure.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { parseRelativeWind } from '#golf/course/parse-relative-wind.ts'
import { LIES, type Lie } from '#golf/player/player.ts'
import { rulesOfThumb } from '#golf/strategy/rules-of-thumb.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import { loadPlayer } from './load-player.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { parsePin } from './parse-values.ts'
import { printJson, printLines } from './print-answer.ts'
import { thumbPage } from './thumb-page.ts'
import { parseUnits } from './units-of-the-reader.ts'
import { whileWorking } from './while-working.ts'

/** The options of `marram thumb`, as typed. */
export interface ThumbOptions extends GlobalOptions {
  readonly player: string
  readonly hole: string
  readonly tee?: string
  readonly day?: string
  readonly wind?: string
  readonly pin?: string
  readonly lie?: string
}

/** `marram thumb`: where each rule of thumb holds on a hole for a player. Returns the exit code. */
export async function thumbCommand(path: string, options: ThumbOptions, machine: Machine): Promise<number> {
  const units = parseUnits(options.units)
  const lies = options.lie === undefined ? {} : { lies: parseLies(options.lie) }
  const pin = options.pin === undefined ? undefined : parsePin(options.pin)
  if (options.wind !== undefined) parseRelativeWind(options.wind, 0)
  const { course } = await loadCourse(path)
  const player = loadPlayer(options.player)
  const day = loadDay(options.day, course, options, machine)
  const hole = holeFromCourse(course, options.hole, { tee: options.tee, day, pin })
  const windy =
    options.wind === undefined ? day : { ...day, wind: parseRelativeWind(options.wind, hole.bearingDegrees) }
  const started = performance.now()
  const found = whileWorking(`Rules of thumb on hole ${hole.ref}`, options.quiet === true, machine, () =>
    rulesOfThumb({ courseName: course.name, hole, player, day: windy, ...lies }),
  )
  const milliseconds = Math.round(performance.now() - started)
  const thumb = { ...found, method: { ...found.method, milliseconds } }
  if (options.json) printJson(thumb, machine)
  else printLines(thumbPage(thumb, units, machine), machine)
  return 0
}

/** Lies with commas between them. A full stroke is weighed from each, so a green is none of them. */
function parseLies(text: string): Lie[] {
  return text.split(',').map((word): Lie => {
    const lie = LIES.find((known) => known === word.trim() && known !== 'green')
    if (lie !== undefined) return lie
    const known = LIES.filter((one) => one !== 'green').join(', ')
    throw new Failure('MAR-USAGE-002', `"${word.trim()}" is no lie. Write some of: ${known}.`, '--lie')
  })
}

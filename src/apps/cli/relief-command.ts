import { performance } from 'node:perf_hooks'
import { Failure } from '#faults/failure.ts'
import { REFERENCE_DAY } from '#golf/course/day.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { parseDay } from '#golf/course/parse-day.ts'
import { reliefOfBall } from '#golf/strategy/relief-of-ball.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { loadCourse } from './load-course.ts'
import { loadPlayer } from './load-player.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { parsePin, parsePoint } from './parse-values.ts'
import { printJson, printLines } from './print-answer.ts'
import { readText } from './read-file.ts'
import { reliefPage } from './relief-page.ts'
import { reliefPicture } from './relief-picture.ts'
import { parseUnits } from './units-of-the-reader.ts'
import { whileWorking } from './while-working.ts'
import { writeText } from './write-file.ts'

/** The options of `marram relief`, as typed. */
export interface ReliefOptions extends GlobalOptions {
  readonly player: string
  readonly hole: string
  readonly tee?: string
  readonly day?: string
  readonly pin?: string
  readonly from?: string
  readonly ball?: string
  readonly crossed?: string
  readonly lost?: boolean
  readonly out?: boolean
  readonly unplayable?: boolean
  readonly picture?: string
}

/** `marram relief`: every option that the Rules give a ball, with its best spot and cost. Returns the exit code. */
export async function reliefCommand(path: string, options: ReliefOptions, machine: Machine): Promise<number> {
  const units = parseUnits(options.units)
  const asked = {
    ...pointOf('from', options.from),
    ...pointOf('ball', options.ball),
    ...pointOf('crossed', options.crossed),
    ...saidOf(options),
  }
  const pin = options.pin === undefined ? undefined : parsePin(options.pin)
  const { course } = await loadCourse(path)
  const player = loadPlayer(options.player)
  const day = options.day === undefined ? REFERENCE_DAY : parseDay(readText(options.day), options.day)
  const hole = holeFromCourse(course, options.hole, { tee: options.tee, day, pin })
  const started = performance.now()
  const found = whileWorking(`Relief on hole ${hole.ref}`, options.quiet === true, machine, () =>
    reliefOfBall({ courseName: course.name, hole, player, day, ...asked }),
  )
  const milliseconds = Math.round(performance.now() - started)
  const relief = { ...found, method: { ...found.method, milliseconds } }
  if (options.picture !== undefined)
    writeText(options.picture, reliefPicture({ course, hole, relief, units }))
  if (options.json) printJson(relief, machine)
  else printLines(reliefPage(relief, units, machine), machine)
  return 0
}

function pointOf<Name extends string>(
  name: Name,
  text: string | undefined,
): { readonly [key in Name]?: Point } {
  return text === undefined ? {} : ({ [name]: parsePoint(text, `--${name}`) } as { [key in Name]?: Point })
}

function saidOf(options: ReliefOptions): { readonly said?: 'lost' | 'out' | 'unplayable' } {
  const said = (['lost', 'out', 'unplayable'] as const).filter((word) => options[word] === true)
  if (said.length > 1)
    throw new Failure(
      'MAR-USAGE-002',
      `A ball is one of these: --${said.join(' or --')}, not both.`,
      `--${said[1]}`,
    )
  return said[0] === undefined ? {} : { said: said[0] }
}

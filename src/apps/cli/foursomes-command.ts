import { Failure } from '#faults/failure.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { pageName } from '#golf/player/first-name.ts'
import type { Player } from '#golf/player/player.ts'
import type { PairedHole } from '#golf/round/foursome-table.ts'
import { alternateShot, type Partners } from '#golf/strategy/alternate-shot.ts'
import { splitTees } from '#golf/strategy/split-tees.ts'
import { readPart } from '#outside/print/read-part.ts'
import { renderPdf } from '#outside/print/render-pdf.ts'
import { captainSheet } from '#paper/book/captain-sheet.ts'
import { checkPages } from '#paper/book/check-pages.ts'
import { type AskedBook, type BookOptions, parseBook } from './book-options.ts'
import { foursomesDocument } from './foursomes-document.ts'
import { foursomesPage } from './foursomes-page.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import { loadPlayer } from './load-player.ts'
import type { Machine } from './machine.ts'
import { printJson, printLines } from './print-answer.ts'
import { printedRound, roundFacts } from './printed-round.ts'
import { progressBar } from './progress-bar.ts'
import { requireFolder, writeBytes } from './write-file.ts'

/** The options of `marram foursomes`, as typed. */
export type FoursomesOptions = Omit<BookOptions, 'out' | 'kind'> & { readonly out?: string }

/** A pair's round, hole by hole, and who takes which tees. */
export interface Foursome {
  readonly course: Course
  readonly names: Partners<string>
  readonly holes: readonly PairedHole[]
  readonly split: ReturnType<typeof splitTees>
}

/**
 * `marram foursomes`: who of a pair takes the odd tees and who the even ones, where it matters and where it does not; with
 * `--out` as the captain's sheet. Returns the exit code: 1 when a hole is left out.
 */
export async function foursomesCommand(
  path: string,
  options: FoursomesOptions,
  machine: Machine,
): Promise<number> {
  const asked = parseBook({ ...options, out: options.out ?? '', kind: 'card' })
  const [first, second, ...others] = options.player
  if (first === undefined || second === undefined || others.length > 0)
    throw new Failure('MAR-USAGE-002', 'A foursome is a pair: name two players.', '--player')
  if (options.out !== undefined) requireFolder(options.out)
  const { course } = await loadCourse(path)
  const players = [loadPlayer(first), loadPlayer(second)] as const
  const day = loadDay(options.day, course, options, machine)
  const round = printedRound(course, options.hole, day, asked)
  const holes = solveHoles(round.holes, players, day, options, machine)
  const names = players.map(({ name, age }) => pageName(name, age)) as unknown as Partners<string>
  const foursome: Foursome = { course, names, holes, split: splitTees(holes) }
  if (options.out !== undefined) await writeSheet(foursome, roundFacts(round), asked, options.out)
  if (options.json) printJson(foursomesDocument(foursome, round.left, options.out), machine)
  else {
    const written =
      options.out === undefined || options.quiet ? [] : ['', `The captain's sheet is in ${options.out}.`]
    const left = round.left.map(({ hole, message }) => `Hole ${hole} is left out: ${message}`)
    printLines([...foursomesPage(foursome, asked.units, machine), ...left, ...written], machine)
  }
  return round.left.length > 0 ? 1 : 0
}

function solveHoles(
  holes: readonly Hole[],
  players: Partners<Player>,
  day: Day,
  options: FoursomesOptions,
  machine: Machine,
): Foursome['holes'] {
  const bar = progressBar('hole', machine, options.quiet === true)
  bar?.start(holes.length, 0)
  try {
    return holes.map((hole) => {
      const { turns } = alternateShot({ hole, players, day })
      bar?.increment()
      return { hole, ref: hole.ref, turns }
    })
  } finally {
    bar?.stop()
  }
}

/** Throws what may not be carried, MAR-BOOK, before anything is written. */
async function writeSheet(
  { names, holes, split }: Foursome,
  facts: ReturnType<typeof roundFacts>,
  { purpose }: AskedBook,
  path: string,
): Promise<void> {
  const pages = captainSheet(facts, names, holes, split)
  const [refused] = checkPages(pages, purpose, facts.localRules)
  if (refused !== undefined)
    throw new Failure(refused.code, `${refused.message} ${refused.advice}`, refused.place)
  const title = `${facts.course}, ${names.join(' and ')}`
  writeBytes(
    path,
    await renderPdf(
      pages.map(({ drawing }) => drawing),
      { title, readPart },
    ),
  )
}

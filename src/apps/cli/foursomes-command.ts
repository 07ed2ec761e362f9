import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import { partnerNames } from '#golf/player/first-name.ts'
import type { PairedHole } from '#golf/round/foursome-table.ts'
import type { Partners } from '#golf/strategy/alternate-shot.ts'
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
import { parseWorkers } from './parse-workers.ts'
import { pairPool } from './plan-pool.ts'
import { printJson, printLines } from './print-answer.ts'
import { printedRound, roundFacts } from './printed-round.ts'
import { workHoles } from './work-holes.ts'
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
 * `--out` as the captain's sheet. Returns the exit code: 1 when a hole is left out. Throws MAR-WORK-001 when it is
 * stopped, so that no half sheet is written.
 */
export async function foursomesCommand(
  path: string,
  options: FoursomesOptions,
  machine: Machine,
): Promise<number> {
  const workers = parseWorkers(options.workers)
  const asked = parseBook({ ...options, out: options.out ?? '', kind: 'card' })
  const [first, second, ...others] = options.player
  if (first === undefined || second === undefined || others.length > 0)
    throw new Failure('MAR-USAGE-002', 'A foursome is a pair: name two players.', '--player')
  if (options.out !== undefined) requireFolder(options.out)
  const { course } = await loadCourse(path)
  const players = [loadPlayer(first), loadPlayer(second)] as const
  const day = loadDay(options.day, course, options, machine)
  const round = printedRound(course, options.hole, day, asked)
  const worked = await workHoles(
    pairPool,
    round.holes.map((hole) => ({ hole, players, day })),
    workers,
    options.quiet === true,
    machine,
  )
  const holes = worked.answers.map(({ question: { hole }, answer: { turns } }): PairedHole => {
    return { hole, ref: hole.ref, place: course.holes.findIndex(({ ref }) => ref === hole.ref), turns }
  })
  // Half a round says nothing of the tees.
  if (worked.faults.some(({ code }) => code === 'MAR-WORK-001'))
    throw new Failure('MAR-WORK-001', 'Stopped: nothing is said of half a round.', options.out ?? '')
  if (holes.length === 0) throw noHole(worked.faults)
  const names = partnerNames(players) as unknown as Partners<string>
  const foursome: Foursome = { course, names, holes, split: splitTees(holes) }
  if (options.out !== undefined) await writeSheet(foursome, roundFacts(round), asked, options.out)
  const left = [
    ...round.left,
    ...worked.faults.map(({ place, message }) => ({ hole: place.replace(/^hole /, ''), message })),
  ]
  if (options.json) printJson(foursomesDocument(foursome, left, options.out), machine)
  else {
    const written =
      options.out === undefined || options.quiet ? [] : ['', `The captain's sheet is in ${options.out}.`]
    const without = left.map(({ hole, message }) => `Hole ${hole} is left out: ${message}`)
    printLines([...foursomesPage(foursome, asked.units, machine), ...without, ...written], machine)
  }
  return left.length > 0 ? 1 : 0
}

/** Why not one hole could be worked out. */
function noHole([fault]: readonly Fault[]): Failure {
  return new Failure(
    fault?.code ?? 'MAR-COURSE-001',
    fault?.message ?? 'The round has no hole.',
    fault?.place ?? '',
  )
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

import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import { pageName } from '#golf/player/first-name.ts'
import { isRough, roughWords } from '#golf/strategy/rough-words.ts'
import { readPart } from '#outside/print/read-part.ts'
import { renderPdf } from '#outside/print/render-pdf.ts'
import { lackingLetters } from '#outside/print/type-setter.ts'
import { checkPages } from '#paper/book/check-pages.ts'
import { type ChangedSentence, changedSentences } from '#paper/book/own-words.ts'
import type { Page } from '#paper/book/page.ts'
import {
  hasPlans,
  imposedSheets,
  isForAll,
  printedPages,
  printedSheets,
  readerOf,
  sheetsOfField,
} from '#paper/book/printed-kinds.ts'
import type { FiledPlayer } from './batch-tasks.ts'
import { type BookOptions, parseBook } from './book-options.ts'
import { concerning, holeOf } from './concerning.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import { loadField } from './load-field.ts'
import type { Machine } from './machine.ts'
import type { BatchRow } from './plan-batch.ts'
import { planRound } from './plan-round.ts'
import { printJson, printLines } from './print-answer.ts'
import { bookFacts, type PrintedRound, printedRound, roundFacts } from './printed-round.ts'
import { requireFolder, writeBytes } from './write-file.ts'

/**
 * `marram book`: the printed plan of a round, for one player or a field. Every page is measured against the Rules before
 * anything is worked out, and again before it is written. Returns the exit code: 1 when a hole has no plan, which its page
 * then says.
 */
export async function bookCommand(path: string, options: BookOptions, machine: Machine): Promise<number> {
  const asked = parseBook(options)
  requireFolder(options.out)
  const { course, faults } = await loadCourse(path)
  const players = loadField(options.player)
  const day = loadDay(options.day, course, options, machine, options.pins)
  const round = printedRound(course, options.hole, day, asked)
  // What breaks the Rules is seen without any plan, so nobody waits for one that may not be carried.
  refuse(
    printsOf(round, players, []).flatMap(({ pages }) => pages),
    round,
  )
  const rows = hasPlans(asked.kind) ? await planRound(round, players, options, machine) : []
  const prints = printsOf(round, players, rows)
  refuse(
    prints.flatMap(({ pages }) => pages),
    round,
  )
  const [first, ...others] = players
  const title =
    first === undefined || others.length > 0
      ? course.name
      : `${course.name}, ${pageName(first.player.name, first.player.age)}`
  const sheets = sheetsOfField(prints.map(({ pages }) => imposedSheets(asked.kind, pages, asked)))
  writeBytes(options.out, await renderPdf(sheets, { title, readPart }))
  return report({ prints, rows, faults }, round, options, machine)
}

/** What comes to one player; a pin sheet to nobody in particular. */
interface Print {
  readonly filed: FiledPlayer | null
  readonly pages: readonly Page[]
  /** Sentences written for the player, under which something has changed since. */
  readonly changed: readonly ChangedSentence[]
}

/** The pages of every player, with the plans there are. */
function printsOf(round: PrintedRound, players: readonly FiledPlayer[], rows: readonly BatchRow[]): Print[] {
  const { kind, greenScale } = round.asked
  if (isForAll(kind))
    return [{ filed: null, pages: printedSheets(kind, roundFacts(round), greenScale), changed: [] }]
  return players.map((filed) => {
    const own = rows.filter(({ player }) => player === filed)
    const facts = bookFacts(round, filed.player, own)
    const reader = readerOf(kind)
    const changed = reader === null ? [] : changedSentences(facts, reader)
    return { filed, pages: printedPages(kind, facts, greenScale), changed }
  })
}

/** Throws the first thing that may not be carried, MAR-BOOK. */
function refuse(pages: readonly Page[], { asked, course }: PrintedRound): void {
  const [first] = checkPages(pages, asked.purpose, course.localRules)
  if (first !== undefined) throw new Failure(first.code, `${first.message} ${first.advice}`, first.place)
}

/** Names of which some letters are not in the printed type. */
function lackingLines(prints: readonly Print[]): string[] {
  return prints.flatMap(({ filed }) => {
    const name = filed?.player.name ?? ''
    const lacking = lackingLetters(name, readPart)
    return lacking.length === 0
      ? []
      : [`The printed type lacks letters of the name “${name}”: ${lacking.join(' ')}. Each stands as “?”.`]
  })
}

/** What became of the pages. */
interface Printed {
  readonly prints: readonly Print[]
  readonly rows: readonly BatchRow[]
  /** Of the course, as it was read. */
  readonly faults: readonly Fault[]
}

/** Says what was written, and names the holes without a plan and those that no page holds. Returns the exit code. */
function report(
  { prints, rows, faults }: Printed,
  { asked: { purpose }, left: unlaid }: PrintedRound,
  options: BookOptions,
  machine: Machine,
): number {
  const isField = prints.length > 1
  const pages = prints.flatMap((print) => print.pages.map(({ name }) => name))
  const unread = concerning(faults, options.hole).filter(({ severity }) => severity === 'error')
  const left = [
    ...unlaid,
    ...unread.flatMap(({ place, message }) => {
      const hole = holeOf(place)
      return hole === null ? [] : [{ hole, message }]
    }),
  ]
  const absent = new Set(left.map(({ hole }) => hole))
  const unplanned = rows.flatMap((row) =>
    'unplanned' in row && !absent.has(row.unplanned.hole)
      ? [{ player: row.player.file, hole: row.unplanned.hole }]
      : [],
  )
  const plans = rows.flatMap((row) => ('planned' in row ? [row.planned.plan] : []))
  const changed = prints.flatMap((print) =>
    print.changed.map((one) => ({ player: print.filed?.player.name ?? '', ...one })),
  )
  const exitCode = unplanned.length + unlaid.length + unread.length > 0 ? 1 : 0
  if (options.json) {
    const holes = isField ? unplanned : unplanned.map(({ hole }) => hole)
    const players = isField ? { players: prints.map(({ filed }) => filed?.file) } : {}
    printJson(
      {
        schema: 'book/1',
        file: options.out,
        for: purpose,
        ...players,
        quick: plans.some(isRough),
        pages,
        unplanned: holes,
        changed: changed.map(({ player, sentence: { hole, part }, proposed, why }) => ({
          player,
          hole,
          part,
          proposed,
          why,
        })),
        left_out: left,
      },
      machine,
    )
    return exitCode
  }
  if (options.quiet) return exitCode
  const whose = isField ? ` of ${prints.length} players` : ''
  const missing = unplanned.map(({ player, hole }) => (isField ? `${hole} of ${player}` : hole))
  printLines(
    [
      `${pages.length} ${pages.length === 1 ? 'page' : 'pages'}${whose} for ${purpose === 'counting' ? 'a counting round' : 'practice'} in ${options.out}.`,
      ...roughWords(plans),
      ...(missing.length === 0 ? [] : [`Without a plan, as their pages say: hole ${missing.join(', ')}.`]),
      ...changed.map(
        ({ player, sentence: { hole, part, words }, proposed, why }) =>
          `Hole ${hole}, ${part}, of ${player}: “${words}” was written ${why === 'units' ? 'in other units' : 'over another plan'}; it is now “${proposed}”.`,
      ),
      ...unlaid.map(({ hole, message }) => `Hole ${hole} is on no page: ${message}`),
      ...unread.map(({ place, message }) =>
        holeOf(place) === null ? `Of the course, ${place}: ${message}` : message,
      ),
      ...lackingLines(prints),
    ],
    machine,
  )
  return exitCode
}

import { Failure } from '#faults/failure.ts'
import { isForAll, isWords, PRINTED_KINDS, type PrintedKind } from '#paper/book/printed-kinds.ts'
import { PAPERS, type Paper } from '#paper/book/settings.ts'
import type { Purpose } from '#paper/book/stroke-words.ts'
import type { GlobalOptions } from './machine.ts'
import { parseQuestion, type Question } from './parse-question.ts'
import { parseWord } from './parse-values.ts'
import { parseUnits, type ReaderUnits } from './units-of-the-reader.ts'

/** The options of `marram book`, as typed. */
export interface BookOptions extends GlobalOptions {
  /** One file a player; of a pin sheet nobody is asked. */
  readonly player: readonly string[]
  readonly out: string
  readonly hole: string
  readonly tee?: string
  readonly day?: string
  readonly pins?: string
  readonly for?: string
  readonly paper?: string
  readonly fold?: boolean
  readonly kind?: string
  readonly textOnly?: boolean
  readonly greenScale?: string
  readonly draws?: string
  readonly quick?: boolean
  readonly workers?: string
}

/** The same as values. */
export interface AskedBook {
  readonly question: Question
  readonly units: ReaderUnits
  readonly purpose: Purpose
  readonly paper: Paper
  readonly hasFolds: boolean
  /** Where pictures are not wanted never one that has them. */
  readonly kind: PrintedKind
  /** Greens of the book stand at 1 to this, or smaller where they do not fit. */
  readonly greenScale: number
}

/** Reads the options. Throws MAR-USAGE-002, before any file is read. */
export function parseBook(options: BookOptions): AskedBook {
  const asked = parseWord(options.kind ?? 'card', PRINTED_KINDS, '--kind')
  const kind = options.textOnly === true && !isWords(asked) ? 'card' : asked
  if (!isForAll(kind) && options.player.length === 0)
    throw new Failure(
      'MAR-USAGE-002',
      `${kind === asked ? '' : 'What is asked for has pictures, so words alone are a card. '}Say for whom to print: --player FILE.`,
      '--player',
    )
  return {
    question: parseQuestion({ ...options, flips: false }),
    units: parseUnits(options.units),
    purpose: parseWord(options.for ?? 'practice', ['practice', 'counting'], '--for'),
    paper: parseWord(options.paper ?? 'a4', Object.keys(PAPERS) as Paper[], '--paper'),
    hasFolds: options.fold === true,
    kind,
    greenScale: parseScale(options.greenScale ?? '1:480'),
  }
}

/** `1:480` → 480. Throws MAR-USAGE-002. */
function parseScale(text: string): number {
  const scale = Number(/^1:(\d+)$/.exec(text)?.[1])
  if (scale >= LARGEST_SCALE && scale <= SMALLEST_SCALE) return scale
  throw new Failure(
    'MAR-USAGE-002',
    `"${text}" is no scale from 1:${LARGEST_SCALE} to 1:${SMALLEST_SCALE}. Write it as 1:480.`,
    '--green-scale',
  )
}

/** Scales of a green between which a page can show one. Our assumption. */
const LARGEST_SCALE = 100
const SMALLEST_SCALE = 5000

import { Failure } from '#faults/failure.ts'
import { PAPERS, type Paper } from '#paper/book/settings.ts'
import type { Purpose } from '#paper/book/stroke-words.ts'
import type { GlobalOptions } from './machine.ts'
import { parseQuestion, type Question } from './parse-question.ts'
import { parseUnits, type ReaderUnits } from './units-of-the-reader.ts'

/** The options of `marram book`, as typed. */
export interface BookOptions extends GlobalOptions {
  readonly player: string
  readonly out: string
  readonly hole: string
  readonly tee?: string
  readonly day?: string
  readonly for?: string
  readonly paper?: string
  readonly fold?: boolean
  readonly draws?: string
  readonly workers?: string
}

/** The same as values. */
export interface AskedBook {
  readonly question: Question
  readonly units: ReaderUnits
  readonly purpose: Purpose
  readonly paper: Paper
  readonly hasFolds: boolean
}

/** Reads the options. Throws MAR-USAGE-002, before any file is read. */
export function parseBook(options: BookOptions): AskedBook {
  return {
    question: parseQuestion({ ...options, player: [options.player], flips: false }),
    units: parseUnits(options.units),
    purpose: oneOf(options.for ?? 'practice', ['practice', 'counting'], '--for'),
    paper: oneOf(options.paper ?? 'a4', Object.keys(PAPERS) as Paper[], '--paper'),
    hasFolds: options.fold === true,
  }
}

function oneOf<Word extends string>(text: string, words: readonly Word[], option: string): Word {
  const word = words.find((known) => known === text)
  if (word !== undefined) return word
  throw new Failure('MAR-USAGE-002', `"${text}" is not known here. Write ${words.join(' or ')}.`, option)
}

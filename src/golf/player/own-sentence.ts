import type { PlayerFault } from './player-shape.ts'

/** The parts of what a card says of a hole that a person may write: the stroke from the tee, what comes next, what never. */
export const SENTENCE_PARTS = ['stroke', 'next', 'never'] as const
export type SentencePart = (typeof SENTENCE_PARTS)[number]

/** Whose card it is: a junior's has fewer words of its own. */
export const SENTENCE_READERS = ['player', 'junior'] as const
export type SentenceReader = (typeof SENTENCE_READERS)[number]

/** A sentence of a player's card that a person wrote in place of what the plan proposes: it stays through every plan anew. */
export interface OwnSentence {
  /** The name of the course, and the hole on it. */
  readonly course: string
  readonly hole: string
  readonly reader: SentenceReader
  readonly part: SentencePart
  /** Of the stroke: the club as it stands large before the words. */
  readonly club?: string
  /** Empty = nothing is to stand there. */
  readonly words: string
  /** What the plan proposed when it was written, for practice and in the units below: where that has changed, it is to be looked at again. */
  readonly under: string
  readonly units: 'yards' | 'metres'
}

/** The most letters of a sentence and of a club on a card: a row is read in five seconds. Our assumption. */
export const MOST_LETTERS = { words: 240, club: 40 } as const

/** Whether two sentences stand at one place of a card. */
export function isSamePlace(one: OwnSentence, other: OwnSentence): boolean {
  return (
    one.course === other.course &&
    one.hole === other.hole &&
    one.reader === other.reader &&
    one.part === other.part
  )
}

/** What keeps the sentences of a player file off a card: too long, more than a line, twice at one place. */
export function sentenceFaults(sentences: readonly OwnSentence[]): readonly PlayerFault[] {
  return sentences.flatMap((sentence, index) => {
    const at = `sentences[${index}]`
    const faults: PlayerFault[] = []
    for (const field of ['words', 'club'] as const) {
      const text = sentence[field] ?? ''
      if (text.length > MOST_LETTERS[field] || CONTROLS.test(text))
        faults.push({
          code: 'MAR-PLAYER-016',
          message: `${at}.${field} must be one line of ${MOST_LETTERS[field]} letters at most.`,
          field: `${at}.${field}`,
        })
    }
    if (sentences.findIndex((other) => isSamePlace(sentence, other)) < index)
      faults.push({
        code: 'MAR-PLAYER-016',
        message: `${at}: hole ${sentence.hole} has its ${sentence.part} written twice.`,
        field: at,
      })
    return faults
  })
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for.
const CONTROLS = /[\u0000-\u001f\u007f\u2028\u2029]/

import type { Letters } from '../draw/letters.ts'
import { type Block, joinBlocks } from './blocks.ts'
import type { CardSetting } from './settings.ts'
import { text } from './text.ts'
import { wrapText } from './wrap-text.ts'

/** How sentences are set on a card. */
export interface SentenceSetting {
  readonly width: number
  readonly type: CardSetting['type']
  readonly letters: Letters
}

/** Sentences under a heading, which stays with the first. */
export function sentenceBlocks(
  heading: string,
  sentences: readonly string[],
  { width, type, letters }: SentenceSetting,
): Block[] {
  const size = type.small + 1
  const [first, ...others] = sentences.map((sentence, index): Block => {
    const lines = wrapText(sentence, width, { face: 'serif', size, letters })
    const after = index === sentences.length - 1 ? 10 : 4
    return {
      height: lines.length * (type.line + 1) + after,
      draw: (left, top) =>
        lines.map((line, at) => text(line, [left, top + size + at * (type.line + 1)], size, 'serif')),
    }
  })
  return first === undefined ? [] : [joinBlocks([headingBlock(heading, type), first]), ...others]
}

/** A heading of the back of a card. */
export function headingBlock(words: string, type: CardSetting['type']): Block {
  return {
    height: type.club + 10,
    draw: (left, top) => [text(words, [left, top + type.club + 4], type.club, 'serif-bold')],
  }
}

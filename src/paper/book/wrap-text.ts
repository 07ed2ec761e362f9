import type { Face } from '../draw/drawing.ts'
import type { Letters } from '../draw/letters.ts'

/** How text is set when it is cut into lines. */
export interface Setting {
  readonly face: Face
  readonly size: number
  readonly letters: Letters
}

/**
 * Text as lines no wider than `width`, cut between words; a word that is wider is cut between letters, so that nothing ever
 * stands outside. `firstWidth`: what is left of the first line, where something stands in it already.
 */
export function wrapText(
  text: string,
  width: number,
  { face, size, letters }: Setting,
  firstWidth: number = width,
): string[] {
  const lines: string[] = []
  let line = ''
  const room = (): number => (lines.length === 0 ? firstWidth : width)
  const fits = (words: string): boolean => letters(words, face, size) <= room()
  const words = text.split(/\s+/).filter((word) => word !== '')
  for (let word = words.shift(); word !== undefined; word = words.shift()) {
    const longer = line === '' ? word : `${line} ${word}`
    if (fits(longer)) line = longer
    else if (line !== '' || room() < width) {
      lines.push(line)
      line = ''
      words.unshift(word)
    } else {
      const most = longestPart(word, fits)
      lines.push(word.slice(0, most))
      if (most < word.length) words.unshift(word.slice(most))
    }
  }
  return line === '' ? lines : [...lines, line]
}

/** How many letters of a word fit, at least one. */
function longestPart(word: string, fits: (part: string) => boolean): number {
  let most = word.length
  while (most > 1 && !fits(word.slice(0, most))) most -= 1
  return most
}

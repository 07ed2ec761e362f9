import type { SentencePart } from '#golf/player/own-sentence.ts'

/** The parts of what a card says of a hole, as they are called on the screen. */
export const PART_NAMES: Readonly<Record<SentencePart, string>> = {
  stroke: 'the stroke from the tee',
  next: 'the next shot',
  never: 'the never',
}

import type { Round } from './round.ts'
import { sortedText } from './sorted-text.ts'
import { textNumber } from './text-number.ts'

/**
 * What tells a round from every other one: the id it was given when it was begun, so that a copy from another phone is the same
 * round; else its day and a number made of all that was logged, whatever file it stands in.
 */
export function roundKey({ round, id }: { readonly round: Round; readonly id: string | null }): string {
  if (id !== null) return id
  const holes = round.holes.map(({ place: _, strokes, ...hole }) => ({
    ...hole,
    strokes: strokes.map(({ place: __, ...stroke }) => stroke),
  }))
  return `${round.date ?? 'undated'}-${textNumber(sortedText(holes))}`
}

import type { Round } from './round.ts'
import { sortedText } from './sorted-text.ts'

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

/** A text as a number of seven digits in base 36: two texts share one in 2.8 thousand million pairs (Fowler, Noll & Vo, FNV-1a, 32 bits). */
function textNumber(text: string): string {
  let hash = 0x811c9dc5
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193)
  return (hash >>> 0).toString(36)
}

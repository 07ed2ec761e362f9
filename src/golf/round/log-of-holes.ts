import type { RoundHole } from './round.ts'
import { EMPTY_LOG, type LogWord, type RoundLog, withWords } from './round-log.ts'

/** The log of holes that were written down elsewhere, as on paper: said at once and closed, so that it goes on like any other. */
export function logOfHoles(holes: readonly RoundHole[], by: string): RoundLog {
  return withWords(EMPTY_LOG, by, [...holes.flatMap((hole) => wordsOf(hole, by)), { kind: 'closed' }])
}

function wordsOf(hole: RoundHole, by: string): LogWord[] {
  const { ref, strokes, putts, firstPuttMetres, isPickedUp } = hole
  return [
    ...strokes.map(({ club, finish, penalty, isAsPlanned }, index): LogWord => {
      const stroke = { hole: ref, order: index + 1, club, finish, penalty, isAsPlanned }
      return { kind: 'stroke', id: `${by}-${ref}-${index + 1}`, stroke }
    }),
    { kind: 'putts', hole: ref, putts },
    ...(firstPuttMetres === null
      ? []
      : [{ kind: 'first putt', hole: ref, metres: firstPuttMetres } as const]),
    ...(isPickedUp ? [{ kind: 'picked up', hole: ref, isSo: true } as const] : []),
  ]
}

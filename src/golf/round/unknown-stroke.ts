import type { RoundStroke } from './round.ts'

/** A stroke of which nothing is known but that it was made. */
export function unknownStroke(place: string): RoundStroke {
  return {
    club: null,
    aimOffsetMetres: null,
    from: null,
    finish: null,
    lie: null,
    penalty: null,
    isAsPlanned: false,
    place,
  }
}

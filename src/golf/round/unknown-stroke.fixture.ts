import type { RoundStroke } from './round.ts'

/** Nothing known of a stroke. */
export const UNKNOWN: RoundStroke = {
  club: null,
  aimOffsetMetres: null,
  from: null,
  finish: null,
  lie: null,
  penalty: null,
  isAsPlanned: false,
  place: '',
}

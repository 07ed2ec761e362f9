import { METRES_PER_YARD } from '#numbers/units/units.ts'

/** Lengths as the reader likes them: rounded once, to whole yards or metres. */
export interface Ruler {
  readonly word: 'yards' | 'metres'
  readonly sign: 'yd' | 'm'
  /** Metres in one unit. */
  readonly metres: number
  readonly figure: (metres: number) => string
}

/** The ruler of the reader's units; absent = yards. */
export function rulerOf(units: 'yards' | 'metres' = 'yards'): Ruler {
  const metres = units === 'yards' ? METRES_PER_YARD : 1
  return {
    word: units,
    sign: units === 'yards' ? 'yd' : 'm',
    metres,
    figure: (length) => Math.round(length / metres).toString(),
  }
}

import type { StrokeSplit } from './recap.ts'

/** Strokes out of sand by where it lies: beside the green, or further from the pin than the short game reaches. */
export interface SandPlace {
  readonly where: 'beside-green' | 'further'
  readonly count: number
  /** In all rounds, more than the profile expects. */
  readonly strokes: number
}

/** How strokes were struck out of sand, by where it lies: two entries, beside the green first. */
export function sandPlaces(strokes: readonly StrokeSplit[]): readonly SandPlace[] {
  const sand = strokes.filter(({ from, count }) => from.lie === 'bunker' && count === 1)
  return (['beside-green', 'further'] as const).map((where) => {
    const those = sand.filter(({ part }) => (part === 'around') === (where === 'beside-green'))
    return {
      where,
      count: those.length,
      strokes: those.reduce((sum, { execution }) => sum + execution, 0),
    }
  })
}

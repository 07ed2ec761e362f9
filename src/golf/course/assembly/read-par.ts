import type { SurveyFeature } from '../survey-feature.ts'
import { readNumberTag } from './read-values.ts'
import { LONGEST_OF_PAR } from './settings.ts'
import type { Tally } from './tally.ts'

/** The par of a hole line and where it was found: its own tag, a form such as “Par 4” in its name, or nowhere. */
export interface FoundPar {
  readonly par: number | null
  readonly from: 'tag' | 'name' | 'asked'
}

/** Looks for par in the tag, then in the name; never guesses. */
export function readPar(feature: SurveyFeature, tally: Tally): FoundPar {
  const tagged = readNumberTag(feature, 'par', 3, 7, tally)
  if (tagged !== null && Number.isInteger(tagged)) return { par: tagged, from: 'tag' }
  const named = /\bpar[\s:=-]*([3-7])\b/i.exec(feature.tags.name ?? '')?.[1]
  return named === undefined ? { par: null, from: 'asked' } : { par: Number(named), from: 'name' }
}

/** The usual par of a hole of this length, metres; only ever offered to a person. */
export function suggestPar(lengthMetres: number): number {
  return LONGEST_OF_PAR.find(([, longest]) => lengthMetres <= longest)?.[0] ?? 6
}

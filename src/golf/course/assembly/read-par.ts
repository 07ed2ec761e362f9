import type { SurveyFeature } from '../survey-feature.ts'
import { readNumberTag } from './read-values.ts'
import { LONGEST_OF_PAR } from './settings.ts'
import type { Tally } from './tally.ts'

/** The par of a hole line and where it was found: its own tag, a form such as “Par 4” in its name, a guess by length where the source allows one, or nowhere. */
export interface FoundPar {
  readonly par: number | null
  readonly from: 'tag' | 'name' | 'guess' | 'asked'
}

/**
 * Looks for par in the tag, then in the name. Guesses by length (metres) only where `marram:guess_par` asks for it:
 * a typed table is to be planned at once, a map is not to be made up.
 */
export function readPar(feature: SurveyFeature, lengthMetres: number, tally: Tally): FoundPar {
  const tagged = readNumberTag(feature, 'par', 3, 7, tally)
  if (tagged !== null && Number.isInteger(tagged)) return { par: tagged, from: 'tag' }
  const named = /\bpar[\s:=-]*([3-7])\b/i.exec(feature.tags.name ?? '')?.[1]
  if (named !== undefined) return { par: Number(named), from: 'name' }
  const isGuessed = feature.tags['marram:guess_par'] === 'yes'
  return isGuessed ? { par: suggestPar(lengthMetres), from: 'guess' } : { par: null, from: 'asked' }
}

/** The usual par of a hole of this length, metres. */
export function suggestPar(lengthMetres: number): number {
  return LONGEST_OF_PAR.find(([, longest]) => lengthMetres <= longest)?.[0] ?? 6
}

import type { ObjectiveName } from './objective.ts'
import type { FormatPart, PlanOption } from './plan.ts'
import { clubWords } from './plan-sentence.ts'

/** What a format changes, in one or two plain sentences. Figures are rounded here and nowhere before. */
export function formatWords(
  name: ObjectiveName,
  format: Omit<FormatPart, 'sentence'>,
  first: PlanOption,
): string {
  const { changes, value, fewest_strokes: fewest } = format
  const aim = aimWords(name)
  if (changes === 'nothing')
    return `The format changes nothing here: the ${clubWords(first)} is right for ${aim} as for the fewest strokes (${worthWords(name, value)}).`
  const gain = `${worthWords(name, value)} instead of ${worthWords(name, fewest.value)}`
  const manner = format.manner === null ? '' : format.manner === 'attack' ? ' That attacks' : ' That protects'
  const price = `${manner === '' ? ' It' : `${manner}, and`} costs ${strokesWords(format.strokes_given_up)} on average.`
  if (changes === 'later') return `For ${aim} this stroke stays the same; later ones do not: ${gain}.${price}`
  if (changes === 'line') return `For ${aim} the ${clubWords(first)} stays, on another line: ${gain}.${price}`
  return `For ${aim} it is the ${clubWords(first)}, not the ${clubWords(fewest)}: ${gain}.${price}`
}

/** What is played for: `4 or better`, `points`, `the match`. */
export function aimWords(name: ObjectiveName): string {
  if (name === 'points') return 'points'
  if (name === 'match') return 'the match'
  return `${name.slice('at-most:'.length)} or better`
}

/** What a plan is worth in the unit of its objective: `31 in 100`, `1.85 points`, `0.54 of the hole`. */
export function worthWords(name: ObjectiveName, worth: number): string {
  return `${figure(name, worth)}${UNITS[kindOf(name)]}`
}

/** Between which worths something lies: `28 and 35 in 100`. */
export function betweenWords(name: ObjectiveName, low: number, high: number): string {
  return `${figure(name, low)} and ${worthWords(name, high)}`
}

const UNITS = { points: ' points', match: ' of the hole', chance: ' in 100' } as const

function kindOf(name: ObjectiveName): keyof typeof UNITS {
  return name === 'points' || name === 'match' ? name : 'chance'
}

function figure(name: ObjectiveName, worth: number): string {
  if (kindOf(name) !== 'chance') return worth.toFixed(2)
  const hundredths = Math.round(100 * worth)
  if (hundredths === 0 && worth > 0) return 'less than 1'
  return hundredths === 100 && worth < 1 ? 'more than 99' : String(hundredths)
}

function strokesWords(strokes: number): string {
  const twentieths = Math.round(strokes * 20)
  if (twentieths === 0) return 'less than 0.05 of a stroke'
  return `${(twentieths / 20).toFixed(2)} strokes`
}

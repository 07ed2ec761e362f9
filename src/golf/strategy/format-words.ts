import type { Objective } from './objective.ts'
import type { FormatPart, PlanOption } from './plan.ts'
import { clubWords } from './plan-sentence.ts'

/** What a format changes, in one or two plain sentences. Figures are rounded here and nowhere before. */
export function formatWords(objective: Aim, format: Omit<FormatPart, 'sentence'>, first: PlanOption): string {
  const { changes, value, fewest_strokes: fewest } = format
  const { aim } = objective
  if (changes === 'nothing')
    return `The format changes nothing here: the ${clubWords(first)} is right for ${aim} as for the fewest strokes (${worthWords(objective, value)}).`
  const gain = `${worthWords(objective, value)} instead of ${worthWords(objective, fewest.value)}`
  const manner = format.manner === null ? '' : format.manner === 'attack' ? ' That attacks' : ' That protects'
  const price = `${manner === '' ? ' It' : `${manner}, and`} costs ${strokesWords(format.strokes_given_up)} on average.`
  if (changes === 'later') return `For ${aim} this stroke stays the same; later ones do not: ${gain}.${price}`
  if (changes === 'line') return `For ${aim} the ${clubWords(first)} stays, on another line: ${gain}.${price}`
  return `For ${aim} it is the ${clubWords(first)}, not the ${clubWords(fewest)}: ${gain}.${price}`
}

/** What a plan is played for: its name, and the words for it. */
export type Aim = Pick<Objective, 'name' | 'aim'>

/** What a plan is worth in the unit of its objective: `31 in 100`, `1.85 points`, `0.54 of the hole`. */
export function worthWords(aim: Aim, worth: number): string {
  return `${figure(aim, worth)}${unitOf(aim)}`
}

/** Between which worths something lies: `28 and 35 in 100`. */
export function betweenWords(aim: Aim, low: number, high: number): string {
  return `${figure(aim, low)} and ${worthWords(aim, high)}`
}

function unitOf({ name, aim }: Aim): string {
  return name === 'points' ? ' points' : name === 'match' ? ` of ${aim}` : ' in 100'
}

function figure({ name }: Aim, worth: number): string {
  if (name === 'points' || name === 'match') return worth.toFixed(2)
  const hundredths = Math.round(100 * worth)
  if (hundredths === 0 && worth > 0) return 'less than 1'
  return hundredths === 100 && worth < 1 ? 'more than 99' : String(hundredths)
}

function strokesWords(strokes: number): string {
  const twentieths = Math.round(strokes * 20)
  if (twentieths === 0) return 'less than 0.05 of a stroke'
  return `${(twentieths / 20).toFixed(2)} strokes`
}

import type { Relief, ReliefRow } from './relief.ts'

const OPTIONS: Readonly<Record<ReliefRow['kind'], string>> = {
  'as-it-lies': 'play it as it lies',
  'free-relief': 'free relief from the path',
  'stroke-and-distance': 'stroke and distance',
  'back-on-the-line': 'back on the line',
  lateral: 'lateral relief',
  'back-on-the-line-out-of-bunker': 'back on the line, out of the bunker',
  'local-rule-E-5': 'by the fairway',
}

const SITUATIONS: Readonly<Record<Relief['situation']['what'], string>> = {
  'as-it-lies': 'ball in play',
  'penalty-red': 'ball in a red penalty area',
  'penalty-yellow': 'ball in a yellow penalty area',
  out: 'ball out of bounds',
  lost: 'lost ball',
  unplayable: 'unplayable ball',
  'unplayable-in-bunker': 'unplayable ball in a bunker',
}

/** An option in the words of the trade. */
export function optionWords(kind: ReliefRow['kind']): string {
  return OPTIONS[kind]
}

/** A situation in the words of the trade: `ball in a red penalty area`, `ball in scrub`. */
export function situationWords({ what, ground }: Pick<Relief['situation'], 'what' | 'ground'>): string {
  if (what !== 'as-it-lies' || ground === null) return SITUATIONS[what]
  if (ground === 'heavy') return 'ball in heavy grass'
  if (ground === 'bunker' || ground === 'first-cut')
    return `ball in a ${ground}`.replace('a first-cut', 'first cut')
  if (ground === 'path' || ground === 'tee') return `ball on a ${ground}`
  return `ball ${ON.has(ground) ? 'on the' : 'in'} ${ground}`
}

const ON: ReadonlySet<string> = new Set(['fairway', 'green', 'fringe'])

/** A clause as it is cited: `Rule 17.1d(3)`, but a Local Rule by its own name. */
export function clauseWords(clause: string): string {
  return clause.includes('Rule') ? clause.replace('Model ', '') : `Rule ${clause}`
}

/** The edition that an answer follows: `Rules of Golf, January 2023`. */
export function editionWords({ edition, in_force_from }: Relief['rules']): string {
  const [year, month] = in_force_from.split('-')
  return edition.replace(String(year), `${MONTHS[Number(month) - 1]} ${year}`)
}

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const

/** The choice in one sentence; strokes to 0.05. */
export function reliefSentence({ options, verdict }: Relief): string {
  const [first, second] = options.filter(({ strokes }) => strokes !== null)
  if (!first) return 'The survey cannot tell what any of the options costs.'
  const words = ({ letter, kind, clause }: ReliefRow): string =>
    `${letter}, ${optionWords(kind)} (${clauseWords(clause)})`
  if (!second) return `${words(first)}: ${penaltyWords(first.penalty)}. There is no other.`
  if (verdict === 'too-close')
    return `Too close to call between ${words(first)} and ${words(second)}: take the one you trust.`
  const gap = (Math.round((second.cost ?? 0) * 20) / 20).toFixed(2)
  return `${words(first)}: ${penaltyWords(first.penalty)}, and ${gap} ${Number(gap) >= 1 ? 'strokes' : 'of a stroke'} better than ${words(second)}.`
}

/** `no penalty`, `one penalty stroke`, `two penalty strokes`. */
export function penaltyWords(strokes: number): string {
  if (strokes === 0) return 'no penalty'
  return strokes === 1 ? 'one penalty stroke' : `${strokes === 2 ? 'two' : strokes} penalty strokes`
}

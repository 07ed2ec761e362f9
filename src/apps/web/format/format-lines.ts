import { betweenWords, worthWords } from '#golf/strategy/format-words.ts'
import type { FormatPart, Plan } from '#golf/strategy/plan.ts'

/** What a format makes of the plan, a line each: what changes, what it is worth, the match, and what to know of it. */
export function formatLines(name: Plan['situation']['objective'], part: FormatPart): readonly string[] {
  if (name === 'strokes') return []
  const { aim, value, low, high, match, sentence, notes } = part
  const objective = { name, aim }
  const what =
    name === 'points' || name === 'match' ? 'Expected' : `${aim.charAt(0).toUpperCase()}${aim.slice(1)}`
  const between = low === high ? '' : `, between ${betweenWords(objective, low, high)}`
  return [
    sentence,
    `${what}: ${worthWords(objective, value)}${between}.`,
    ...(match === null
      ? []
      : [
          `The hole is won ${hundredths(match.win)}, halved ${hundredths(match.halve)} and lost ${hundredths(match.lose)} times in 100.`,
        ]),
    ...notes,
  ]
}

/** Handicap strokes on a hole: `2 received`, `1 given`, `none`. */
export function receivedWord(strokes: number): string {
  if (strokes === 0) return 'none'
  return `${Math.abs(strokes)} ${strokes > 0 ? 'received' : 'given'}`
}

/** How a match stands: `2 up`, `1 down`, `all square`. */
export function standsWord(up: number): string {
  return up === 0 ? 'all square' : `${Math.abs(up)} ${up > 0 ? 'up' : 'down'}`
}

function hundredths(chance: number): number {
  return Math.round(chance * 100)
}

import { capital } from '#golf/strategy/capital.ts'
import type { Change, Compared, SeasonChange } from './season-change.ts'
import { partWords, strokesARound } from './season-words.ts'

/** What is compared, in words. */
export function comparedWords(what: Compared): string {
  if (what === 'all') return 'all strokes'
  return what === 'choices' ? 'what your choices cost' : partWords(what)
}

/** What changed against the season before, as a player is told of it. */
export function seasonChangeWords({ roundsBefore, rounds, changes }: SeasonChange): string[] {
  const told = changes.filter(({ verdict }) => verdict === 'better' || verdict === 'worse')
  const few = changes.filter(({ verdict }) => verdict === 'few')
  if (few.length === changes.length)
    return [
      `Too few rounds to tell what changed: ${countOf(roundsBefore)} in the season before and ${countOf(rounds)} now.`,
    ]
  return [
    ...(told.length === 0
      ? ['Against the season before nothing has changed that is more than chance.']
      : told.map(changeWords)),
    ...unseenWords(changes),
    ...(few.length === 0
      ? []
      : [`Too few strokes to tell of: ${few.map(({ what }) => comparedWords(what)).join(', ')}.`]),
  ]
}

function changeWords({ what, strokes, verdict }: Change): string {
  const size = strokesARound(strokes)
  if (what === 'choices')
    return `Your choices cost ${size} ${verdict === 'better' ? 'less' : 'more'} than in the season before.`
  return `${capital(comparedWords(what))}: ${size} ${verdict} than in the season before. That is more than chance.`
}

/** How large a change of all strokes would have had to be to be told. */
function unseenWords(changes: readonly Change[]): string[] {
  const all = changes.find(({ what }) => what === 'all')
  if (all === undefined || all.verdict !== 'chance') return []
  return [
    `From so many rounds a change of less than ${strokesARound((all.high - all.low) / 2)} in all cannot be told from chance.`,
  ]
}

function countOf(rounds: number): string {
  return rounds === 1 ? 'one round' : `${rounds} rounds`
}

import type { Partners } from './alternate-shot.ts'
import type { TeeSplit } from './split-tees.ts'

/** Who takes which tees and what it is worth: two sentences, rounded once. */
export function splitWords(names: Partners<string>, refs: readonly string[], split: TeeSplit): string[] {
  const [odd, even] = [names[split.odd], names[split.odd === 0 ? 1 : 0]]
  const saved = Math.max(0.05, Math.round((split.otherwise - split.strokes) * 20) / 20)
  const first = split.matters
    ? `${odd} takes the odd tees and ${even} the even ones: that saves ${saved.toFixed(2)} of a stroke a round.`
    : `Who takes the odd tees does not matter over this round: let the one who likes the first tee begin.`
  const said = refs.filter((_, index) => split.hasSay[index])
  // Holes for either partner may even out over a round.
  const it = split.matters ? 'It' : 'Taken alone it'
  const second =
    said.length === 0
      ? 'On no hole does it matter who tees off.'
      : said.length === refs.length
        ? `${it} matters on every hole who tees off.`
        : `${it} matters on ${said.length === 1 ? 'hole' : 'holes'} ${said.join(', ')} who tees off; on the others it does not.`
  return [first, second]
}

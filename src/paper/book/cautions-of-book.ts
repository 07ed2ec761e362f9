import { cautionsOf, PLAYING_CAUTION } from '#golf/strategy/cautions.ts'
import { roughWords } from '#golf/strategy/rough-words.ts'
import type { RoundFacts } from './book-facts.ts'
import type { BookHole } from './planned-hole.ts'
import { purposeWords, rulesWords } from './purpose-words.ts'

/**
 * What a printed plan must say besides the plan: its purpose, whose word stands, and every caution of its holes once, with the
 * holes it is of where others are without it.
 */
export function cautionsOfBook({ holes, day, purpose, credit }: RoundFacts): string[] {
  const refsOf = new Map<string, string[]>()
  for (const { hole, plan } of holes)
    for (const words of plan?.cautions ?? cautionsOf(hole, day, NO_GUESSES, true))
      refsOf.set(words, [...(refsOf.get(words) ?? []), hole.ref])
  const said = [...refsOf].flatMap(([words, refs]) => {
    // A counting book prints no playing distance, so it need not warn of one.
    if (words === PLAYING_CAUTION) return purpose === 'practice' ? [words] : []
    return isOfAll(new Set(refs), holes)
      ? [words]
      : [`${words} (${refs.length === 1 ? 'Hole' : 'Holes'} ${refs.join(', ')}.)`]
  })
  const rough = roughWords(holes.flatMap(({ plan }) => plan ?? []))
  return [...said, ...rough, purposeWords(purpose), rulesWords(), ...(credit === null ? [] : [credit])]
}

/** Whether so many of the holes are all of them, or all that have a plan: one without is taken from no number of the player's. */
function isOfAll(refs: ReadonlySet<string>, holes: readonly BookHole[]): boolean {
  const planned = holes.filter(({ plan }) => plan !== null)
  return (planned.length > 0 ? planned : holes).every(({ hole }) => refs.has(hole.ref))
}

/** A page without a plan is not taken from any number of the player's. */
const NO_GUESSES: ReadonlySet<string> = new Set()

import { cautionsOf, PLAYING_CAUTION } from '#golf/strategy/cautions.ts'
import { roughWords } from '#golf/strategy/rough-words.ts'
import type { RoundFacts } from './book-facts.ts'
import { purposeWords, rulesWords } from './purpose-words.ts'

/** What a printed plan must say besides the plan: its purpose, whose word stands, and every caution of its holes once. */
export function cautionsOfBook({ holes, day, purpose, credit }: RoundFacts): string[] {
  const cautions = holes.flatMap(
    ({ hole, plan }) => plan?.cautions ?? cautionsOf(hole, day, NO_GUESSES, true),
  )
  // A counting book prints no playing distance, so it need not warn of one.
  const said = [...new Set(cautions)].filter((words) => purpose === 'practice' || words !== PLAYING_CAUTION)
  const rough = roughWords(holes.flatMap(({ plan }) => plan ?? []))
  return [...said, ...rough, purposeWords(purpose), rulesWords(), ...(credit === null ? [] : [credit])]
}

/** A page without a plan is not taken from any number of the player's. */
const NO_GUESSES: ReadonlySet<string> = new Set()

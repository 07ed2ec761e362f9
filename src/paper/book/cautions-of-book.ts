import { PLAYING_CAUTION } from '#golf/strategy/cautions.ts'
import type { BookFacts } from './book-facts.ts'
import { purposeWords, rulesWords } from './purpose-words.ts'

/** What a printed plan must say besides the plan: its purpose, whose word stands, and every caution of its holes once. */
export function cautionsOfBook({ holes, purpose, credit }: BookFacts): string[] {
  const cautions = holes.flatMap(({ plan }) => plan?.cautions ?? [])
  // A counting book prints no playing distance, so it need not warn of one.
  const said = [...new Set(cautions)].filter((words) => purpose === 'practice' || words !== PLAYING_CAUTION)
  return [...said, purposeWords(purpose), rulesWords(), ...(credit === null ? [] : [credit])]
}

import { RULES_2023 } from '#golf/rules/rules-2023.ts'
import type { Purpose } from './stroke-words.ts'

/** What a page is for, which stands on it. */
export function purposeWords(purpose: Purpose): string {
  return purpose === 'practice'
    ? 'Practice only: for preparation and lessons, not to be carried in a counting round.'
    : `For a counting round: prepared before the start, nothing on it is from where a ball lies (Rule ${RULES_2023.devices.clause}).`
}

/** Which edition of the Rules a page follows, and whose word stands. */
export function rulesWords(): string {
  return `${RULES_2023.edition}. The Committee's Local Rules and a referee's ruling stand above this page.`
}

import type { Fault } from '#faults/fault.ts'
import type { OwnSentence } from '#golf/player/own-sentence.ts'
import { RULES_2023 } from '#golf/rules/rules-2023.ts'

const { greenBook, devices, edition } = RULES_2023

/**
 * What in the sentences that a person wrote would break the Rules where they are carried in a counting round. By their words
 * alone: what is meant otherwise is for the person, the Committee and the referee to say.
 */
export function checkWords(written: readonly OwnSentence[]): Fault[] {
  return written.flatMap(({ hole, part, words: sentence, club }): Fault[] => {
    const words = club === undefined ? sentence : `${club}: ${sentence}`
    const place = `hole ${hole}, ${part}`
    if (PLAYING_LENGTH.test(words))
      return [
        {
          severity: 'error',
          code: 'MAR-BOOK-006',
          message: `“${words}” tells what a length plays. Measured height and wind may not be used in a round (${edition}, Rule ${devices.clause}).`,
          place,
          advice: 'Write the length as it is measured, or print for practice.',
        },
      ]
    if (GREEN.test(words) && SLOPE.test(words))
      return [
        {
          severity: 'error',
          code: 'MAR-BOOK-007',
          message: `“${words}” tells how a green slopes. ${greenBook.clause} of the ${edition} lets only the player or the caddie write that, by hand.`,
          place,
          advice: 'Leave it out for the player to write, or print for practice.',
        },
      ]
    return []
  })
}

/** `plays 165`, `plays like 165`, `playing 165`, `165 adjusted`. */
const PLAYING_LENGTH =
  /\bplay(?:s|ing)(?:\s+(?:like|as|about))?\s+\d|\d\s*(?:yd|yards?|m|metres?)?\s+adjusted\b/i
const GREEN = /\b(?:green|putts?|putting|pin|hole)\b|\bbreaks?\b/i
const SLOPE =
  /\b(?:breaks?|slopes?|sloping|uphill|downhill|borrow|tiers?|falls? (?:away|off|left|right|to)|\d+(?:\.\d+)?\s*(?:%|per cent))/i

import { totalOf } from '#golf/round/recap.ts'
import type { RoundRecap } from '#golf/round/recap-round.ts'
import {
  basisWords,
  bestLines,
  cardLines,
  costlyLines,
  gamePartWords,
  scoreWords,
  type ToldRecap,
  unsplitLines,
} from '#golf/round/recap-words.ts'
import { capital } from '#golf/strategy/capital.ts'
import { costText } from '#golf/strategy/cost-text.ts'
import type { Waterfall } from '../draw/draw-waterfall.ts'
import { AFTER_THE_ROUND, type SheetWords } from './sheet-words.ts'

/** What stands on the sheet of a round: the split as a picture, then what stood out in sentences. */
export function recapFacts(told: ToldRecap, title: string, units: 'yards' | 'metres'): SheetWords {
  const { recap, round } = told
  return {
    title: round.date === null ? title : `${title}, ${round.date}`,
    opening: [
      `${scoreWords(recap)}. Every figure is strokes more (+) or fewer (−) than the plan expects of this player.`,
      ...basisWords(told),
    ],
    waterfall: recapWaterfall(recap),
    sections: [
      { heading: 'On the card', sentences: cardLines(told) },
      { heading: 'Choices that cost most', sentences: costlyLines(recap, units).map(sentence) },
      { heading: 'Best strokes', sentences: bestLines(recap, units).map(sentence) },
      {
        heading: 'By part of the game',
        sentences: playedParts(recap).map(
          (part) =>
            `${capital(gamePartWords(part.part))}, ${part.count} ${part.count === 1 ? 'stroke' : 'strokes'}: choices ${costText(part.decision)}, struck ${costText(part.execution)}, luck ${costText(part.luck)}, in all ${costText(totalOf(part))}.`,
        ),
      },
      { heading: 'What cannot be told apart', sentences: unsplitLines(recap).map(sentence) },
      { heading: 'Mind', sentences: [AFTER_THE_ROUND] },
    ],
  }
}

/** From plan to score: choices, how each part of the game was struck, luck. */
export function recapWaterfall(recap: RoundRecap): Waterfall {
  return {
    expected: recap.value,
    steps: [
      { name: 'choices', strokes: recap.decision },
      ...playedParts(recap).map(({ part, execution }) => ({
        name: `struck: ${gamePartWords(part)}`,
        strokes: execution,
      })),
      { name: 'luck', strokes: recap.luck },
    ],
    score: recap.score,
  }
}

function playedParts({ parts }: RoundRecap): RoundRecap['parts'] {
  return parts.filter(({ count }) => count > 0)
}

/** A line of the page as a sentence. */
export function sentence(words: string): string {
  return `${capital(words)}${/[.!?]$/.test(words) ? '' : '.'}`
}

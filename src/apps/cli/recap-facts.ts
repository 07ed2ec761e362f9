import { totalOf } from '#golf/round/recap.ts'
import { capital } from '#golf/strategy/capital.ts'
import type { SheetFacts } from '#paper/book/recap-sheet.ts'
import { costText } from './plan-words.ts'
import type { RecapAnswer } from './recap-document.ts'
import { cardLines, costlyLines, PARTS } from './recap-page.ts'
import { bestText, unsplitLines } from './recap-words.ts'
import { MOST_TOLD_STROKES } from './settings.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'
import { AFTER_THE_ROUND } from './write-sheet.ts'

/** What stands on the sheet of a round: the split as a picture, then what stood out in sentences. */
export function recapFacts(
  answer: RecapAnswer,
  title: string,
  units: ReaderUnits,
): Omit<SheetFacts, 'letters' | 'paper'> {
  const { recap, round, hasDay } = answer
  const played = recap.parts.filter(({ count }) => count > 0)
  return {
    title: round.date === null ? title : `${title}, ${round.date}`,
    opening: [
      `${recap.score} strokes on ${recap.holes.length} ${recap.holes.length === 1 ? 'hole' : 'holes'}. Every figure is strokes more (+) or fewer (−) than the plan expects of this player.`,
      ...(hasDay ? [] : ['No day file was given: this is against the plan for a calm, normal day.']),
    ],
    waterfall: {
      expected: recap.value,
      steps: [
        { name: 'choices', strokes: recap.decision },
        ...played.map(({ part, execution }) => ({ name: `struck: ${PARTS[part]}`, strokes: execution })),
        { name: 'luck', strokes: recap.luck },
      ],
      score: recap.score,
    },
    sections: [
      { heading: 'On the card', sentences: cardLines(answer) },
      { heading: 'Choices that cost most', sentences: costlyLines(answer, units).map(sentence) },
      {
        heading: 'Best strokes',
        sentences: recap.best.slice(0, MOST_TOLD_STROKES).map((one) => sentence(bestText(one, units))),
      },
      {
        heading: 'By part of the game',
        sentences: played.map(
          (part) =>
            `${capital(PARTS[part.part])}, ${part.count} ${part.count === 1 ? 'stroke' : 'strokes'}: choices ${costText(part.decision)}, struck ${costText(part.execution)}, luck ${costText(part.luck)}, in all ${costText(totalOf(part))}.`,
        ),
      },
      { heading: 'What cannot be told apart', sentences: unsplitLines(recap).map(sentence) },
      { heading: 'Mind', sentences: [AFTER_THE_ROUND] },
    ],
  }
}

function sentence(words: string): string {
  return `${capital(words)}${/[.!?]$/.test(words) ? '' : '.'}`
}

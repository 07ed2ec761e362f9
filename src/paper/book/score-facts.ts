import type { Fault } from '#faults/fault.ts'
import type { Competition } from '#golf/round/competition.ts'
import type { CompetitionCard } from '#golf/round/competition-card.ts'
import { handicapWords, scoreTable, scoreTitle, standingWords, starWords } from '#golf/round/score-words.ts'
import { capital } from '#golf/strategy/capital.ts'
import type { SheetWords } from './sheet-words.ts'
import { tableSentences } from './table-sentences.ts'

function faultSentence({ place, message }: Fault): string {
  return place === '' ? message : `${capital(place)}: ${message}`
}

const RETURNED =
  'The scorecard that was certified and returned is what counts, and the Committee’s word stands.'

/** The sheet of a score: how it stands, hole by hole, and who played off what. */
export function scoreFacts(card: CompetitionCard, competition: Competition, course: string): SheetWords {
  return {
    title: scoreTitle(course, competition),
    opening: standingWords(card, competition.by),
    sections: [
      {
        heading: 'Hole by hole',
        sentences: [...tableSentences(scoreTable(card, competition.by)), ...starWords(card)],
      },
      ...(card.faults.length === 0
        ? []
        : [{ heading: 'What does not fit', sentences: card.faults.map(faultSentence) }]),
      { heading: 'Handicaps', sentences: [...handicapWords(card, competition), RETURNED] },
    ],
  }
}

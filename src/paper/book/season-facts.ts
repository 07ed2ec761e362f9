import type { SeasonChange } from '#golf/round/season-change.ts'
import { comparedWords, seasonChangeWords } from '#golf/round/season-change-words.ts'
import {
  ALL_AS_PLANNED,
  choosingWords,
  partWords,
  seasonBasis,
  seasonWords,
  type ToldSeason,
} from '#golf/round/season-words.ts'
import { capital } from '#golf/strategy/capital.ts'
import { costText } from '#golf/strategy/cost-text.ts'
import { AFTER_THE_ROUND, type SheetWords } from './sheet-words.ts'

/** The letter after a season: what was found in plain words, then the figures, strokes a round. */
export function seasonFacts(told: ToldSeason, title: string): SheetWords {
  const { season, change } = told
  const aRound = (strokes: number): string => costText(strokes / Math.max(1, season.rounds))
  return {
    title: `${title}: ${season.rounds} ${season.rounds === 1 ? 'round' : 'rounds'}`,
    opening: [...seasonWords(season), ...(change === null ? [] : seasonChangeWords(change))],
    sections: [
      {
        heading: 'Ways of choosing, strokes a round',
        sentences:
          season.choosing.length === 0
            ? [ALL_AS_PLANNED]
            : season.choosing.map(
                ({ way, count, strokes }) =>
                  `${capital(choosingWords(way))}: ${count} ${count === 1 ? 'time' : 'times'}, ${aRound(strokes)}.`,
              ),
      },
      {
        heading: 'Struck against the profile, strokes a round',
        sentences: season.parts
          .filter(({ count }) => count > 0)
          .map(({ part, count, strokes }) => `${capital(partWords(part))}: ${count}, ${aRound(strokes)}.`),
      },
      ...(change === null
        ? []
        : [{ heading: 'Against the season before, strokes a round', sentences: changeSentences(change) }]),
      { heading: 'Mind', sentences: [...seasonBasis(told), AFTER_THE_ROUND] },
    ],
  }
}

function changeSentences({ changes }: SeasonChange): string[] {
  return changes
    .filter(({ verdict }) => verdict !== 'few')
    .map(({ what, before, now, strokes, low, high }) =>
      // Choices that always cost the same are no estimate: there is nothing between two ends.
      costText(low) === costText(high)
        ? `${capital(comparedWords(what))}: ${costText(now)}, as before.`
        : `${capital(comparedWords(what))}: ${costText(before)}, now ${costText(now)}; changed by ${costText(strokes)}, between ${costText(low)} and ${costText(high)}.`,
    )
}

import type { Club } from '#golf/round/club.ts'
import {
  clubBasis,
  clubTables,
  clubTitle,
  clubWords,
  NOTHING_STANDS_OUT,
  type StrokeIndexes,
} from '#golf/round/club-words.ts'
import { AFTER_THE_ROUND, type SheetWords } from './sheet-words.ts'
import { tableSentences } from './table-sentences.ts'

/** The page for a committee: what stands out of many members' rounds, then the figures. No name, file or date is in it. */
export function clubFacts(club: Club, indexes: StrokeIndexes, course: string, isQuick: boolean): SheetWords {
  const words = clubWords(club, indexes)
  return {
    title: clubTitle(club, course),
    opening: words.length === 0 ? [NOTHING_STANDS_OUT] : words,
    sections: [
      ...clubTables(club, indexes).map(({ heading, table }) => ({
        heading,
        sentences: tableSentences(table),
      })),
      { heading: 'Mind', sentences: [...clubBasis(club, isQuick), AFTER_THE_ROUND] },
    ],
  }
}

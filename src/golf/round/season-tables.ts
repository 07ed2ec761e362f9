import { costText } from '#golf/strategy/cost-text.ts'
import { totalOf } from './recap.ts'
import type { Season } from './season.ts'
import type { SeasonChange } from './season-change.ts'
import { comparedWords } from './season-change-words.ts'
import type { SplitRound } from './season-questions.ts'
import { choosingWords, partWords } from './season-words.ts'
import { NAMED_STROKES } from './settings.ts'
import type { WordTable } from './word-table.ts'

/** From plan to score, strokes a round. */
export function totalTable(season: Season): WordTable {
  return {
    columns: [{ heading: '' }, { heading: 'strokes', isFigure: true }],
    rows: [
      ['choices', costText(season.decision)],
      ['how it was struck', costText(season.execution)],
      ['luck', costText(season.luck)],
      ['more than expected', costText(season.over)],
    ],
  }
}

/** Ways of choosing that are not the plan's, strokes a round; no rows where every choice was. */
export function choosingTable({ choosing, rounds }: Season): WordTable {
  return {
    columns: [{ heading: '' }, { heading: 'times', isFigure: true }, { heading: 'cost', isFigure: true }],
    rows: choosing.map(({ way, count, strokes }) => [
      choosingWords(way),
      String(count),
      costText(strokes / rounds),
    ]),
  }
}

/** How each part was struck against the profile, strokes a round, with the interval that few strokes leave. */
export function struckTable({ parts, rounds }: Season): WordTable {
  return {
    columns: [
      { heading: '' },
      { heading: 'strokes', isFigure: true },
      { heading: 'cost', isFigure: true },
      { heading: 'from', isFigure: true },
      { heading: 'to', isFigure: true },
    ],
    rows: parts
      .filter(({ count }) => count > 0)
      .map(({ part, count, strokes, low, high }) => [
        partWords(part),
        String(count),
        costText(strokes / rounds),
        ...(count < NAMED_STROKES ? ['too few', ''] : [low, high].map((sum) => costText(sum / rounds))),
      ]),
  }
}

/** Round by round, strokes more or fewer than expected on what could be split. */
export function roundsTable(rounds: readonly SplitRound[]): WordTable {
  return {
    columns: [
      { heading: 'round' },
      ...['holes', 'score', 'expected', 'choices', 'struck', 'luck', 'all'].map((heading) => ({
        heading,
        isFigure: true,
      })),
    ],
    rows: rounds.map(({ name, round, recap }) => [
      round.date ?? name,
      String(recap.holes.length),
      String(recap.score),
      recap.value.toFixed(2),
      ...[recap.decision, recap.execution, recap.luck, totalOf(recap)].map(costText),
    ]),
  }
}

/** What changed against the season before, strokes a round. */
export function changeTable({ changes }: SeasonChange): WordTable {
  return {
    columns: [
      { heading: '' },
      ...['before', 'now', 'change', 'from', 'to'].map((heading) => ({ heading, isFigure: true })),
    ],
    rows: changes.map(({ what, before, now, strokes, low, high, verdict }) => [
      comparedWords(what),
      ...(verdict === 'few' ? ['too few', '', '', '', ''] : [before, now, strokes, low, high].map(costText)),
    ]),
  }
}

import { costText } from '#golf/strategy/cost-text.ts'
import { type Split, totalOf } from './recap.ts'
import type { RoundRecap } from './recap-round.ts'
import { gamePartWords } from './recap-words.ts'
import type { WordTable } from './word-table.ts'

const SPLIT_COLUMNS = ['choices', 'struck', 'luck', 'all'].map((heading) => ({ heading, isFigure: true }))

function splitCells(split: Split): string[] {
  return [split.decision, split.execution, split.luck, totalOf(split)].map(costText)
}

/** A round by part of the game, strokes more or fewer than expected. */
export function partTable({ parts, penalties }: RoundRecap): WordTable {
  return {
    columns: [{ heading: '' }, { heading: 'strokes', isFigure: true }, ...SPLIT_COLUMNS],
    rows: [
      ...parts
        .filter(({ count }) => count > 0)
        .map((part) => [gamePartWords(part.part), String(part.count), ...splitCells(part)]),
      ...(penalties.count === 0
        ? []
        : [['of these, with a penalty', String(penalties.count), ...splitCells(penalties)]]),
    ],
  }
}

/** A round by hole. */
export function holeTable({ holes }: RoundRecap): WordTable {
  return {
    columns: [
      { heading: 'hole' },
      { heading: 'par', isFigure: true },
      { heading: 'score', isFigure: true },
      { heading: 'expected', isFigure: true },
      ...SPLIT_COLUMNS,
    ],
    rows: holes.map((hole) => [
      hole.ref,
      String(hole.par),
      String(hole.score),
      hole.value.toFixed(2),
      ...splitCells(hole),
    ]),
  }
}

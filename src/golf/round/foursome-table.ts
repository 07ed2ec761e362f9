import type { Hole } from '#golf/course/hole.ts'
import type { Partners } from '#golf/strategy/alternate-shot.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { type FoursomeHole, type TeeSplit, teeingOff } from '#golf/strategy/split-tees.ts'
import type { WordTable } from './word-table.ts'

/** A hole of a pair's round, with its ground. */
export interface PairedHole extends FoursomeHole {
  readonly hole: Hole
}

/** What the figures of a foursome leave out, and the Rule by which the tees go. */
export const FOURSOME_BASIS =
  'Near the pin a place counts as the mean of what it costs the two alone. Rule 22.3: partners tee off alternately, whatever came of the hole before.'

/** The pair's round, a line a hole: who tees off, what it comes to if either does and with which club, and what the order saves. */
export function foursomeTable(
  holes: readonly PairedHole[],
  names: Partners<string>,
  split: TeeSplit,
  length: { readonly sign: string; readonly figure: (metres: number) => string },
): WordTable {
  const figure = (heading: string) => ({ heading, isFigure: true })
  return {
    columns: [
      figure('hole'),
      figure('par'),
      figure(length.sign),
      { heading: 'tees off' },
      ...names.flatMap((name) => [figure(`if ${name} tees off`), { heading: `${name}’s club` }]),
      figure('saves'),
    ],
    rows: holes.map(({ hole, turns, place }, index) => [
      hole.ref,
      String(hole.par),
      length.figure(hole.lengthMetres),
      names[teeingOff(split.odd, place)],
      ...turns.flatMap(({ strokes, best }) => [strokes.toFixed(2), clubWords(best.shot)]),
      split.hasSay[index] ? savedText(split.saves[index] ?? 0) : '',
    ]),
  }
}

function savedText(strokes: number): string {
  return strokes < 0 ? `−${(-strokes).toFixed(2)}` : strokes.toFixed(2)
}

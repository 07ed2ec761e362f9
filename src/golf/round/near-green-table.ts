import type { LearnedNearGreen, TestedNumber } from '#golf/player/near-green-posterior.ts'
import type { WordTable } from './word-table.ts'

/** Putting and short game before and now. */
export function nearGreenTable({
  directionSdDegrees,
  distanceSdShare,
  strokesLost,
}: LearnedNearGreen): WordTable {
  return {
    columns: beforeAndNow(''),
    rows: [
      row('putts start off line by, degrees', directionSdDegrees, 2, 1),
      row('putts roll too far or short by, % of their way', distanceSdShare, 1, 100),
      row('strokes lost on a chip, against a tour player', strokesLost, 2, 1),
    ],
  }
}

/** Columns of a table of what was and what is. */
export function beforeAndNow(first: string): WordTable['columns'] {
  const figures = ['before', 'now', 'nine in ten'].map((heading) => ({ heading, isFigure: true }))
  return [{ heading: first }, ...figures]
}

function row(
  words: string,
  { before, after, ninety }: TestedNumber,
  digits: number,
  times: number,
): readonly string[] {
  const [low, high] = ninety.map((value) => (value * times).toFixed(digits))
  return [words, (before * times).toFixed(digits), (after * times).toFixed(digits), `${low} to ${high}`]
}

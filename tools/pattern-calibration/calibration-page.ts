import type { Learned, Trial } from './calibration-trials.ts'
import { changedCoverage, changeTable } from './change-table.ts'
import type { ChangeTrial } from './change-trials.ts'
import { type Coverage, coverageOf } from './coverage.ts'
import { lieTable } from './lie-table.ts'
import type { LieTrial } from './lie-trials.ts'

const NAMES: Readonly<Record<Learned, string>> = {
  carry: 'stock carry',
  run: 'stock run',
  directionSd: 'direction spread',
  side: 'share to the left',
  carrySd: 'spread of carry',
  mishit: 'share mishit',
  mishitCarry: 'carry of a mishit',
  mishitCarrySd: 'spread of a mishit’s carry',
}

/** docs/pattern-calibration.md: what the intervals of a learned pattern hold, from simulated players. */
export function calibrationPage(
  trials: readonly Trial[],
  changes: { readonly players: number; readonly trials: readonly ChangeTrial[] },
  lies: { readonly players: number; readonly trials: readonly LieTrial[] },
  command: string,
): string {
  const players = new Set(trials.map(({ player }) => player)).size
  const shots = [...new Set(trials.map((trial) => trial.shots))]
  const numbers = Object.keys(NAMES) as Learned[]
  const rows = shots.flatMap((count) => numbers.map((number) => coverageOf(trials, count, number)))
  return `# Do learned patterns hold what they say?

Written by \`${command}\`. Simulation-based calibration (Talts et al., arXiv 1804.06788): ${players} players are drawn
from what is assumed before any shot (men of index 0 and 20, women of 10 and 36 by turns; six clubs), each hits shots
with every club, a few strays among them as learning reckons with, and is learned from them by \`learnPlayer\`. If the posterior is right, the truth lies in half of the 50 %
intervals and in nine tenths of the 90 % intervals, and its rank among the draws is uniform. ± is one standard error over
players. "Even ranks" is the chance of ranks at least this uneven if all is right (Pearson's test, ten bins, one club of
each player). Asked: 50 ± 5 and 90 ± 3.

The command gives the same page again, figure for figure; with 500 players it takes about a quarter of an hour of one core.

${shots
  .map((count) =>
    section(
      count,
      rows.filter((row) => row.shots === count),
    ),
  )
  .join('\n\n')}

${conclusion(rows)}

## Has it changed?

${changes.players} players are learned from 100 shots a club, then one number in four of theirs is changed by as much as
real changes are taken to be (normal; docs/method.md), and they are learned on from 60 shots a club. Of the numbers that
were given a chance of a real change in each row, so many had changed.

${changeTable(changes.trials)}

What was learned of the same numbers holds the truth after the change so often; asked is 50 and 90 of all of them, since
nobody knows beforehand which have changed:

${changedCoverage(changes.trials)}

## Lies of one's own

${lies.players} players whose own factors of the rough and of bunkers are drawn from what is assumed of them are learned from
40 shots a club from the fairway and so many from the lie with each club that is used there. Asked are 50 and 90 again.

${lieTable(lies.trials)}
`
}

function section(shots: number, rows: readonly Coverage[]): string {
  return [
    `## ${shots} shots with every club`,
    '',
    '| number | in the 50 % interval, % | in the 90 % interval, % | even ranks | error of the estimate, % of the truth | width of the 90 % interval, % |',
    '| --- | --- | --- | --- | --- | --- |',
    ...rows.map(
      ({ number, half, ninety, evenRanks, error, width }) =>
        `| ${NAMES[number]} | ${percent(half.share)} ± ${percent(half.standardError)} | ${percent(ninety.share)} ± ${percent(ninety.standardError)} | ${evenRanks.toFixed(2)} | ${percent(error)} | ${percent(width)} |`,
    ),
  ].join('\n')
}

function conclusion(rows: readonly Coverage[]): string {
  const outside = rows.filter(
    ({ half, ninety }) => Math.abs(half.share - 0.5) > 0.05 || Math.abs(ninety.share - 0.9) > 0.03,
  )
  const uneven = rows.filter(({ evenRanks }) => evenRanks < 0.05)
  const least = Math.min(...rows.map(({ evenRanks }) => evenRanks))
  const names = outside.map(({ number, shots }) => `${NAMES[number]} after ${shots}`)
  return `Of ${rows.length} rows ${outside.length} lie outside what was asked${names.length === 0 ? '' : ` (${names.join('; ')})`}. ${uneven.length} have even ranks under 0.05, where ${(0.05 * rows.length).toFixed(1)} are expected by chance; the least is ${least.toFixed(3)} (with ${rows.length} tests at 0.05 in all, under ${(0.05 / rows.length).toFixed(4)} would be a finding).`
}

function percent(share: number): string {
  return (100 * share).toFixed(1)
}

import type { InformationTrial } from './information-trials.ts'

/**
 * Mean strokes lost by shots known, ± one standard error over players, as a table of Markdown: from the tee of each hole
 * and of all, and from the fairways of all. The last column is what was won since the row before by the same players,
 * whose error is less than that of either row: the players differ more than their profiles do.
 */
export function informationTable(trials: readonly InformationTrial[]): string {
  const shots = [...new Set(trials.map((trial) => trial.shots))]
  const holes = [...new Set(trials.map(({ hole }) => hole))]
  const fromTee = (count: number, hole?: string): readonly number[] =>
    byPlayer(trials, count, ({ fromTee }) => fromTee, hole)
  const fromFairway = (count: number): readonly number[] =>
    byPlayer(trials, count, ({ fromFairway }) => fromFairway)
  const rows = shots.map((count, index) => {
    const before = shots[index - 1]
    const won = (of: (count: number) => readonly number[]): string =>
      before === undefined ? '–' : told(of(count).map((lost, player) => (of(before)[player] ?? 0) - lost))
    return [
      count,
      ...holes.map((hole) => told(fromTee(count, hole))),
      told(fromTee(count)),
      won((one) => fromTee(one)),
      told(fromFairway(count)),
      won(fromFairway),
    ]
  })
  const headings = [
    'shots with each club',
    ...holes.map((hole) => `tee of hole ${hole}`),
    'tees',
    'won since the row before',
    'fairways',
    'won since the row before',
  ]
  return [headings, headings.map(() => '---'), ...rows].map((row) => `| ${row.join(' | ')} |`).join('\n')
}

/** One number for each player: the mean over holes. */
function byPlayer(
  trials: readonly InformationTrial[],
  shots: number,
  lost: (trial: InformationTrial) => number | null,
  hole?: string,
): readonly number[] {
  const own = trials.filter((trial) => trial.shots === shots && (hole === undefined || trial.hole === hole))
  return [...new Set(own.map(({ player }) => player))].map((player) =>
    mean(own.filter((trial) => trial.player === player).flatMap((trial) => lost(trial) ?? [])),
  )
}

/** Mean and its standard error. */
function told(byPlayer: readonly number[]): string {
  const middle = mean(byPlayer)
  const variance = mean(byPlayer.map((one) => (one - middle) ** 2))
  return `${middle.toFixed(4)} ± ${Math.sqrt(variance / Math.max(1, byPlayer.length - 1)).toFixed(4)}`
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0) / values.length
}

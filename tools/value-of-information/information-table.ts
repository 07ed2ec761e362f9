import type { InformationTrial } from './information-trials.ts'

/** Mean strokes lost by hole and by shots known, ± one standard error over players, as a table of Markdown. */
export function informationTable(trials: readonly InformationTrial[]): string {
  const shots = [...new Set(trials.map((trial) => trial.shots))]
  const holes = [...new Set(trials.map(({ hole }) => hole))]
  const cell = (own: readonly InformationTrial[]): string => {
    const byPlayer = [...new Set(own.map(({ player }) => player))].map((player) =>
      mean(own.filter((trial) => trial.player === player).map(({ lost }) => lost)),
    )
    const middle = mean(byPlayer)
    const variance = mean(byPlayer.map((one) => (one - middle) ** 2))
    return `${middle.toFixed(4)} ± ${Math.sqrt(variance / Math.max(1, byPlayer.length - 1)).toFixed(4)}`
  }
  const rows = shots.map((count) => {
    const own = trials.filter((trial) => trial.shots === count)
    const cells = holes.map((hole) => cell(own.filter((trial) => trial.hole === hole)))
    return `| ${[count, ...cells, cell(own)].join(' | ')} |`
  })
  const headings = ['shots with each club', ...holes.map((hole) => `hole ${hole}`), 'mean of the holes']
  return [`| ${headings.join(' | ')} |`, `|${' --- |'.repeat(headings.length)}`, ...rows].join('\n')
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0) / values.length
}

import type { LieTrial } from './lie-trials.ts'

const NAMES: Readonly<Record<LieTrial['number'], string>> = {
  carry: 'carry',
  direction: 'spread of direction',
  distance: 'spread of carry',
  mishit: 'share mishit',
}

/** Coverage of the factors of lies, and how much of what players differ by was found, as a table of Markdown. */
export function lieTable(trials: readonly LieTrial[]): string {
  const lies = [...new Set(trials.map(({ lie }) => lie))]
  const shots = [...new Set(trials.map((trial) => trial.shots))]
  const rows = lies.flatMap((lie) =>
    shots.flatMap((count) =>
      (Object.keys(NAMES) as LieTrial['number'][]).map((number) => {
        const own = trials.filter(
          (trial) => trial.lie === lie && trial.shots === count && trial.number === number,
        )
        const off = rootMeanSquare(own.map(({ truth, estimate }) => truth - estimate))
        const apart = rootMeanSquare(own.map(({ truth }) => truth))
        return `| ${[
          lie,
          count,
          NAMES[number],
          share(own.map(({ isInHalf }) => isInHalf)),
          share(own.map(({ isInNinety }) => isInNinety)),
          (100 * apart).toFixed(1),
          (100 * off).toFixed(1),
        ].join(' | ')} |`
      }),
    ),
  )
  return [
    '| lie | shots with each club | factor on | in the 50 % interval, % | in the 90 % interval, % | players differ by, % | error of the estimate, % |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...rows,
  ].join('\n')
}

function share(held: readonly boolean[]): string {
  const part = held.filter(Boolean).length / held.length
  return `${(100 * part).toFixed(0)} ± ${(100 * Math.sqrt((part * (1 - part)) / held.length)).toFixed(0)}`
}

function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, one) => sum + one * one, 0) / values.length)
}

import type { Learned } from '../pattern-calibration/calibration-trials.ts'
import type { RoundTrial } from './round-trials.ts'

const NAMES: Partial<Readonly<Record<Learned, string>>> = {
  carry: 'carry',
  directionSd: 'spread of direction',
  side: 'share left of the line',
  carrySd: 'spread of carry',
  mishit: 'share mishit',
}

/** Clubs that were hardly hit say nothing of learning. */
const LEAST_SHOTS = 10

/** The study as rows of a Markdown table; errors in percent of the truth. */
export function roundTable(trials: readonly RoundTrial[]): string[] {
  const played = trials.filter(({ shots }) => shots >= LEAST_SHOTS)
  const shots = mean(played.map((trial) => trial.shots))
  return [
    `${new Set(trials.map(({ player }) => player)).size} players, ${shots.toFixed(0)} shots a club in the mean.`,
    '',
    '| number | in the 50 % interval, % | in the 90 % interval, % | error, mean | error, root mean square | as plain totals: in the 90 % interval, % | error, mean | error, root mean square |',
    '|---|---|---|---|---|---|---|---|',
    ...(Object.keys(NAMES) as Learned[]).map((number) => {
      const own = played.filter((trial) => trial.number === number)
      const [errors, plain] = [own.map(({ error }) => error), own.map(({ plainError }) => plainError)]
      return `| ${[
        NAMES[number],
        percent(mean(own.map(({ isInHalf }) => Number(isInHalf)))),
        percent(mean(own.map(({ isInNinety }) => Number(isInNinety)))),
        percent(mean(errors), 1),
        percent(spread(errors), 1),
        percent(mean(own.map(({ isInPlainNinety }) => Number(isInPlainNinety)))),
        percent(mean(plain), 1),
        percent(spread(plain), 1),
      ].join(' | ')} |`
    }),
  ]
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0) / values.length
}

function spread(values: readonly number[]): number {
  return Math.sqrt(mean(values.map((one) => one * one)))
}

function percent(share: number, digits = 0): string {
  return (100 * share).toFixed(digits)
}

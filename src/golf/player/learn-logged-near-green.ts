import { dayNumber, recencyWeight } from './learn/season.ts'
import type { LoggedNearGreen, LoggedShortStroke } from './logged-near-green.ts'
import { type LearnedNearGreen, nearGreenPosterior } from './near-green-posterior.ts'
import { TEST_BALL_TELLS } from './near-green-settings.ts'
import type { Player, Putting } from './player.ts'
import { puttingValues } from './putting-values.ts'
import { fitLoggedPutts } from './test-day/fit-logged-putts.ts'
import { fitStrokesLost, type StrokesLost, strokesByLost } from './test-day/fit-short-test.ts'
import { puttingPriorSd, type WeighedPutting } from './test-day/weigh-putting.ts'

/**
 * Learns putting and short game from putts and strokes near the green of rounds, old ones less. The same models as of a test
 * day; how many balls of one they tell as much as is counted in the player.
 */
export function learnLoggedNearGreen(player: Player, { putts, strokes }: LoggedNearGreen): LearnedNearGreen {
  const days = [...putts, ...strokes].flatMap(({ date }) => dayNumber(date) ?? [])
  const latest = Math.max(...days)
  const weightOf = ({ date }: { readonly date: string | null }): number => {
    const day = dayNumber(date)
    return day === null ? 1 : recencyWeight(day, latest)
  }
  const putting = fitLoggedPutts(
    player.putting,
    putts.map((putt) => ({ ...putt, weight: weightOf(putt) })),
  )
  const weighed = strokes.map((stroke) => ({ ...stroke, weight: weightOf(stroke) }))
  return nearGreenPosterior(player, {
    putting,
    putts: putts.length,
    puttsWorth: puttsWorth(player.putting, putting),
    strokesLost: (own) => fitLoggedStrokes({ ...player, putting: own }, weighed),
  })
}

/** How many putts of a test day tell as much: the information on the logarithms of both spreads, in the mean. */
function puttsWorth(before: Putting, fitted: readonly WeighedPutting[]): number {
  const gains = (['directionSdDegrees', 'distanceSdShare'] as const).map((number) => {
    const logs = fitted.map(({ putting, chance }) => ({ chance, log: Math.log(putting[number]) }))
    const mean = logs.reduce((sum, { chance, log }) => sum + chance * log, 0)
    const variance = logs.reduce((sum, { chance, log }) => sum + chance * (log - mean) ** 2, 0)
    return 1 / variance - puttingPriorSd(before) ** -2
  })
  const mean = gains.reduce((sum, gain) => sum + gain, 0) / gains.length
  return Math.max(0, mean / TEST_BALL_TELLS.puttSpread)
}

/**
 * The strokes lost, each stroke an observation of them: what it cost, against a player who loses none from such a place. What is
 * still to come from off the green costs such a player too little: by how much in the mean is taken off what a stroke tells.
 */
function fitLoggedStrokes(
  player: Player,
  strokes: readonly (LoggedShortStroke & { readonly weight: number })[],
): StrokesLost {
  const { expected } = puttingValues(player)
  const afterwards = (after: LoggedShortStroke['after']): { without: number; factor: number } => {
    if (after === null) return { without: 0, factor: 0 }
    if ('puttMetres' in after) return { without: expected(after.puttMetres), factor: 0 }
    const { without, factor } = strokesByLost(player, after.lie, after.metres)
    return { without: without + after.added, factor }
  }
  const seen = strokes.map(({ lie, metres, used, added, after, weight }) => {
    const [here, next] = [strokesByLost(player, lie, metres), afterwards(after)]
    return {
      factor: here.factor,
      later: next.factor,
      lost: used + next.without - added - here.without,
      balls: weight,
    }
  })
  const sum = (of: (one: (typeof seen)[number]) => number): number =>
    seen.reduce((all, one) => all + one.balls * of(one), 0)
  const told = 1 - sum(({ later }) => later) / sum(({ factor }) => factor)
  const means = seen.map(({ factor, lost, balls }) => ({ factor: factor * told, lost, balls }))
  const first = fitStrokesLost(player.shortGame, { means, squares: 0, spare: 0 }).mean
  // Strokes that tell more of the strokes lost scatter more: their own scatter counts as much as they do.
  const scatter = sum(({ factor, later, lost }) => (factor * (lost - first * (factor - later))) ** 2)
  const counted = sum(() => 1)
  const squares = counted === 0 ? 0 : (counted * scatter) / sum(({ factor }) => factor ** 2)
  const fit = fitStrokesLost(player.shortGame, { means, squares, spare: Math.max(0, counted - 1) })
  return { ...fit, balls: strokes.length }
}

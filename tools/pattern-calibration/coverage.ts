import { normalCdf } from '../../src/numbers/statistics/normal.ts'
import type { Learned, Trial } from './calibration-trials.ts'

/** How well the intervals of one number hold what they say, after so many shots a club. */
export interface Coverage {
  readonly shots: number
  readonly number: Learned
  /** Share of truths inside the 50 % and the 90 % interval, and the standard error of each over players. */
  readonly half: Share
  readonly ninety: Share
  /** Chance of ranks at least as uneven as these if the posterior is right: one club of each player, ten bins. */
  readonly evenRanks: number
  /** Root mean square error of the estimate, and mean width of the 90 % interval, as shares of the truth. */
  readonly error: number
  readonly width: number
}

interface Share {
  readonly share: number
  readonly standardError: number
}

export function coverageOf(trials: readonly Trial[], shots: number, number: Learned): Coverage {
  const own = trials.filter((trial) => trial.shots === shots && trial.number === number)
  return {
    shots,
    number,
    half: shareOver(own, (trial) => trial.isInHalf),
    ninety: shareOver(own, (trial) => trial.isInNinety),
    evenRanks: evenness(own.filter(isOneOfEachPlayer(own)).map(({ rank }) => rank)),
    error: Math.sqrt(mean(own.map(({ error }) => error ** 2))),
    width: mean(own.map(({ width }) => width)),
  }
}

/** A player's clubs are learned together: the error of a share comes from how players differ, not clubs. */
function shareOver(trials: readonly Trial[], isIn: (trial: Trial) => boolean): Share {
  const players = new Map<number, { inside: number; count: number }>()
  for (const trial of trials) {
    const one = players.get(trial.player) ?? { inside: 0, count: 0 }
    players.set(trial.player, { inside: one.inside + Number(isIn(trial)), count: one.count + 1 })
  }
  const shares = [...players.values()].map(({ inside, count }) => inside / count)
  const share = mean(shares)
  const variance = mean(shares.map((one) => (one - share) ** 2))
  return { share, standardError: Math.sqrt(variance / Math.max(1, shares.length - 1)) }
}

function isOneOfEachPlayer(trials: readonly Trial[]): (trial: Trial) => boolean {
  const clubs = 1 + Math.max(...trials.map(({ club }) => club))
  return ({ player, club }) => club === player % clubs
}

const BINS = 10

/** Pearson's test of equal bins; its tail by the cube root of Wilson & Hilferty (Proc. Nat. Acad. Sci. 17 (1931) 684–688). */
function evenness(ranks: readonly number[]): number {
  const bins = new Array<number>(BINS).fill(0)
  for (const rank of ranks) {
    const bin = Math.min(BINS - 1, Math.floor(rank * BINS))
    bins[bin] = (bins[bin] as number) + 1
  }
  const expected = ranks.length / BINS
  const squares = bins.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0)
  const freedom = BINS - 1
  const part = 2 / (9 * freedom)
  return 1 - normalCdf((Math.cbrt(squares / freedom) - (1 - part)) / Math.sqrt(part))
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0) / values.length
}

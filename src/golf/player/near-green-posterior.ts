import { normalQuantile } from '#numbers/statistics/normal.ts'
import { weightedQuantile } from '#numbers/statistics/quantile.ts'
import type { Player, Putting } from './player.ts'
import { puttingValues } from './putting-values.ts'
import type { StrokesLost } from './test-day/fit-short-test.ts'
import { PUTTING_PROFILES } from './test-day/test-day-settings.ts'
import { profilesOf, type WeighedPutting } from './test-day/weigh-putting.ts'

/** One number before and after what was learned, with the interval in which it lies with nine chances in ten. */
export interface TestedNumber {
  readonly before: number
  readonly after: number
  readonly ninety: readonly [number, number]
}

/** What putts and strokes near the green say of a player. */
export interface LearnedNearGreen {
  /** The player with the learned numbers in place of the old ones. */
  readonly player: Player
  /** Degrees; share of the distance; strokes lost to a tour player on a chip from 20 m of fairway. */
  readonly directionSdDegrees: TestedNumber
  readonly distanceSdShare: TestedNumber
  readonly strokesLost: TestedNumber
  /** Chance of one putt, and of three or more, from a distance, metres: nine chances in ten, from low to high. */
  onePuttBand(metres: number): readonly [low: number, high: number]
  threePuttBand(metres: number): readonly [low: number, high: number]
  readonly putts: number
  readonly shortShots: number
}

/** What was played, weighed. */
export interface NearGreenEvidence {
  readonly putting: readonly WeighedPutting[]
  /** Putts that were learned from, and how many putts of a test day they tell as much as. */
  readonly putts: number
  readonly puttsWorth: number
  /** The strokes lost if the putting were this: what a leave costs depends on it. */
  readonly strokesLost: (putting: Putting) => StrokesLost
}

const LOW = 0.05

/** A player after what was played near the green. The numbers of a part that was not played stay as they are. */
export function nearGreenPosterior(
  player: Player,
  { putting: fitted, putts, puttsWorth, strokesLost: lostGiven }: NearGreenEvidence,
): LearnedNearGreen {
  const tested = (number: Exclude<keyof Putting, 'shots'>): TestedNumber => {
    const values = Float64Array.from(fitted, ({ putting }) => putting[number])
    const chances = Float64Array.from(fitted, ({ chance }) => chance)
    const mean = values.reduce((sum, value, index) => sum + value * (chances[index] as number), 0)
    return {
      before: player.putting[number],
      after: putts === 0 ? player.putting[number] : mean,
      ninety: [weightedQuantile(values, chances, LOW), weightedQuantile(values, chances, 1 - LOW)],
    }
  }
  const direction = tested('directionSdDegrees')
  const distance = tested('distanceSdShare')
  const putting = {
    directionSdDegrees: direction.after,
    distanceSdShare: distance.after,
    ...counted(player.putting.shots, puttsWorth),
  }
  const profiles = profilesOf(fitted, PUTTING_PROFILES)
  const short = over(profiles.map(lostGiven))
  const reach = normalQuantile(1 - LOW) * short.sd
  const strokesLost = short.balls === 0 ? player.shortGame.strokesLost : short.mean
  const learned = [
    ...(putts > 0 ? ['putting.direction_sd_deg', 'putting.distance_sd_share'] : []),
    ...(short.balls > 0 ? ['shortGame.strokes_lost'] : []),
  ]
  return {
    player: {
      ...player,
      putting,
      shortGame: { ...player.shortGame, strokesLost, ...counted(player.shortGame.shots, short.worth) },
      guesses: new Set([...player.guesses].filter((guess) => !learned.includes(guess))),
    },
    directionSdDegrees: direction,
    distanceSdShare: distance,
    strokesLost: {
      before: player.shortGame.strokesLost,
      after: strokesLost,
      ninety: [short.mean - reach, short.mean + reach],
    },
    onePuttBand: bandOf(profiles, 0),
    threePuttBand: bandOf(profiles, 2),
    putts,
    shortShots: short.balls,
  }
}

/** What was counted before and what is added; nothing where there is neither. */
function counted(before: number | undefined, played: number): { readonly shots?: number } {
  const shots = (before ?? 0) + Math.round(played)
  return shots === 0 ? {} : { shots }
}

/** Strokes lost with the putting as unsure as it was left: the mean over profiles; the variance within and between them. */
function over(fits: readonly StrokesLost[]): StrokesLost {
  const mean = fits.reduce((sum, fit) => sum + fit.mean, 0) / fits.length
  const variance = fits.reduce((sum, fit) => sum + fit.sd ** 2 + (fit.mean - mean) ** 2, 0) / fits.length
  return { mean, sd: Math.sqrt(variance), balls: fits[0]?.balls ?? 0, worth: fits[0]?.worth ?? 0 }
}

function bandOf(profiles: readonly Putting[], count: 0 | 2): LearnedNearGreen['onePuttBand'] {
  const equal = new Float64Array(profiles.length).fill(1)
  return (metres) => {
    const shares = Float64Array.from(profiles, (putting) => puttingValues({ putting }).shares(metres)[count])
    return [weightedQuantile(shares, equal, LOW), weightedQuantile(shares, equal, 1 - LOW)]
  }
}

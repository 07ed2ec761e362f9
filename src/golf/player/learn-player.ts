import { learnedLies, liesLearned } from './learn/learned-lies.ts'
import { isKnown, LEARNED, type Learned, numberOf } from './learn/learned-numbers.ts'
import type { LearnedLieName, LieNumber } from './learn/lie-of-shots.ts'
import { type ClubObservations, observe, type Unused } from './learn/observations.ts'
import { AT, patternPrior, SAMPLED } from './learn/pattern-prior.ts'
import { samplePosterior } from './learn/sample-posterior.ts'
import { dayNumber } from './learn/season.ts'
import { type NumberPosterior, summarise } from './learn/summarise.ts'
import { learnedClub, learnedGuesses } from './learn/write-learned.ts'
import { mirrorPlayer } from './mirror-player.ts'
import type { Club, Player } from './player.ts'
import type { ShotRecord } from './shot-record.ts'

export interface LearnOptions {
  /** The same seed gives the same numbers; 1 unless said otherwise. */
  readonly seed?: number
  /** ISO day from which shots are old; absent: the day of the newest shot. */
  readonly today?: string
  /** Every shot is known to be one of its club and its run a plain one: none is taken for a stray. */
  readonly isTrusted?: boolean
}

/** One number of a club before and after the shots: metres, degrees, shares; `side` is the share of good strikes to the left of the line. */
export interface LearnedNumber extends NumberPosterior {
  readonly before: number
  /** Chance that the player has really changed since the number was typed or learned; `null` when it was a guess or there are no shots with the club. */
  readonly chanceOfChange: number | null
}

export interface LearnedClub {
  readonly name: string
  /** Shots learned from, and what they count for by now. */
  readonly shots: number
  readonly weight: number
  /** How many of them were most likely strays: slips of the pen, other clubs, other units. */
  readonly strays: number
  readonly numbers: Readonly<Record<Learned, LearnedNumber>>
}

/** A factor of a lie before and after the shots; `before` is the mean over the shots from there, since clubs differ. */
interface LearnedFactor {
  readonly before: number
  readonly after: number
  /** Ends of the middle 50 % and 90 % of what it may be. */
  readonly half: readonly [number, number]
  readonly ninety: readonly [number, number]
}

/** What shots say of a lie in this player's hands, all clubs together. */
export interface LearnedLie {
  readonly lie: LearnedLieName
  /** Shots from there, and what they count for by now. */
  readonly shots: number
  readonly weight: number
  /** Factors on carry, on the spreads of direction and of carry (`distance`), and on the mishit share. */
  readonly factors: Readonly<Record<LieNumber, LearnedFactor>>
  /** How many times what was assumed each factor is: the same for all clubs. */
  readonly times: Readonly<Record<LieNumber, number>>
}

export interface LearnedPlayer {
  /** The player with what was learned in place of what was guessed; `shots` count what shots are worth by now. */
  readonly player: Player
  /** In the order of the player's clubs. */
  readonly clubs: readonly LearnedClub[]
  /** What the shots say of lies other than the reference lie, where there are any. */
  readonly lies: readonly LearnedLie[]
  /** How much further the ball carries when the north is warmest, a share of the carry; `null` when the shots do not tell. */
  readonly season: { readonly share: number; readonly sd: number } | null
  /** Shots that were left out, by their place in the list: of a club the player does not have, or without a distance. */
  readonly unused: readonly { readonly index: number; readonly why: Unused }[]
}

/**
 * Learns a player's pattern from shots: the posterior of every club's carry, run, spreads, sides and mishits, all clubs
 * together, from what was assumed of the player before. Old shots count less, strays hardly at all; a lie's effects
 * are divided out, and what is this player's own of them is learned with the rest. A left-hander is learned in a mirror, so that mirrored shots give the mirrored player. The model and
 * its sources stand in docs/method.md.
 */
export function learnPlayer(
  player: Player,
  shots: readonly ShotRecord[],
  options: LearnOptions = {},
): LearnedPlayer {
  if (player.hand === 'left') {
    const learned = learnRightHanded(mirrorPlayer(player), shots.map(mirrorShot), options)
    return { ...learned, player: mirrorPlayer(learned.player), clubs: learned.clubs.map(mirrorLearned) }
  }
  return learnRightHanded(player, shots, options)
}

function learnRightHanded(
  player: Player,
  shots: readonly ShotRecord[],
  options: LearnOptions,
): LearnedPlayer {
  const prior = patternPrior(player)
  const observed = observe(player, shots, dayNumber(options.today ?? null) ?? undefined)
  const draws = samplePosterior({
    prior,
    observations: observed.clubs,
    shares: player.clubs.map(({ leftShare, rightShare }) => ({ left: leftShare, right: rightShare })),
    hasSeasons: observed.hasSeasons,
    seed: options.seed ?? 1,
    isTrusted: options.isTrusted ?? false,
  })
  const change = (number: Learned, index: number): number | null => {
    const { count } = (observed.clubs[index] as ClubObservations).shots
    if (count === 0 || !isKnown(number, player.clubs[index] as Club, player.guesses)) return null
    return number === 'run'
      ? (draws.runChanges[index] as number)
      : (draws.changes[index * SAMPLED.length + AT[number]] as number)
  }
  const clubs = player.clubs.map((club, index): LearnedClub => {
    const { shots: own } = observed.clubs[index] as ClubObservations
    const posteriors = summarise(draws, index, club)
    const numbers = LEARNED.map((number): [Learned, LearnedNumber] => [
      number,
      {
        ...posteriors[number],
        before: numberOf(club, number),
        chanceOfChange: change(number, index),
      },
    ])
    return {
      name: club.name,
      shots: own.count,
      weight: own.weight.reduce((sum, one) => sum + one, 0),
      strays: draws.strays[index] as number,
      numbers: Object.fromEntries(numbers) as Record<Learned, LearnedNumber>,
    }
  })
  const mean = draws.swings.reduce((sum, one) => sum + one, 0) / draws.swings.length
  const sd = Math.sqrt(draws.swings.reduce((sum, one) => sum + (one - mean) ** 2, 0) / draws.swings.length)
  const lies = learnedLies(draws, observed.clubs)
  const learned = {
    ...player,
    clubs: player.clubs.map((club, index) => ({
      ...learnedClub(club, clubs[index] as LearnedClub, player.guesses),
      lies: liesLearned(club, player, lies, observed.clubs[index] as ClubObservations),
    })),
    guesses: learnedGuesses(player, observed.clubs, clubs),
  }
  return {
    // Without a shot nothing is learned: the draws' own noise moves no number.
    player: clubs.some((club) => club.shots > 0) ? learned : player,
    clubs,
    lies,
    season: observed.hasSeasons ? { share: mean, sd } : null,
    unused: observed.unused,
  }
}

function mirrorShot(shot: ShotRecord): ShotRecord {
  const mirrored = { ...shot, offlineMetres: shot.offlineMetres === null ? null : -shot.offlineMetres }
  if (shot.ways === undefined) return mirrored
  const ways = shot.ways.map((way) => ({
    ...way,
    directionDegrees: way.directionDegrees === null ? null : -way.directionDegrees,
  }))
  return { ...mirrored, ways }
}

function mirrorLearned(club: LearnedClub): LearnedClub {
  const { side } = club.numbers
  const turned = ([low, high]: readonly [number, number]): readonly [number, number] => [1 - high, 1 - low]
  const mirrored: LearnedNumber = {
    ...side,
    before: 1 - side.before,
    after: 1 - side.after,
    half: turned(side.half),
    ninety: turned(side.ninety),
    draws: side.draws.map((value) => 1 - value),
  }
  return { ...club, numbers: { ...club.numbers, side: mirrored } }
}

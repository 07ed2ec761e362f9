import { logOdds, shareOfLogOdds } from '#numbers/statistics/log-odds.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { type ClubDoubts, clubDoubts } from './club-doubts.ts'
import { puttingDoubt, strokesLostDoubt } from './near-green-doubt.ts'
import { NEAR_GREEN_DOUBT } from './near-green-settings.ts'
import type { Club, Player } from './player.ts'
import { type Doubt, MISHIT_SPREAD_CORRELATION } from './settings.ts'

/**
 * A player who may be this one: every number moved by what is not known of it. Guesses move most, typed numbers less,
 * numbers learned from many shots least: of those it counts what a guess leaves open and the shots say. Spreads and carries are log-normal with the stated number as their mean, the
 * mishit share is normal in log odds; each moves by a factor all clubs share and one of the club's own. The same
 * seed gives the same player.
 */
export function drawPlayer(player: Player, seed: number): Player {
  const uniform = seededGenerator(seed)
  const normal = (): number => normalQuantile(Math.min(1 - 1e-12, Math.max(1e-12, uniform())))
  const skill = normal()
  const shared: SharedFactors = {
    skill,
    length: normal(),
    mishit: MISHIT_SPREAD_CORRELATION * skill + Math.sqrt(1 - MISHIT_SPREAD_CORRELATION ** 2) * normal(),
    // A left-hander's doubt is the right-hander's in a mirror, so that a mirrored plan has mirrored intervals.
    handedness: player.hand === 'left' ? -1 : 1,
    side: normal(),
  }
  const nearGreen = threePoint(uniform())
  const touch = threePoint(uniform())
  const doubts = clubDoubts(player)
  const clubs = player.clubs.map((club, index) => drawClub(club, doubts[index] as ClubDoubts, shared, normal))
  return {
    ...player,
    clubs,
    putting: drawPutting(player, nearGreen),
    shortGame: drawShortGame(player, touch, normal),
  }
}

interface SharedFactors {
  readonly skill: number
  readonly length: number
  readonly mishit: number
  readonly handedness: number
  readonly side: number
}

function drawClub(club: Club, doubts: ClubDoubts, shared: SharedFactors, normal: () => number): Club {
  const length = factor(doubts.carry, shared.length, normal())
  const side = Math.exp(shared.handedness * deviation(doubts.side, shared.side, normal()))
  const odds = logOdds(club.mishitShare) + deviation(doubts.mishit, shared.mishit, normal())
  return {
    ...club,
    carryMetres: club.carryMetres * length,
    totalMetres: club.totalMetres + club.carryMetres * (length - 1),
    directionSdDegrees: club.directionSdDegrees * factor(doubts.directionSd, shared.skill, normal()),
    carrySdShare: club.carrySdShare * factor(doubts.carrySd, shared.skill, normal()),
    leftShare: club.leftShare * side,
    rightShare: club.rightShare / side,
    mishitShare: club.mishitShare === 0 ? 0 : shareOfLogOdds(odds),
  }
}

/** Putting of three levels only, with the mean and variance of the normal: so that all draws share three tables. */
function drawPutting(player: Player, level: number): Player['putting'] {
  const { directionSdDegrees, distanceSdShare } = player.putting
  return {
    directionSdDegrees: directionSdDegrees * Math.exp(puttingDoubt(player, 'direction_sd_deg') * level),
    distanceSdShare: distanceSdShare * Math.exp(puttingDoubt(player, 'distance_sd_share') * level),
  }
}

/** Spreads that are guesses follow the strokes lost; the ladder moves as a whole, and each rung by itself. */
function drawShortGame(player: Player, level: number, normal: () => number): Player['shortGame'] {
  const { shortGame, guesses } = player
  const doubtOf = (number: string): (typeof NEAR_GREEN_DOUBT)['guess' | 'typed'] =>
    NEAR_GREEN_DOUBT[guesses.has(`shortGame.${number}`) ? 'guess' : 'typed']
  const doubt = strokesLostDoubt(player)
  const strokesLost = shortGame.strokesLost * Math.exp(doubt.share * level) + doubt.strokes * level
  const typed = (number: string, value: number | undefined): number | undefined =>
    value === undefined || guesses.has(`shortGame.${number}`)
      ? undefined
      : value * Math.exp(NEAR_GREEN_DOUBT.typed.spread * level)
  const carrySdShare = typed('carry_sd_share', shortGame.carrySdShare)
  const directionSdDegrees = typed('direction_sd_deg', shortGame.directionSdDegrees)
  const poorShare = typed('poor_share', shortGame.poorShare)
  const ladder = normal()
  const rollPerCarry = Object.entries(shortGame.rollPerCarry ?? {}).map(([club, roll]) => {
    const { roll: whole, rung } = doubtOf(`roll_per_carry.${club}`)
    return [club, roll * Math.exp(whole * ladder + rung * normal())] as const
  })
  return {
    strokesLost,
    ...(carrySdShare === undefined ? {} : { carrySdShare }),
    ...(directionSdDegrees === undefined ? {} : { directionSdDegrees }),
    ...(poorShare === undefined ? {} : { poorShare }),
    ...(rollPerCarry.length === 0 ? {} : { rollPerCarry: Object.fromEntries(rollPerCarry) }),
  }
}

/** Log-normal factor with mean 1. */
function factor(doubt: Doubt, shared: number, own: number): number {
  return Math.exp(deviation(doubt, shared, own) - (doubt.shared ** 2 + doubt.own ** 2) / 2)
}

function deviation(doubt: Doubt, shared: number, own: number): number {
  return doubt.shared * shared + doubt.own * own
}

/** −√3, 0 or √3 with chances 1/6, 2/3, 1/6: a normal's mean, variance and kurtosis in three points. */
function threePoint(uniform: number): number {
  return uniform < 1 / 6 ? -Math.sqrt(3) : uniform < 5 / 6 ? 0 : Math.sqrt(3)
}

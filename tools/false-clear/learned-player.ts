import type { Club, Player } from '../../src/golf/player/player.ts'
import { DOUBT, type Doubt } from '../../src/golf/player/settings.ts'
import { normalQuantile } from '../../src/numbers/statistics/normal.ts'
import { seededGenerator } from '../../src/numbers/statistics/seeded-generator.ts'
import { splitNormalQuantile } from '../../src/numbers/statistics/split-normal.ts'

/**
 * What a player file says after `shots` full shots with every club: the most likely numbers given what was assumed
 * before (`prior`, a player of guesses only, with the doubt of a guess) and given shots of the true player. A mishit is
 * seen to be one. Each club learns from its own shots alone. Without shots it is the prior.
 */
export function learnedPlayer(prior: Player, truth: Player, shots: number, seed: number): Player {
  if (shots === 0) return prior
  const uniform = seededGenerator(seed)
  return {
    ...prior,
    guesses: guessesBesideClubs(prior),
    clubs: prior.clubs.map((club, index) =>
      learnedClub(club, seenShots(truth.clubs[index] as Club, shots, uniform), shots),
    ),
  }
}

function guessesBesideClubs({ guesses }: Player): Player['guesses'] {
  return new Set([...guesses].filter((path) => !path.startsWith('clubs.')))
}

/** What a row of shots with one club says, as sums. Direction in degrees from the aim, carry in metres, good strikes only. */
interface SeenShots {
  readonly good: number
  readonly mishit: number
  /** Sums of squared directions to the left and to the right. */
  readonly left: number
  readonly right: number
  readonly carrySum: number
  readonly carrySquares: number
}

function seenShots(club: Club, count: number, uniform: () => number): SeenShots {
  const seen = { good: 0, mishit: 0, left: 0, right: 0, carrySum: 0, carrySquares: 0 }
  const { directionSdDegrees, leftShare, rightShare } = club
  for (let shot = 0; shot < count; shot++) {
    if (uniform() < club.mishitShare) {
      seen.mishit++
      continue
    }
    const share = inside(uniform())
    const direction = splitNormalQuantile(
      share,
      directionSdDegrees * leftShare,
      directionSdDegrees * rightShare,
    )
    const carry = club.carryMetres * (1 + club.carrySdShare * normalQuantile(inside(uniform())))
    seen.good++
    if (direction < 0) seen.left += direction ** 2
    else seen.right += direction ** 2
    seen.carrySum += carry
    seen.carrySquares += carry ** 2
  }
  return seen
}

/** Logarithms of what each number is multiplied by, the mishit share's as log odds. */
interface Move {
  direction: number
  side: number
  carry: number
  carrySd: number
  odds: number
}

function learnedClub(club: Club, seen: SeenShots, shots: number): Club {
  const move: Move = { direction: 0, side: 0, carry: 0, carrySd: 0, odds: 0 }
  const likelihood = (): number =>
    directionLikelihood(club, seen, move) +
    carryLikelihood(club, seen, move) +
    mishitLikelihood(club, seen, move)
  for (let round = 0; round < ROUNDS; round++)
    for (const { number, doubt } of PRIORS)
      move[number] = likeliest(REACH * Math.sqrt(variance(doubt)), (value) => {
        move[number] = value
        return likelihood() - value ** 2 / (2 * variance(doubt))
      })
  const carryMetres = club.carryMetres * Math.exp(move.carry)
  return {
    ...club,
    shots,
    isGuess: false,
    carryMetres,
    totalMetres: club.totalMetres + carryMetres - club.carryMetres,
    directionSdDegrees: club.directionSdDegrees * Math.exp(move.direction),
    leftShare: club.leftShare * Math.exp(move.side),
    rightShare: club.rightShare * Math.exp(-move.side),
    carrySdShare: club.carrySdShare * Math.exp(move.carrySd),
    mishitShare: mishitOf(club, move),
  }
}

/** Alternations over the numbers, far more than they need; and standard deviations of the prior that are searched. */
const ROUNDS = 6
const REACH = 5

const PRIORS: readonly { readonly number: keyof Move; readonly doubt: Doubt }[] = [
  { number: 'direction', doubt: DOUBT.spread.guess },
  { number: 'side', doubt: DOUBT.side.guess },
  { number: 'carry', doubt: DOUBT.carry.guess },
  { number: 'carrySd', doubt: DOUBT.spread.guess },
  { number: 'odds', doubt: DOUBT.mishit.guess },
]

/** Of a split normal with its mode on the aim, without what does not depend on its spreads. */
function directionLikelihood(club: Club, seen: SeenShots, { direction, side }: Move): number {
  const left = club.directionSdDegrees * club.leftShare * Math.exp(direction + side)
  const right = club.directionSdDegrees * club.rightShare * Math.exp(direction - side)
  return -seen.good * Math.log(left + right) - seen.left / (2 * left ** 2) - seen.right / (2 * right ** 2)
}

function carryLikelihood(club: Club, seen: SeenShots, { carry, carrySd }: Move): number {
  const mean = club.carryMetres * Math.exp(carry)
  const sd = mean * club.carrySdShare * Math.exp(carrySd)
  const squares = seen.carrySquares - 2 * mean * seen.carrySum + seen.good * mean ** 2
  return -seen.good * Math.log(sd) - squares / (2 * sd ** 2)
}

function mishitLikelihood(club: Club, seen: SeenShots, move: Move): number {
  const share = mishitOf(club, move)
  return seen.mishit * Math.log(share) + seen.good * Math.log(1 - share)
}

function mishitOf(club: Club, { odds }: Move): number {
  return 1 / (1 + ((1 - club.mishitShare) / club.mishitShare) * Math.exp(-odds))
}

/** Where a function with one top has it, between −reach and reach: by golden section. */
function likeliest(reach: number, valueAt: (at: number) => number): number {
  const golden = (Math.sqrt(5) - 1) / 2
  let [low, high] = [-reach, reach]
  while (high - low > 1e-6) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)]
    if (valueAt(left) < valueAt(right)) low = left
    else high = right
  }
  return (low + high) / 2
}

function variance({ shared, own }: Doubt): number {
  return shared ** 2 + own ** 2
}

function inside(uniform: number): number {
  return Math.min(1 - 1e-12, Math.max(1e-12, uniform))
}

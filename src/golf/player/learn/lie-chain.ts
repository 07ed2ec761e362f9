import { sliceSample } from '#numbers/statistics/slice-sample.ts'
import { LEARNED_LIES, LIE_NUMBERS, type LieEffects, type LieOfShots } from './lie-of-shots.ts'
import type { ClubObservations } from './observations.ts'
import { mishitsOfLie, type SideShares } from './pattern-likelihood.ts'
import { AT, SAMPLED } from './pattern-prior.ts'
import { type StrikeSums, type Strikes, squaresAbout } from './strike-sums.ts'

/** The state of the player's own factors of lies, common to all clubs, and how they are drawn given the patterns. */
export class LieChain {
  /** Logarithms over what was assumed: {@link LIE_NUMBERS} of each of {@link LEARNED_LIES}; 0 where nothing was hit. */
  readonly factors: Float64Array = new Float64Array(LEARNED_LIES.length * LIE_NUMBERS.length)
  /** By club, then by number of the lie. */
  readonly effects: (readonly LieEffects[])[]
  readonly #observations: readonly ClubObservations[]
  readonly #doubts: Float64Array
  /** For each learned lie the clubs that were hit from it, and its number with each. */
  readonly #hit: readonly (readonly { readonly club: number; readonly lie: number }[])[]

  constructor(observations: readonly ClubObservations[], doubts: Float64Array) {
    this.#observations = observations
    this.#doubts = doubts
    this.effects = observations.map(({ lies }) => lies.map((lie) => this.#effectsOf(lie)))
    this.#hit = LEARNED_LIES.map((_, place) =>
      observations.flatMap(({ lies }, club) => {
        const lie = lies.findIndex((one) => one.place === place)
        return lie < 0 ? [] : [{ club, lie }]
      }),
    )
  }

  /** Draws every factor of the lies that were hit from, by slice sampling. `numbers` and `swing` as the patterns stand. */
  draw(
    sums: readonly StrikeSums[],
    numbers: Float64Array,
    swing: number,
    shares: readonly SideShares[],
    uniform: () => number,
  ): void {
    this.#hit.forEach((hit, place) => {
      if (hit.length === 0) return
      LIE_NUMBERS.forEach((number, step) => {
        const at = place * LIE_NUMBERS.length + step
        const doubt = this.#doubts[at] as number
        this.factors[at] = sliceSample(
          (value) => {
            this.factors[at] = value
            let sum = -((value / doubt) ** 2) / 2
            for (const { club, lie } of hit) {
              const effects = this.#effectsOf(
                (this.#observations[club] as ClubObservations).lies[lie] as LieOfShots,
              )
              const strikes = (sums[club] as StrikeSums).lies[lie] as Strikes
              sum +=
                number === 'mishit'
                  ? mishitLogLikelihood(strikes, effects, numbers, club)
                  : number === 'direction'
                    ? directionLogLikelihood(strikes, effects, numbers, club, shares[club] as SideShares)
                    : carryLogLikelihood(strikes, effects, numbers, club, swing)
            }
            return sum
          },
          this.factors[at] as number,
          doubt,
          uniform,
        )
      })
      for (const { club } of hit)
        this.effects[club] = (this.#observations[club] as ClubObservations).lies.map((lie) =>
          this.#effectsOf(lie),
        )
    })
  }

  #effectsOf({ place, carry, direction, distance, mishit }: LieOfShots): LieEffects {
    const factor = (step: number): number =>
      place < 0 ? 1 : Math.exp(this.factors[place * LIE_NUMBERS.length + step] as number)
    const own = factor(0)
    return {
      own,
      carry: carry * own,
      direction: direction * factor(1),
      distance: distance * factor(2),
      mishit: mishit * factor(3),
    }
  }
}

/** Carries as the lie left them, good strikes and mishits; constants left out. */
function carryLogLikelihood(
  { good, mishit }: Strikes,
  { own, distance }: LieEffects,
  numbers: Float64Array,
  club: number,
  swing: number,
): number {
  const at = club * SAMPLED.length
  const carry = own * Math.exp(numbers[at + AT.carry] as number)
  let sum = 0
  if (good.count > 0) {
    const sd = carry * Math.exp(numbers[at + AT.carrySd] as number) * distance
    sum -= good.count * Math.log(own * distance) + squaresAbout(good, carry, 1, swing) / (2 * sd * sd)
  }
  if (mishit.count > 0) {
    const sd = carry * Math.exp(numbers[at + AT.mishitCarrySd] as number)
    const share = Math.exp(numbers[at + AT.mishitCarry] as number)
    sum -= mishit.count * Math.log(own) + squaresAbout(mishit, carry, share, swing) / (2 * sd * sd)
  }
  return sum
}

function directionLogLikelihood(
  { directions, left, right }: Strikes,
  { direction }: LieEffects,
  numbers: Float64Array,
  club: number,
  shares: SideShares,
): number {
  if (directions === 0) return 0
  const at = club * SAMPLED.length
  const side = Math.exp(numbers[at + AT.side] as number)
  const sd = Math.exp(numbers[at + AT.directionSd] as number) * direction
  const squares = left / (shares.left * side) ** 2 + right / (shares.right / side) ** 2
  return -directions * Math.log(direction) - squares / (2 * sd * sd)
}

function mishitLogLikelihood(
  strikes: Strikes,
  { mishit }: LieEffects,
  numbers: Float64Array,
  club: number,
): number {
  const odds = numbers[club * SAMPLED.length + AT.mishit] as number
  return mishitsOfLie(strikes, 1 / (1 + Math.exp(-odds)), mishit)
}

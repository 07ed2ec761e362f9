import { normalQuantile } from '#numbers/statistics/normal.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { type SharedNormal, sharedNormal } from '#numbers/statistics/shared-normal.ts'
import { sliceSample } from '#numbers/statistics/slice-sample.ts'
import { chanceOfChange } from './chance-of-change.ts'
import { SEASON_SD_SHARE } from './learn-settings.ts'
import { LieChain } from './lie-chain.ts'
import type { LieEffects } from './lie-of-shots.ts'
import type { ClubObservations } from './observations.ts'
import {
  carryLikelihood,
  directionLikelihood,
  mishitLikelihood,
  type SideShares,
} from './pattern-likelihood.ts'
import { AT, FACTOR_COUNT, LOADS, type PatternPrior, SAMPLED } from './pattern-prior.ts'
import { shareOutInto } from './share-out.ts'
import { noStrikes, type StrikeSums } from './strike-sums.ts'

export interface ChainInput {
  readonly prior: PatternPrior
  readonly observations: readonly ClubObservations[]
  readonly shares: readonly SideShares[]
  readonly hasSeasons: boolean
  readonly seed: number
  /** No shot is a stray, whatever it looks like. */
  readonly isTrusted: boolean
}

const NUMBERS = SAMPLED.length

/** The state of the sampler of a player's pattern, and one sweep over it: see `samplePosterior`. */
export class PatternChain {
  readonly numbers: Float64Array
  readonly runs: Float64Array
  /** Chance, in this state, that each number and each run has really changed; 0 where it was a guess. */
  readonly changes: Float64Array
  readonly runChanges: Float64Array
  readonly sums: readonly StrikeSums[]
  swing = 0
  runFamily: SharedNormal = sharedNormal([])
  readonly lies: LieChain
  readonly #input: ChainInput
  readonly #uniform: () => number
  readonly #factors = new Float64Array(FACTOR_COUNT)
  /** What is the club's own in each number, in standard deviations of it: with or without a change, as it is taken now. */
  readonly #own: Float64Array
  readonly #ownSd: Float64Array
  readonly #ownRunSd: Float64Array
  /** Where all numbers move at once, before it is known whether they do. */
  readonly #moved: Float64Array

  constructor(input: ChainInput) {
    const { prior, observations } = input
    this.#input = input
    this.lies = new LieChain(observations, prior.lies)
    this.#uniform = seededGenerator(input.seed)
    this.numbers = prior.centre.slice()
    this.runs = Float64Array.from(prior.run, ({ metres }) => metres)
    this.#ownRunSd = Float64Array.from(prior.run, ({ doubt }) => doubt.own)
    this.runChanges = new Float64Array(prior.clubs)
    this.sums = observations.map(({ lies }) => noStrikes(lies.length))
    this.changes = new Float64Array(prior.centre.length)
    this.#own = new Float64Array(prior.centre.length)
    this.#ownSd = prior.own.slice()
    this.#moved = new Float64Array(prior.centre.length)
  }

  sweep(): void {
    this.#shareOut()
    this.#drawRuns()
    if (this.#input.hasSeasons) this.#drawSwing()
    this.#drawOwn()
    this.#drawChanges()
    for (let factor = 0; factor < FACTOR_COUNT; factor++) {
      this.#moveFactor(factor)
      this.#refitFactor(factor)
    }
    this.lies.draw(this.sums, this.numbers, this.swing, this.#input.shares, this.#uniform)
  }

  #normal(): number {
    return normalQuantile(Math.min(1 - 1e-15, Math.max(1e-300, this.#uniform())))
  }

  #shareOut(): void {
    const { observations, shares, prior, isTrusted } = this.#input
    observations.forEach((club, index) => {
      if (club.shots.count === 0) return
      const at = index * NUMBERS
      const pattern = {
        numbers: this.numbers,
        at,
        run: this.runs[index] as number,
        firstRun: (prior.run[index] as PatternPrior['run'][number]).metres,
        swing: this.swing,
        shares: shares[index] as SideShares,
        firstCarry: prior.carry[index] as number,
        strayFactor: isTrusted ? 0 : 1,
      } as const
      shareOutInto(
        this.sums[index] as StrikeSums,
        club,
        this.lies.effects[index] as readonly LieEffects[],
        pattern,
        this.#uniform,
      )
    })
  }

  #drawRuns(): void {
    this.runFamily = sharedNormal(
      this.#input.prior.run.map(({ metres, doubt }, index) => {
        const { runPrecision, runSum } = this.sums[index] as StrikeSums
        return {
          centre: metres,
          shared: metres * doubt.shared,
          own: metres * (this.#ownRunSd[index] as number),
          precision: runPrecision,
          weightedSum: runSum,
        }
      }),
    )
    const factor = this.runFamily.factorMean + this.runFamily.factorSd * this.#normal()
    this.runFamily.members.forEach(({ intercept, slope, ownSd }, index) => {
      const run = intercept + slope * factor + ownSd * this.#normal()
      this.runs[index] = run
      const { metres, doubt, changedOwn } = this.#input.prior.run[index] as PatternPrior['run'][number]
      const part = run / metres - 1 - doubt.shared * factor
      if (changedOwn === 0) return
      const chance = chanceOfChange(part, doubt.own, changedOwn)
      this.runChanges[index] = chance
      this.#ownRunSd[index] = this.#uniform() < chance ? changedOwn : doubt.own
    })
  }

  /** Takes each known number for changed or not, by chance, its club's own part held. */
  #drawChanges(): void {
    const { own, changedOwn } = this.#input.prior
    for (let at = 0; at < this.#own.length; at++) {
      const changedSd = changedOwn[at] as number
      if (changedSd === 0) continue
      const part = (this.#ownSd[at] as number) * (this.#own[at] as number)
      const chance = chanceOfChange(part, own[at] as number, changedSd)
      const sd = this.#uniform() < chance ? changedSd : (own[at] as number)
      this.changes[at] = chance
      this.#ownSd[at] = sd
      this.#own[at] = part / sd
    }
  }

  /** All carries as shares of the stock carry are `share + swing · season` with known spread: normal in closed form. */
  #drawSwing(): void {
    let precision = 1 / SEASON_SD_SHARE ** 2
    let weighted = 0
    this.sums.forEach(({ good, mishit }, index) => {
      const at = index * NUMBERS
      const carry = Math.exp(this.numbers[at + AT.carry] as number)
      const parts = [
        [good, 1, Math.exp(this.numbers[at + AT.carrySd] as number)],
        [
          mishit,
          Math.exp(this.numbers[at + AT.mishitCarry] as number),
          Math.exp(this.numbers[at + AT.mishitCarrySd] as number),
        ],
      ] as const
      for (const [sums, share, sd] of parts) {
        precision += sums.ss / sd ** 2
        weighted += (sums.ys / carry - share * sums.s) / sd ** 2
      }
    })
    this.swing = weighted / precision + this.#normal() / Math.sqrt(precision)
  }

  /** Log likelihood of what depends on number `place` of a club. */
  #likelihood(numbers: Float64Array, club: number, place: number): number {
    const sums = this.sums[club] as StrikeSums
    const at = club * NUMBERS
    if (place === AT.directionSd || place === AT.side)
      return directionLikelihood(sums, numbers, at, this.#input.shares[club] as SideShares)
    if (place === AT.mishit)
      return mishitLikelihood(sums, numbers, at, this.lies.effects[club] as readonly LieEffects[])
    return carryLikelihood(sums, numbers, at, this.swing)
  }

  #drawOwn(): void {
    for (let at = 0; at < this.numbers.length; at++) {
      const own = this.#ownSd[at] as number
      const club = Math.floor(at / NUMBERS)
      const before = this.#own[at] as number
      const base = (this.numbers[at] as number) - own * before
      const next = sliceSample(
        (value) => {
          this.numbers[at] = base + own * value
          return this.#likelihood(this.numbers, club, at % NUMBERS) - (value * value) / 2
        },
        before,
        1,
        this.#uniform,
      )
      this.#own[at] = next
      this.numbers[at] = base + own * next
    }
  }

  /** Moves a factor and with it every number that hangs on it, the clubs' own parts held. */
  #moveFactor(factor: number): void {
    const { prior } = this.#input
    const before = this.#factors[factor] as number
    const shift = (by: number): Float64Array => {
      for (let at = 0; at < this.numbers.length; at++) {
        const load = (LOADS[at % NUMBERS] as readonly number[])[factor] as number
        this.#moved[at] = (this.numbers[at] as number) + by * load * (prior.shared[at] as number)
      }
      return this.#moved
    }
    const places = PLACES_OF_FACTOR[factor] as readonly number[]
    const next = sliceSample(
      (value) => {
        const moved = shift(value - before)
        let sum = (-value * value) / 2
        for (let club = 0; club < prior.clubs; club++)
          for (const place of places) sum += this.#likelihood(moved, club, place)
        return sum
      },
      before,
      1,
      this.#uniform,
    )
    this.numbers.set(shift(next - before))
    this.#factors[factor] = next
  }

  /** Draws a factor with every number held: normal in closed form; the clubs' own parts take up the difference. */
  #refitFactor(factor: number): void {
    const { prior } = this.#input
    const before = this.#factors[factor] as number
    let precision = 1
    let weighted = 0
    for (let at = 0; at < this.numbers.length; at++) {
      const load = loadOf(at, factor, prior)
      if (load === 0) continue
      const own = this.#ownSd[at] as number
      precision += (load / own) ** 2
      weighted += (load * (load * before + own * (this.#own[at] as number))) / own ** 2
    }
    const next = weighted / precision + this.#normal() / Math.sqrt(precision)
    this.#factors[factor] = next
    for (let at = 0; at < this.numbers.length; at++) {
      const load = loadOf(at, factor, prior)
      if (load !== 0)
        this.#own[at] = (this.#own[at] as number) + (load * (before - next)) / (this.#ownSd[at] as number)
    }
  }
}

/** Numbers whose likelihoods a factor moves: one of each part of the likelihood, so that none is counted twice. */
const PLACES_OF_FACTOR: readonly (readonly number[])[] = [
  [AT.directionSd, AT.carrySd, AT.mishit],
  [AT.carry],
  [AT.mishit],
  [AT.side],
  [AT.mishitCarry],
  [AT.mishitCarrySd],
]

function loadOf(at: number, factor: number, prior: PatternPrior): number {
  return ((LOADS[at % NUMBERS] as readonly number[])[factor] as number) * (prior.shared[at] as number)
}

import type { LieEffects } from './lie-of-shots.ts'
import { AT } from './pattern-prior.ts'
import { type StrikeSums, type Strikes, squaresAbout } from './strike-sums.ts'

/** The left and right shares as the file has them, which the learned proportion multiplies and divides. */
export interface SideShares {
  readonly left: number
  readonly right: number
}

/** Log likelihood of the carries, up to a constant: depends on carry, its spread, and a mishit's carry and spread. `at` is the club's place in `numbers`. */
export function carryLikelihood(sums: StrikeSums, numbers: Float64Array, at: number, swing: number): number {
  const { good, mishit } = sums
  if (good.count + mishit.count === 0) return 0
  const logCarry = numbers[at + AT.carry] as number
  const carry = Math.exp(logCarry)
  let sum = 0
  if (good.count > 0) {
    const logSd = logCarry + (numbers[at + AT.carrySd] as number)
    sum -= good.count * logSd + squaresAbout(good, carry, 1, swing) / (2 * Math.exp(2 * logSd))
  }
  if (mishit.count > 0) {
    const logSd = logCarry + (numbers[at + AT.mishitCarrySd] as number)
    const share = Math.exp(numbers[at + AT.mishitCarry] as number)
    sum -= mishit.count * logSd + squaresAbout(mishit, carry, share, swing) / (2 * Math.exp(2 * logSd))
  }
  return sum
}

/** Log likelihood of the directions, up to a constant: split normal about the intended line. */
export function directionLikelihood(
  sums: StrikeSums,
  numbers: Float64Array,
  at: number,
  shares: SideShares,
): number {
  if (sums.directions === 0) return 0
  const logSd = numbers[at + AT.directionSd] as number
  const side = Math.exp(numbers[at + AT.side] as number)
  const left = shares.left * side
  const right = shares.right / side
  const squares = sums.left / (left * left) + sums.right / (right * right)
  return -sums.directions * (logSd + Math.log(left + right)) - squares / (2 * Math.exp(2 * logSd))
}

/** Log likelihood of how many were mishit, lie by lie. */
export function mishitLikelihood(
  sums: StrikeSums,
  numbers: Float64Array,
  at: number,
  effects: readonly LieEffects[],
): number {
  const share = 1 / (1 + Math.exp(-(numbers[at + AT.mishit] as number)))
  let sum = 0
  for (let lie = 0; lie < effects.length; lie++)
    sum += mishitsOfLie(sums.lies[lie] as Strikes, share, (effects[lie] as LieEffects).mishit)
  return sum
}

/** The same from one lie: `share` as from the reference lie, `factor` what the lie makes of it. */
export function mishitsOfLie({ good, mishit }: Strikes, share: number, factor: number): number {
  if (good.count + mishit.count === 0) return 0
  const here = mishitFrom(share, factor)
  return good.count * Math.log(1 - here) + mishit.count * Math.log(here)
}

/** Share mishit from a lie, as a plan has it. */
export function mishitFrom(share: number, lieFactor: number): number {
  return Math.min(0.9, Math.max(1e-9, share * lieFactor))
}

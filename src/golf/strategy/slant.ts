import { HIGHEST_LOOK_SHARE, SLANT_STEPS } from './settings.ts'

/**
 * A way between ground and air as the solve of a hole sees it: straight up, and from its ceiling on level. A ball leaves
 * on one, and, looked back along from where it lands, comes down on another; between the two it is higher than trees, or
 * as low as its ceiling.
 */
export interface Slant {
  readonly isDown: boolean
  /** Metres of height per metre along the ground. */
  readonly rise: number
  /** It goes no higher than this, metres; infinite where that is above everything on the hole. */
  readonly ceiling: number
  /** Metres along the ground for which it holds: half of the whole way, or as far as it is below anything. */
  readonly reach: number
}

/** A flight in shares of its carry, and the size at which it is flown. */
export interface SlantFlight {
  /** Heights at equal parts of the carry, as shares of it. */
  readonly heights: Float64Array
  readonly heightShare: number
  readonly carryMetres: number
}

/**
 * The first or the last part of a flight as a slant, among things no higher than `tallest` metres. Figures are rounded to
 * steps of a few parts in a hundred, so that many shots share one; `null` for one too short to meet anything.
 */
export function slantOf(flight: SlantFlight, isDown: boolean, tallest: number): Slant | null {
  const { heights, heightShare, carryMetres } = flight
  const parts = heights.length - 1
  const apex = heights.reduce((most, height) => Math.max(most, height), 0)
  const scale = carryMetres * heightShare
  if (apex * scale <= 0 || tallest <= 0) return null
  const look = Math.min(tallest / scale, HIGHEST_LOOK_SHARE * apex)
  const heightAt = (part: number): number => heights[isDown ? parts - part : part] as number
  let above = 1
  while (heightAt(above) < look) above += 1
  const below = heightAt(above - 1)
  const share = (above - 1 + (look - below) / (heightAt(above) - below)) / parts
  const rise = stepsOf((look * heightShare) / share)
  return oneOf(isDown, rise, apex * scale >= tallest ? null : stepsOf(apex * scale), tallest)
}

/** Slants of the same figures are one object, so that tables are found by it. `ceiling`: in steps; `null` is above everything. */
function oneOf(isDown: boolean, rise: number, ceiling: number | null, tallest: number): Slant {
  const among = slants.get(tallest) ?? new Map<number, Slant>()
  slants.set(tallest, among)
  const key = 2 * (MOST_STEPS * (ceiling ?? MOST_STEPS) + rise) + (isDown ? 1 : 0)
  const known = among.get(key)
  if (known) return known
  const made = {
    isDown,
    rise: SLANT_STEPS ** rise,
    ceiling: ceiling === null ? Number.POSITIVE_INFINITY : SLANT_STEPS ** ceiling,
  }
  // A flight is as high at its middle as it would be at a quarter of its length going straight on.
  const slant = { ...made, reach: (made.ceiling < tallest ? 2 * made.ceiling : tallest) / made.rise }
  among.set(key, slant)
  return slant
}

/** By the height of what stands on the hole, and by a number made of the figures in steps. */
const slants = new Map<number, Map<number, Slant>>()

/** More steps than any figure has, up or down. */
const MOST_STEPS = 1000

/** The nearest of the figures that are a fixed share apart, by its number. */
function stepsOf(figure: number): number {
  return Math.round(Math.log(figure) / Math.log(SLANT_STEPS))
}

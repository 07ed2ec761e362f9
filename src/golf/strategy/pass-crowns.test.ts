import { describe, expect, it } from 'vitest'
import type { Crown } from '#golf/course/crown.ts'
import { type CrownRays, crownRays } from './crown-rays.ts'
import { emptyPassage, passCrownsInto } from './pass-crowns.ts'
import type { StrikePaths } from './strike-paths.ts'

const REACH = 100

/** A flight up and down in two straight lines: 20 m high at 50 m. */
const paths: StrikePaths = {
  heights: Float64Array.of(0, 0.1, 0.2, 0.1, 0),
  clearFrom: Float64Array.of(0),
  clearTo: Float64Array.of(0),
  heightShare: Float64Array.of(1),
  reach: Float64Array.of(REACH),
  clearSteps: Float64Array.of(1e9),
  falls: [],
}

function raysWith(...stretches: readonly (readonly [number, number, number])[]): CrownRays {
  return crownRays({
    slots: 1,
    stepRadians: Math.PI / 2,
    topOf: () => 100,
    follow: (_, __, add) => {
      for (const [from, to, crown] of stretches) add(from, to, crown)
    },
  })
}

function passed(crown: Crown, ...stretches: readonly (readonly [number, number])[]): number {
  const rays = raysWith(...stretches.map(([from, to]) => [from, to, 1] as const))
  const nothing = { topMetres: 0, baseMetres: 0, densityPerMetre: 0, trunkDensityPerMetre: 0 }
  const passage = emptyPassage()
  const left = passCrownsInto(passage, [nothing, crown], rays, rays.rayAt(0, 0), paths, 0)
  const caught = passage.chance.slice(0, passage.count).reduce((sum, chance) => sum + chance, 0)
  expect(left + caught).toBeCloseTo(1, 12)
  return left
}

const wood = (topMetres: number, baseMetres: number): Crown => ({
  topMetres,
  baseMetres,
  densityPerMetre: 0.1,
  trunkDensityPerMetre: 0.02,
})

// A ball on its way through crowns meets leaves as a ray meets absorbing matter: e^(−density · metres).
describe('a path past crowns', () => {
  it('is passed with e to the minus density times metres inside the crowns', () => {
    expect(passed(wood(40, 0), [20, 45])).toBeCloseTo(Math.exp(-0.1 * 25), 12)
  })

  it('is untouched above the tops, and meets only trunks below the branches', () => {
    expect(passed(wood(7, 0), [40, 60])).toBe(1)
    expect(passed(wood(40, 19), [10, 30])).toBeCloseTo(Math.exp(-0.02 * 20), 12)
  })

  it('meets of a wood that it climbs out of only the part below the tops', () => {
    // 0.4 m of height a metre: above 8 m from 20 m on, above branches of 2 m from 5 m on.
    expect(passed(wood(8, 2), [3, 45])).toBeCloseTo(Math.exp(-0.02 * 2 - 0.1 * 15), 12)
  })

  it('ends at the landing, and multiplies over one stand after another', () => {
    expect(passed(wood(40, 0), [90, 200])).toBeCloseTo(Math.exp(-0.1 * 10), 6)
    expect(passed(wood(40, 0), [10, 20], [60, 75])).toBeCloseTo(Math.exp(-0.1 * 25), 6)
    expect(passed(wood(40, 0), [150, 200])).toBe(1)
  })

  it('is caught more the higher and the denser the crowns', () => {
    let before = 1
    for (const top of [1, 3, 6, 9, 15, 30]) {
      const left = passed(wood(top, 0), [0, 95])
      expect(left).toBeLessThan(before)
      before = left
    }
  })
})

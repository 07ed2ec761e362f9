import { describe, expect, it } from 'vitest'
import {
  carriedView,
  type MapView,
  nearerView,
  PIXELS_PER_METRE,
  pixelsInView,
  placeInView,
} from './map-view.ts'
import { tilesOver } from './web-mercator.ts'

const VIEW: MapView = { middle: [-1.8, 55.9], pixelsPerMetre: 1 }

describe('what of a map is seen', () => {
  it('comes nearer about a place of the screen, which stays where it is', () => {
    const at = [120, -80] as const
    const place = placeInView(VIEW, at)
    for (const times of [1.5, 0.5]) {
      const [right, down] = pixelsInView(nearerView(VIEW, times, at), place)
      expect(right).toBeCloseTo(120, 2)
      expect(down).toBeCloseTo(-80, 2)
    }
  })

  it('ends where there is nothing nearer or further to see', () => {
    let [near, far] = [VIEW, VIEW]
    for (let press = 0; press < 40; press++) [near, far] = [nearerView(near, 1.5), nearerView(far, 1 / 1.5)]
    expect(near.pixelsPerMetre).toBe(PIXELS_PER_METRE.nearest)
    expect(far.pixelsPerMetre).toBe(PIXELS_PER_METRE.furthest)
    expect(nearerView(near, 2, [50, 50])).toEqual(near)
  })

  it('is carried by what the hand carries it, however often', () => {
    let view = VIEW
    for (let step = 0; step < 100; step++) view = carriedView(view, [3, -2])
    const [right, down] = pixelsInView(VIEW, view.middle)
    expect(right).toBeCloseTo(300, 1)
    expect(down).toBeCloseTo(-200, 1)
  })

  it('has the same tiles about the date line as elsewhere', () => {
    const corners = (longitude: number) =>
      (
        [
          [-300, -200],
          [300, -200],
          [-300, 200],
          [300, 200],
        ] as const
      ).map((at) => placeInView({ middle: [longitude, -17], pixelsPerMetre: 1 }, at))
    const across = tilesOver(corners(179.9995), 18, 80)
    const usual = tilesOver(corners(45.0005), 18, 80)
    expect(across[0]?.z).toBe(usual[0]?.z)
    expect(Math.abs(across.length - usual.length)).toBeLessThanOrEqual(4)
    const side = 2 ** 18
    expect(new Set(across.map(({ x }) => ((x % side) + side) % side))).toContain(0)
    expect(new Set(across.map(({ x }) => ((x % side) + side) % side))).toContain(side - 1)
  })
})

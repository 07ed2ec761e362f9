import { expect, test } from 'vitest'
import { greenSurface } from './green-surface.ts'

test('a green that falls towards +x rises towards −x and is as high as the pin at the pin', () => {
  const surface = greenSurface({ pin: [3, 100], greenFallPercent: 2, greenFallTowardDegrees: 90 })
  expect(surface.source).toBe('mean-fall')
  expect(surface.gradientAt(0, 0)[0]).toBeCloseTo(-0.02, 12)
  expect(surface.gradientAt(0, 0)[1]).toBeCloseTo(0, 12)
  expect(surface.heightAt(3, 100)).toBeCloseTo(0, 12)
  expect(surface.heightAt(13, 100)).toBeCloseTo(-0.2, 12)
})

test('a green without a surveyed fall is level', () => {
  const surface = greenSurface({ pin: [0, 100], greenFallPercent: 0, greenFallTowardDegrees: 0 })
  expect(surface.source).toBe('level')
  expect(surface.heightAt(10, 90)).toBeCloseTo(0, 12)
})

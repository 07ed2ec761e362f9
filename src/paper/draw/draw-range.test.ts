import { describe, expect, it } from 'vitest'
import { drawRange } from './draw-range.ts'
import type { Shape, TextShape } from './drawing.ts'
import { layOutRange } from './range-sheet.ts'

const SIZE = { width: 600, height: 800 }

function texts(shapes: readonly Shape[]): readonly TextShape[] {
  return shapes.filter((shape) => shape.kind === 'text')
}

describe('a range', () => {
  it.each([30, 120, 240])(
    'has a ball of %i m, long, short and wide ones on its sheet, at one scale',
    (middle) => {
      const sheet = layOutRange(middle, SIZE)
      const { left, right, top, bottom } = sheet.frame
      for (const [x, y] of [
        [0, 0.3 * middle],
        [0.23 * middle, 1.3 * middle],
        [-0.23 * middle, middle],
      ] as const) {
        const at = sheet.toSheet([x, y])
        expect(at[0]).toBeGreaterThan(left)
        expect(at[0]).toBeLessThan(right)
        expect(at[1]).toBeGreaterThan(top)
        expect(at[1]).toBeLessThan(bottom)
        expect(sheet.toHole(at)[0]).toBeCloseTo(x, 9)
        expect(sheet.toHole(at)[1]).toBeCloseTo(y, 9)
      }
      const [here, ahead, aside] = [
        sheet.toSheet([0, middle]),
        sheet.toSheet([0, middle + 1]),
        sheet.toSheet([1, middle]),
      ]
      expect(here[1] - ahead[1]).toBeCloseTo(aside[0] - here[0], 9)
    },
  )

  it.each([
    ['yards', 0.9144],
    ['metres', 1],
  ] as const)('has its figures where that many %s are', (units, metres) => {
    const sheet = layOutRange(120, SIZE)
    const shapes = drawRange(sheet, { units, club: '7-iron', basis: 'a guess', pattern: null })
    const figures = texts(shapes).filter(({ text }) => /^\d+$/.test(text))
    const up = figures.filter(({ anchor }) => anchor === 'end')
    expect(up.length).toBeGreaterThan(5)
    for (const { text, at } of up)
      expect(sheet.toHole([0, at[1] - 3.5])[1]).toBeCloseTo(Number(text) * metres, 6)
    const across = figures.filter(({ anchor }) => anchor === 'middle')
    for (const { text, at } of across)
      expect(Math.abs(sheet.toHole([at[0], 0])[0])).toBeCloseTo(Number(text) * metres, 6)
    const places = up.map(({ at }) => at[1]).sort((a, b) => a - b)
    for (const [index, place] of places.slice(1).entries()) expect(place - places[index]!).toBeGreaterThan(20)
  })
})

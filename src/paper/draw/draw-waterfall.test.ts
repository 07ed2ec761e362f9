import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drawWaterfall } from './draw-waterfall.ts'
import type { TextShape } from './drawing.ts'

const figure = (text: string): number => Number(text.replace('−', '-').replace('+', ''))

describe('from plan to score', () => {
  it('prints figures that add up to the score, whatever the steps are', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 110, noNaN: true }),
        fc.array(fc.double({ min: -4, max: 4, noNaN: true }), { minLength: 1, maxLength: 7 }),
        fc.integer({ min: 60, max: 120 }),
        (expected, some, score) => {
          // The last step takes up what is left, as luck does.
          const left = score - expected - some.reduce((sum, one) => sum + one, 0)
          const steps = [...some, left].map((strokes, index) => ({ name: `step ${index}`, strokes }))
          const figures = drawWaterfall({ expected, steps, score })
            .shapes.filter(
              (shape): shape is TextShape => shape.kind === 'text' && shape.face.startsWith('sans'),
            )
            .map(({ text }) => figure(text))
          const sum = figures.slice(0, -1).reduce((all, one) => all + one, 0)
          expect(sum).toBeCloseTo(score, 6)
          expect(figures.at(-1)).toBe(score)
        },
      ),
    )
  })
})

import { describe, expect, it } from 'vitest'
import { inventedHole } from '#golf/strategy/invented-hole.fixture.ts'
import { drawHole } from './draw-hole.ts'
import type { Shape } from './drawing.ts'
import type { HoleDrawingOptions } from './hole-drawing-options.ts'

function textsOf(shapes: readonly Shape[]): string[] {
  return shapes.flatMap((shape) =>
    shape.kind === 'group' ? textsOf(shape.shapes) : shape.kind === 'text' ? [shape.text] : [],
  )
}

describe('the compass of a hole', () => {
  const wind = { speedMetresPerSecond: 5, fromDegrees: 90, label: '5 m/s' }
  const textsWith = (isBearingInvented: boolean, options: HoleDrawingOptions) =>
    textsOf(drawHole({ ...inventedHole(300), isBearingInvented }, options).shapes)

  it('points north where north is known', () => {
    expect(textsWith(false, {})).toContain('N')
    expect(textsWith(false, { wind })).toContain('wind 5 m/s')
  })

  it('shows a wind alone where nobody has said which way the hole lies, and nothing without one', () => {
    expect(textsWith(true, {})).not.toContain('N')
    expect(textsWith(true, { wind })).not.toContain('N')
    expect(textsWith(true, { wind })).toContain('wind 5 m/s')
  })
})

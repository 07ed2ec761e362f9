import { describe, expect, it } from 'vitest'
import { playerOfLevel } from '#golf/player/level.ts'
import { mirrorPlayer } from '#golf/player/mirror-player.ts'
import type { Player } from '#golf/player/player.ts'
import type { ShotMarks } from '#golf/player/shot-marks.ts'
import { type BagPattern, bagPatterns } from '#golf/strategy/bag-patterns.ts'
import { type ClubPatternPicture, drawClubPattern } from './draw-club-pattern.ts'
import type { Drawing, PathShape, Shape, TextShape } from './drawing.ts'

const NO_MARKS: ShotMarks = { places: [], withoutSide: [], withoutCarry: 0 }
const golfer = playerOfLevel('15')

function patternOf(player: Player, name = '7-iron'): BagPattern {
  return bagPatterns(player).find(({ club }) => club.name === name) as BagPattern
}

function draw(more: Partial<ClubPatternPicture> = {}): Drawing {
  return drawClubPattern({
    playerName: 'Ansa',
    units: 'metres',
    now: patternOf(golfer),
    marks: NO_MARKS,
    basis: '40 shots',
    sentences: [],
    ...more,
  })
}

function allShapes(shapes: readonly Shape[]): Shape[] {
  return shapes.flatMap((shape) => (shape.kind === 'group' ? allShapes(shape.shapes) : [shape]))
}

/** The lines of the pattern on the chart, in the order drawn. */
function isolines({ shapes }: Drawing): PathShape[] {
  const group = shapes.find((shape) => shape.kind === 'group')
  return group?.kind === 'group'
    ? (group.shapes.filter((shape) => shape.kind === 'path' && shape.steps.length > 10) as PathShape[])
    : []
}

function ends({ steps }: PathShape): (readonly [number, number])[] {
  return steps.flatMap((step) =>
    step[0] === 'Z' ? [] : [[step.at(-2) as number, step.at(-1) as number] as const],
  )
}

/** Units of the sheet in a metre by the figures of a scale; figures at the left stand right-aligned. */
function scale(
  drawing: Drawing,
  anchor: 'end' | 'middle',
): { unitsPerMetre: number; placeOf: (metres: number) => number } {
  const axis = anchor === 'end' ? 1 : 0
  const figures = allShapes(drawing.shapes).filter(
    (shape): shape is TextShape =>
      shape.kind === 'text' && shape.anchor === anchor && /^\d+$/.test(shape.text),
  )
  const zero = figures.findIndex(({ text }) => text === '0')
  const [a, b] = anchor === 'end' ? [figures[0], figures.at(-1)] : [figures[zero], figures.at(-1)]
  if (a === undefined || b === undefined) throw new Error('no scale')
  const unitsPerMetre = (b.at[axis] - a.at[axis]) / (Number(b.text) - Number(a.text))
  return {
    unitsPerMetre: Math.abs(unitsPerMetre),
    placeOf: (metres) =>
      a.at[axis] + (metres - Number(a.text)) * unitsPerMetre - (axis === 1 ? 15 * 0.34 : 0),
  }
}

/** Share of a pattern's balls inside a closed line on the sheet, by the even-odd rule. */
function shareInside(drawing: Drawing, line: PathShape, { x, y, weight }: BagPattern): number {
  const [across, along] = [scale(drawing, 'middle'), scale(drawing, 'end')]
  const ring = ends(line)
  let inside = 0
  for (let ball = 0; ball < x.length; ball += 1) {
    const [px, py] = [across.placeOf(x[ball] as number), along.placeOf(y[ball] as number)]
    let isInside = false
    ring.forEach(([ax, ay], index) => {
      const [bx, by] = ring[(index + 1) % ring.length] as readonly [number, number]
      if (ay > py !== by > py && px < ax + ((bx - ax) * (py - ay)) / (by - ay)) isInside = !isInside
    })
    if (isInside) inside += weight[ball] as number
  }
  return inside
}

describe('the pattern of one club', () => {
  it('has one scale along and across', () => {
    const drawing = draw()
    expect(scale(drawing, 'end').unitsPerMetre).toBeCloseTo(scale(drawing, 'middle').unitsPerMetre, 6)
  })

  it('holds half and nine in ten of all balls inside its lines, mishits among them', () => {
    // Reason: an isoline of a share is the line of a highest-density region (Hyndman, The American Statistician 50
    // (1996) 120–126): it must hold that share of the weights themselves, a little more where the smoothing widens it.
    const drawing = draw()
    const [half, nine] = isolines(drawing) as [PathShape, PathShape]
    const pattern = patternOf(golfer)
    expect(Math.abs(shareInside(drawing, half, pattern) - 0.5)).toBeLessThan(0.06)
    expect(Math.abs(shareInside(drawing, nine, pattern) - 0.9)).toBeLessThan(0.04)
  })

  it('tells before and after apart without colour: broken lines and whole ones', () => {
    const worse = playerOfLevel('30')
    const before = { pattern: patternOf(worse), isGuess: true }
    const lines = isolines(draw({ before }))
    expect(lines.map(({ stroke }) => [stroke?.paint, stroke?.dash !== undefined])).toEqual([
      ['ink', true],
      ['ink', true],
      ['spot', false],
      ['spot', false],
    ])
    const words = allShapes(draw({ before }).shapes).flatMap((shape) =>
      shape.kind === 'text' ? [shape.text] : [],
    )
    expect(words).toContain('half as guessed before')
    expect(words).toContain('half of the balls now')
  })

  it('is the mirror image for a left-hander', () => {
    const leaning: Player = {
      ...golfer,
      clubs: golfer.clubs.map((club) => ({ ...club, leftShare: 1.3, rightShare: 0.7 })),
    }
    const [right, left] = [leaning, mirrorPlayer(leaning)].map((player) => draw({ now: patternOf(player) }))
    const widths = (drawing: Drawing): [number, number] => {
      const middle = scale(drawing, 'middle').placeOf(0)
      const xs = isolines(drawing)
        .flatMap(ends)
        .map(([x]) => x - middle)
      return [Math.min(...xs), Math.max(...xs)]
    }
    const [[rightLow, rightHigh], [leftLow, leftHigh]] = [widths(right as Drawing), widths(left as Drawing)]
    expect(-rightLow).toBeGreaterThan(1.2 * rightHigh)
    expect(leftHigh / -rightLow).toBeCloseTo(1, 1)
    expect(-leftLow / rightHigh).toBeCloseTo(1, 1)
  })

  it('draws a ball a dot or a cross, at its place, and counts those that lie off the sheet', () => {
    const marks: ShotMarks = {
      places: [
        { x: -12, y: 118, isMishit: false },
        { x: 4, y: 70, isMishit: true },
        { x: 5, y: 700, isMishit: false },
      ],
      withoutSide: [110],
      withoutCarry: 2,
    }
    const drawing = draw({ marks })
    const [dots] = allShapes(drawing.shapes).filter((shape) => shape.kind === 'dots')
    const [first] = dots?.kind === 'dots' ? dots.points : []
    expect(first?.[0]).toBeCloseTo(scale(drawing, 'middle').placeOf(-12), 6)
    expect(first?.[1]).toBeCloseTo(scale(drawing, 'end').placeOf(118), 6)
    expect(drawing.description).toContain('1 shot came down off this sheet.')
    expect(drawing.description).toContain('1 shot without a side')
    expect(drawing.description).toContain('2 shots without a carry')
  })

  it('keeps every word on the sheet', () => {
    const drawing = draw({
      sentences: ['The carry: a good deal of words that must be broken into lines, '.repeat(5)],
    })
    for (const shape of allShapes(drawing.shapes))
      if (shape.kind === 'text') {
        expect(shape.at[1]).toBeLessThan(drawing.height)
        if (shape.anchor === undefined)
          expect(shape.at[0] + shape.text.length * shape.size * 0.46, shape.text).toBeLessThan(drawing.width)
      }
  })
})

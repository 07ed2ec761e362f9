import { describe, expect, it } from 'vitest'
import { GRAVITY } from '#golf/ball/flight-settings.ts'
import { greenSlowing } from '#golf/ball/green-slowing.ts'
import { rollPast, type Slopes } from '#golf/ball/simulate-roll.ts'
import { greenPutting, greenRolls } from './green-putting.ts'
import { priorPutting } from './prior-near-green.ts'
import { puttingValues } from './putting-values.ts'
import { puttLine, readPutt } from './read-putt.ts'

const plane = (right: number, up: number): Slopes => ({ gradientAt: () => [right, up] })
const BUMPY: Slopes = {
  gradientAt: (x, y) => [0.03 * Math.sin(x / 3) + 0.01, 0.025 * Math.cos(y / 4 + x / 6) - 0.005],
}
const green = (slopes: Slopes, feet = 10): { hole: [number, number]; slopes: Slopes; slowing: number } => ({
  hole: [0, 0],
  slopes,
  slowing: greenSlowing(feet),
})

describe('puttLine', () => {
  it('starts a ball that goes over the middle of the hole, on any slope and from any side', () => {
    for (const slopes of [plane(0, 0), plane(0.02, -0.03), BUMPY])
      for (const from of [
        [0, -6],
        [4, 4],
        [-9, 1],
        [1, 0.3],
      ] as const) {
        const { slowing } = green(slopes)
        const line = puttLine(from, green(slopes), 0.4)
        if (line === null) expect.fail(`no line from ${from}`)
        const { pass } = rollPast({ x: from[0], y: from[1], ...line }, slopes, slowing, [0, 0])
        expect(Math.abs(pass?.offsetMetres ?? 1), `${from}`).toBeLessThan(1e-3)
        expect(pass?.speed).toBeCloseTo(Math.sqrt(2 * slowing * 0.4), 3)
      }
  })

  it('is the straight one on a level green and up and down a plane, where the playing length is exact', () => {
    for (const rise of [-0.03, 0, 0.03]) {
      const { slowing } = green(plane(0, rise))
      const line = puttLine([0, -5], green(plane(0, rise)), 0.3)
      const pull = ((5 / 7) * GRAVITY * rise) / Math.hypot(1, rise)
      expect(line?.breakMetres).toBeCloseTo(0, 6)
      // Work against grass and hill over 5 m, in metres of a level green.
      expect(line?.playingMetres).toBeCloseTo((5 * (slowing + pull)) / slowing, 6)
      expect(line?.pastMetres).toBeCloseTo((0.3 * slowing) / (slowing + pull), 6)
    }
  })

  // Order: common practice. A fall to the right (rise to the left) is aimed left, more the faster, longer and slower.
  it('breaks downhill, more on a faster green, on a steeper one, downhill, and the slower the ball', () => {
    const breaks = (right: number, up: number, feet: number, past: number): number =>
      puttLine([0, -5], green(plane(right, up), feet), past)?.breakMetres ?? Number.NaN
    expect(breaks(-0.02, 0, 10, 0.3)).toBeLessThan(0)
    expect(breaks(0.02, 0, 10, 0.3)).toBeCloseTo(-breaks(-0.02, 0, 10, 0.3), 6)
    expect(breaks(0.02, 0, 12, 0.3)).toBeGreaterThan(breaks(0.02, 0, 10, 0.3))
    expect(breaks(0.03, 0, 10, 0.3)).toBeGreaterThan(breaks(0.02, 0, 10, 0.3))
    expect(breaks(0.02, -0.02, 10, 0.3)).toBeGreaterThan(breaks(0.02, 0, 10, 0.3))
    expect(breaks(0.02, 0.02, 10, 0.3)).toBeLessThan(breaks(0.02, 0, 10, 0.3))
    expect(breaks(0.02, 0, 10, 0.1)).toBeGreaterThan(breaks(0.02, 0, 10, 0.5))
  })

  it('has no line where no ball comes to the hole so slowly', () => {
    expect(puttLine([0, 5], green(plane(0, 0.1)), 0.1)).toBeNull()
    expect(puttLine([0, 0], green(plane(0, 0)), 0.1)).toBeNull()
  })
})

describe('readPutt', () => {
  const player = { putting: priorPutting(12) }

  it('expects on a level green what the putting table says', () => {
    const rolls = greenRolls({ ...green(plane(0, 0)), reachMetres: 8 })
    const reading = readPutt([3, -4], player, rolls, greenPutting(player, rolls))
    const table = puttingValues(player)
    const [one, , three] = table.shares(5)
    expect(reading?.expectedPutts).toBeCloseTo(table.expected(5), 4)
    expect(reading?.onePutt).toBeCloseTo(one, 4)
    expect(reading?.threePutt).toBeCloseTo(three, 4)
    expect(reading?.breakMetres).toBeCloseTo(0, 6)
  })

  it('leaves further and three-putts more from above the hole than from below it', () => {
    const rolls = greenRolls({ ...green(plane(0, 0.025)), reachMetres: 8 })
    const putting = greenPutting(player, rolls)
    const [below, above] = [
      readPutt([0, -6], player, rolls, putting),
      readPutt([0, 6], player, rolls, putting),
    ]
    if (below === null || above === null) expect.fail('no reading')
    expect(above.leaveMetres).toBeGreaterThan(below.leaveMetres)
    expect(above.threePutt).toBeGreaterThan(below.threePutt)
    expect(above.playingMetres).toBeLessThan(6)
    expect(below.playingMetres).toBeGreaterThan(6)
  })
})

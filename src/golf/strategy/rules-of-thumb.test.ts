import { describe, expect, it } from 'vitest'
import type { Hole } from '#golf/course/hole.ts'
import { mirrorPlayer } from '#golf/player/mirror-player.ts'
import type { Player } from '#golf/player/player.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { area, box, CALM_DAY, inventedHole, mirrored } from './invented-hole.fixture.ts'
import { rulesOfThumb } from './rules-of-thumb.ts'
import { smallHole, threeClubs } from './small-hole.fixture.ts'
import type { Thumb } from './thumb.ts'

const thumbOf = (hole: Hole, player: Player): Thumb =>
  rulesOfThumb({
    courseName: 'invented',
    hole,
    player,
    day: CALM_DAY,
    lies: ['fairway'],
    cellMetres: 8,
    quadrature: { good: 24, mishit: 8 },
  })

/** Distances, verdicts and strokes of every rule, without the names of hazards, whose side a mirror changes. */
const figuresOf = ({ lies, leave }: Thumb): readonly number[] =>
  [
    ...lies.flatMap(({ places, rules }) => [
      ...places.flatMap(({ from_m, strokes, leave_m }) => [from_m, strokes, leave_m]),
      ...rules.flatMap(({ bands, turns }) => [
        ...bands.flatMap(({ from_m, to_m, saves }) => [from_m, to_m, saves.least, saves.most]),
        ...turns.map(({ at_m }) => at_m),
      ]),
    ]),
    ...leave.strokes.map(({ strokes }) => strokes),
  ].map((figure) => Math.round(figure * 1e7))

describe('rulesOfThumb', () => {
  it('says of the mirrored hole and player the same', () => {
    const hole = smallHole(170.7, 31.3)
    const player = threeClubs()
    const here = figuresOf(thumbOf(hole, player))
    expect(here.length).toBeGreaterThan(30)
    expect(figuresOf(thumbOf(mirrored(hole), mirrorPlayer(player)))).toEqual(here)
  })

  // With water against the short side of the pin and nothing else, aiming away from it cannot be wrong.
  it('finds the fat side right where the short side is water', () => {
    const pin: Point = [5, 130]
    const hole = inventedHole(130, [area('penalty-red', box(10.5, 60, 90, 170))])
    const tucked = { ...hole, pin, line: [[0, 0] as const, pin], green: hole.green }
    const { rules } = thumbOf(tucked, threeClubs()).lies[0] as Thumb['lies'][number]
    const fat = rules.find(({ rule }) => rule === 'fat-side')
    expect(fat?.bands.map(({ verdict }) => verdict)).toEqual(['right'])
  })

  it('refuses a hole without a green', () => {
    expect(() => thumbOf({ ...inventedHole(130), green: null }, threeClubs())).toThrow(
      expect.objectContaining({ code: 'MAR-PLAN-001' }),
    )
  })
})

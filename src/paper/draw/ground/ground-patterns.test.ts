import { describe, expect, it } from 'vitest'
import type { Area } from '#golf/course/course.ts'
import type { Ground } from '#golf/course/ground.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import type { Shape } from '../drawing.ts'
import { layOutSheet } from '../sheet.ts'
import { groundMap } from './ground-map.ts'
import { hatchOut } from './hatch-out.ts'
import { plantTrees, tuftScrub } from './plant-trees.ts'
import { stippleSand } from './stipple-sand.ts'
import { strokeGrass } from './stroke-grass.ts'
import { waveWater } from './wave-water.ts'

const box = (left: number, low: number, right: number, high: number): Polygon => [
  [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ],
]
const area = (ground: Ground, polygon: Polygon): Area => ({ id: ground, ground, polygon }) as unknown as Area

const areas = [
  area('out', box(-400, -400, -40, 600)),
  area('trees', box(30, 20, 60, 90)),
  area('scrub', box(30, 100, 60, 130)),
  area('fairway', box(-20, 50, 20, 170)),
  area('penalty-red', box(-15, 60, 15, 80)),
  area('bunker', box(-15, 100, 0, 120)),
]
const hole = {
  line: [
    [0, 0],
    [0, 200],
  ],
  pin: [0, 200],
  green: null,
} as unknown as Hole
const sheet = layOutSheet(hole)
const map = groundMap(areas, sheet)

/** Every place a pattern touches, in the hole frame. */
function places(shapes: readonly Shape[]): Point[] {
  return shapes.flatMap((shape): Point[] => {
    if (shape.kind === 'dots') return shape.points.map(sheet.toHole)
    if (shape.kind !== 'path') return []
    return shape.steps.flatMap((step) =>
      step[0] === 'Z' ? [] : [sheet.toHole([step.at(-2) as number, step.at(-1) as number])],
    )
  })
}

function share(of: readonly Point[], polygon: Polygon): number {
  return of.filter((place) => polygonContains(polygon, place)).length / of.length
}

describe('ground told by pattern', () => {
  it('keeps sand and water strictly inside their areas', () => {
    expect(places(stippleSand(map)).length).toBeGreaterThan(100)
    expect(share(places(stippleSand(map)), areas[5]!.polygon)).toBe(1)
    expect(places(waveWater(map)).length).toBeGreaterThan(100)
    expect(share(places(waveWater(map)), areas[4]!.polygon)).toBe(1)
  })

  it('roots every stroke of rough, every crown and every tuft in its own ground', () => {
    const rough = strokeGrass(map, sheet, hole.line)
    const roots = rough.flatMap((shape) =>
      shape.kind === 'path'
        ? shape.steps.flatMap((step) => (step[0] === 'M' ? [sheet.toHole([step[1], step[2]])] : []))
        : [],
    )
    expect(roots.length).toBeGreaterThan(100)
    for (const each of areas) expect(share(roots, each.polygon)).toBe(0)
    const metres = 8 / sheet.unitsPerMetre
    expect(
      share(places(plantTrees(map, sheet, [])), box(30 - metres, 20 - metres, 60 + metres, 90 + metres)),
    ).toBe(1)
    expect(share(places(tuftScrub(map)), box(30 - metres, 100 - metres, 60 + metres, 130 + metres))).toBe(1)
  })

  it('hatches out of bounds along its edge only', () => {
    const hatched = places(hatchOut(map))
    expect(hatched.length).toBeGreaterThan(50)
    expect(share(hatched, box(-40 - 14 / sheet.unitsPerMetre, -400, -40 + 0.5, 600))).toBe(1)
  })

  it('measures how far the edge of a ground is', () => {
    const [x, y] = sheet.toSheet([0, 70])
    expect(map.groundAt(x, y)).toBe('penalty-red')
    expect(map.edgeAt(x, y) / sheet.unitsPerMetre).toBeCloseTo(10, 0)
    expect(map.groundAt(-5, -5)).toBeNull()
  })
})

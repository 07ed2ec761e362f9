import clipping from 'polygon-clipping'
import { describe, expect, it } from 'vitest'
import { seededGenerator } from '../statistics/seeded-generator.ts'
import { intersectPolygons, subtractPolygons, unitePolygons } from './combine-polygons.ts'
import type { Polygon } from './point.ts'
import { polygonArea, polygonContains } from './polygon.ts'

const square = (x: number, y: number, side: number): Polygon => [
  [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ],
]
const totalArea = (polygons: readonly Polygon[]): number =>
  polygons.reduce((sum, p) => sum + polygonArea(p), 0)

// A lobed blob with a hole, somewhere in a field of 400 m.
function blob(random: () => number): Polygon {
  const middle = [400 * random(), 400 * random()]
  const ring = (least: number, most: number): Polygon[number] =>
    Array.from({ length: 24 }, (_, i) => {
      const radius = least + (most - least) * random()
      const angle = (2 * Math.PI * i) / 24
      return [middle[0]! + radius * Math.sin(angle), middle[1]! + radius * Math.cos(angle)] as const
    })
  return [ring(60, 140), ring(20, 50)]
}

// An independent library, polygon-clipping 0.15.7 (Martínez, Rueda and Feito's algorithm), gives the areas.
type Clip = [number, number][][]
const asClip = (polygon: Polygon): Clip => polygon.map((ring) => ring.map(([x, y]) => [x, y]))
function clipArea(result: Clip[]): number {
  return totalArea(result.map((polygon) => polygon.map((ring) => ring.slice(0, -1))))
}

describe('unite, intersect, subtract', () => {
  it('knows two squares', () => {
    const a = square(0, 0, 10)
    const b = square(5, 5, 10)
    expect(totalArea(unitePolygons([a, b]))).toBeCloseTo(175, 9)
    expect(totalArea(intersectPolygons([a], [b]))).toBeCloseTo(25, 9)
    expect(totalArea(subtractPolygons([a], [b]))).toBeCloseTo(75, 9)
    expect(intersectPolygons([a], [square(20, 20, 5)])).toEqual([])
    expect(unitePolygons([a, square(20, 20, 5)])).toHaveLength(2)
  })

  it('turns outlines anticlockwise and keeps holes and islands', () => {
    const [ring] = subtractPolygons([square(0, 0, 10)], [square(2, 2, 6)])
    expect(ring).toHaveLength(2)
    const turn = (points: Polygon[number]): number =>
      points.reduce((sum, [x, y], i) => {
        const [nextX, nextY] = points[(i + 1) % points.length]!
        return sum + x * nextY - nextX * y
      }, 0) / 2
    expect(turn(ring![0]!)).toBeCloseTo(100, 9)
    expect(turn(ring![1]!)).toBeCloseTo(-36, 9)
    expect(unitePolygons([ring!, square(4, 4, 2)])).toHaveLength(2)
  })

  it('adds overlapping members of one set instead of cancelling them', () => {
    const all = unitePolygons([square(0, 0, 10), square(0, 0, 10), square(5, 0, 10)])
    expect(totalArea(all)).toBeCloseTo(150, 9)
  })

  it('agrees in area with an independent library to a millionth', () => {
    const random = seededGenerator(21)
    for (let i = 0; i < 60; i++) {
      const [a, b, c] = [blob(random), blob(random), blob(random)]
      const pairs: [number, number][] = [
        [totalArea(unitePolygons([a, b, c])), clipArea(clipping.union(asClip(a), asClip(b), asClip(c)))],
        [
          totalArea(intersectPolygons([a, c], [b])),
          clipArea(clipping.intersection([asClip(a), asClip(c)], asClip(b))),
        ],
        [
          totalArea(subtractPolygons([a], [b, c])),
          clipArea(clipping.difference(asClip(a), asClip(b), asClip(c))),
        ],
      ]
      for (const [ours, theirs] of pairs)
        expect(Math.abs(ours - theirs)).toBeLessThan(1e-6 * Math.max(theirs, 100))
    }
  })

  it('agrees point by point with the definition', () => {
    const random = seededGenerator(22)
    for (let i = 0; i < 30; i++) {
      const [a, b] = [blob(random), blob(random)]
      const results = [unitePolygons([a, b]), intersectPolygons([a], [b]), subtractPolygons([a], [b])]
      for (let j = 0; j < 50; j++) {
        const point = [600 * random() - 100, 600 * random() - 100] as const
        const [inA, inB] = [polygonContains(a, point), polygonContains(b, point)]
        const inResults = results.map((polygons) =>
          polygons.some((polygon) => polygonContains(polygon, point)),
        )
        expect(inResults).toEqual([inA || inB, inA && inB, inA && !inB])
      }
    }
  })
})

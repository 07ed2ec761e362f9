import type { Point, Polygon } from '#numbers/geometry/point.ts'
import type { Step } from './drawing.ts'

/** A polyline as path steps; closed when asked. */
export function polylineSteps(points: readonly Point[], isClosed = false): Step[] {
  const steps: Step[] = points.map(([x, y], index) => [index === 0 ? 'M' : 'L', x, y])
  if (isClosed && points.length > 0) steps.push(['Z'])
  return steps
}

/** Every ring of a polygon as closed path steps: filled, its inner rings stay open when wound the other way or even-odd. */
export function polygonSteps(polygon: Polygon): Step[] {
  return polygon.flatMap((ring) => polylineSteps(ring, true))
}

/** A closed smooth curve through the points of a ring (centripetal would be rounder; uniform is enough for surveyed outlines). */
export function smoothRingSteps(ring: readonly Point[], tension: number = 1 / 6): Step[] {
  const count = ring.length
  const first = ring[0]
  if (first === undefined || count < 3) return polylineSteps(ring, true)
  const at = (index: number): Point => ring[(index + count) % count] ?? first
  const steps: Step[] = [['M', first[0], first[1]]]
  for (let index = 0; index < count; index += 1) {
    const [before, from, to, after] = [at(index - 1), at(index), at(index + 1), at(index + 2)]
    steps.push([
      'C',
      from[0] + (to[0] - before[0]) * tension,
      from[1] + (to[1] - before[1]) * tension,
      to[0] - (after[0] - from[0]) * tension,
      to[1] - (after[1] - from[1]) * tension,
      to[0],
      to[1],
    ])
  }
  steps.push(['Z'])
  return steps
}

/** Length of the handle of the cubic that stands for a quarter circle. */
const QUARTER_HANDLE = 0.5522847498

/** A circle as four cubics. */
export function circleSteps([x, y]: Point, radius: number): Step[] {
  const handle = radius * QUARTER_HANDLE
  return [
    ['M', x + radius, y],
    ['C', x + radius, y + handle, x + handle, y + radius, x, y + radius],
    ['C', x - handle, y + radius, x - radius, y + handle, x - radius, y],
    ['C', x - radius, y - handle, x - handle, y - radius, x, y - radius],
    ['C', x + handle, y - radius, x + radius, y - handle, x + radius, y],
    ['Z'],
  ]
}

/** An arc about a centre from one heading to another (radians clockwise from up the page), as short straight lines. */
export function arcSteps([x, y]: Point, radius: number, fromHeading: number, toHeading: number): Step[] {
  const pieces = Math.max(2, Math.ceil((Math.abs(toHeading - fromHeading) * radius) / 6))
  return Array.from({ length: pieces + 1 }, (_, index): Step => {
    const heading = fromHeading + ((toHeading - fromHeading) * index) / pieces
    return [index === 0 ? 'M' : 'L', x + radius * Math.sin(heading), y - radius * Math.cos(heading)]
  })
}

/** A rectangle as path steps. */
export function rectangleSteps(x: number, y: number, width: number, height: number): Step[] {
  return [['M', x, y], ['L', x + width, y], ['L', x + width, y + height], ['L', x, y + height], ['Z']]
}

/** One straight line as path steps. */
export function lineSteps(from: Point, to: Point): Step[] {
  return [
    ['M', from[0], from[1]],
    ['L', to[0], to[1]],
  ]
}

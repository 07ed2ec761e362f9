import type { Point, Ring } from '#numbers/geometry/point.ts'
import { distance } from '#numbers/geometry/point.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'

/** A generator of its own for every named shape, so that changing one leaves all others as they are. */
export function shapeGenerator(name: string): () => number {
  let seed = 7
  for (const letter of name) seed = (seed * 31 + (letter.codePointAt(0) ?? 0)) % 2147483647
  return seededGenerator(seed)
}

/** A closed smooth ring through the corners (uniform Catmull–Rom spline), sampled about every `step` metres. */
export function smoothRing(corners: readonly Point[], step: number): Ring {
  const count = corners.length
  return corners.flatMap((_, i) =>
    smoothSpan(at(corners, i - 1 + count), at(corners, i), at(corners, i + 1), at(corners, i + 2), step),
  )
}

/** An open smooth line through the points by the same spline, ends included, sampled about every `step` metres. */
function smoothLine(points: readonly Point[], step: number): readonly Point[] {
  const last = points.length - 1
  const spans = points
    .slice(0, last)
    .flatMap((point, i) =>
      smoothSpan(
        points[i - 1] ?? point,
        point,
        at(points, i + 1),
        points[Math.min(i + 2, last)] ?? point,
        step,
      ),
    )
  return [...spans, at(points, last)]
}

/** The line with each bend rounded over at most `reach` metres on either side, sampled about every `step` metres. */
export function roundedLine(points: readonly Point[], reach: number, step: number): readonly Point[] {
  const out: Point[] = [at(points, 0)]
  for (let i = 1; i < points.length - 1; i++) {
    const [before, bend, after] = [at(points, i - 1), at(points, i), at(points, i + 1)]
    const start = towards(bend, before, Math.min(reach, distance(bend, before) / 2))
    const end = towards(bend, after, Math.min(reach, distance(bend, after) / 2))
    const pieces = Math.max(2, Math.ceil(distance(start, end) / step))
    for (let k = 0; k <= pieces; k++) {
      const t = k / pieces
      out.push(mix(mix(start, bend, t), mix(bend, end, t), t))
    }
  }
  out.push(at(points, points.length - 1))
  return out
}

/**
 * A natural rounded outline: an oval of the given full axes in metres, long axis along `turn` (radians
 * clockwise from y), drawn in on one side by `waist` and made uneven by `unevenness` as shares of its radius.
 */
export function roundedOutline(shape: {
  readonly name: string
  readonly middle: Point
  readonly long: number
  readonly wide: number
  readonly turn: number
  readonly waist: number
  readonly unevenness: number
  readonly step: number
}): Ring {
  const random = shapeGenerator(shape.name)
  const waves = [2, 3, 4, 5].map((lobes) => ({
    lobes,
    height: ((random() - 0.35) * 2 * shape.unevenness) / lobes ** 0.8,
    phase: random() * 2 * Math.PI,
  }))
  const waistAt = random() < 0.5 ? 0.5 * Math.PI : 1.5 * Math.PI
  const around = (Math.PI * (shape.long + shape.wide)) / 2
  const count = Math.max(12, Math.round(around / shape.step))
  return Array.from({ length: count }, (_, k): Point => {
    const angle = (2 * Math.PI * k) / count
    const nearWaist = Math.max(0, Math.cos(angle - waistAt)) ** 4
    const radius =
      1 -
      shape.waist * nearWaist +
      waves.reduce((sum, wave) => sum + wave.height * Math.cos(wave.lobes * angle + wave.phase), 0)
    const along = (radius * shape.long * Math.cos(angle)) / 2
    const across = (radius * shape.wide * Math.sin(angle)) / 2
    return [
      shape.middle[0] + along * Math.sin(shape.turn) + across * Math.cos(shape.turn),
      shape.middle[1] + along * Math.cos(shape.turn) - across * Math.sin(shape.turn),
    ]
  })
}

/** The ring with its edge pushed in and out along its normals by about `metres`, smoothly: no two stretches alike. */
export function unevenRing(name: string, ring: Ring, metres: number): Ring {
  const random = shapeGenerator(name)
  const count = ring.length
  const around = ring.reduce((sum, point, i) => sum + distance(point, at(ring, i + 1)), 0)
  const waves = [90, 52, 31].map((length) => ({
    turns: Math.max(2, Math.round(around / length)),
    height: metres * (0.25 + 0.3 * random()),
    phase: random() * 2 * Math.PI,
  }))
  return ring.map((point, i) => {
    const before = at(ring, i - 1 + count)
    const after = at(ring, i + 1)
    const length = distance(before, after)
    const push = waves.reduce(
      (sum, wave) => sum + wave.height * Math.sin((2 * Math.PI * wave.turns * i) / count + wave.phase),
      0,
    )
    return [
      point[0] + (push * (after[1] - before[1])) / length,
      point[1] - (push * (after[0] - before[0])) / length,
    ]
  })
}

/** A band of the given full width in metres along a smooth line, its banks a little uneven. */
export function bandAlong(name: string, points: readonly Point[], width: number, step: number): Ring {
  const random = shapeGenerator(name)
  const line = smoothLine(points, step)
  const bank = (side: number): Point[] =>
    line.map((point, i) => {
      const before = line[Math.max(0, i - 1)] ?? point
      const after = line[Math.min(line.length - 1, i + 1)] ?? point
      const length = distance(before, after)
      const half = side * (width / 2) * (0.85 + 0.3 * random())
      return [
        point[0] + (half * (after[1] - before[1])) / length,
        point[1] - (half * (after[0] - before[0])) / length,
      ]
    })
  return [...bank(-1), ...bank(1).reverse()]
}

function smoothSpan(before: Point, from: Point, to: Point, after: Point, step: number): Point[] {
  const pieces = Math.max(1, Math.round(distance(from, to) / step))
  return Array.from({ length: pieces }, (_, k): Point => {
    const t = k / pieces
    const blend = (axis: 0 | 1): number =>
      from[axis] +
      0.5 *
        t *
        (to[axis] -
          before[axis] +
          t *
            (2 * before[axis] -
              5 * from[axis] +
              4 * to[axis] -
              after[axis] +
              t * (3 * (from[axis] - to[axis]) + after[axis] - before[axis])))
    return [blend(0), blend(1)]
  })
}

function at(points: readonly Point[], index: number): Point {
  const point = points[index % points.length]
  if (point === undefined) throw new Error('An outline has no points')
  return point
}

function towards(from: Point, to: Point, metres: number): Point {
  return mix(from, to, metres / distance(from, to))
}

function mix(a: Point, b: Point, t: number): Point {
  return [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])]
}

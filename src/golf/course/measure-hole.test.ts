import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import { pointAlong, projectOnPolyline } from '#numbers/geometry/polyline.ts'
import { tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import type { Area, Course } from './course.ts'
import { holeFromCourse } from './hole-from-course.ts'
import type { HazardMeasure, HoleMeasures } from './hole-measures.ts'
import { area, carryCourse, course, holeLine, mapCourse, rectangle } from './invented-course.fixture.ts'
import { measureHole } from './measure-hole.ts'

const STRAIGHT: Point[] = [
  [0, 0],
  [0, 300],
]
const DOGLEG: Point[] = [
  [0, 0],
  [0, 200],
  [150, 200],
]

function onLine(line: readonly Point[], areas: readonly Area[]): Course {
  return course({ holes: [holeLine('1', line)], areas })
}

function measure(line: readonly Point[], ...areas: Area[]): HoleMeasures {
  return measureHole(holeFromCourse(onLine(line, areas), '1'))
}

function hazard(line: readonly Point[], piece: Area): HazardMeasure {
  const [only] = measure(line, piece).hazards
  if (!only) throw new Error('no hazard measured')
  return only
}

describe('measureHole: hazards', () => {
  it('gives reach, far end and offset of a bunker beside the line', () => {
    const bunker = hazard(STRAIGHT, area('b', 'bunker', rectangle(-40, 160, -30, 170), { name: 'Elbow' }))
    expect(bunker).toMatchObject({ id: 'b', name: 'Elbow', ground: 'bunker', side: 'left', crossings: [] })
    expect(bunker.reachMetres).toBeCloseTo(160, 9)
    expect(bunker.farMetres).toBeCloseTo(170, 9)
    expect(bunker.carryMetres).toBeCloseTo(170, 9)
    expect(bunker.offsetMetres).toBeCloseTo(-30, 9)
    expect(bunker.right).toBeNull()
    expect(bunker.straight.reachMetres).toBeCloseTo(Math.hypot(30, 160), 9)
    expect(bunker.straight.carryMetres).toBeCloseTo(Math.hypot(40, 170), 9)
  })

  it('gives where the line enters and leaves water that lies across it', () => {
    // A ditch 15 m wide on the line that runs on 0.5 m for each metre to the right: edges y = 200 + x/2 and 215 + x/2.
    const ditch: Point[] = [
      [-80, 160],
      [80, 240],
      [80, 255],
      [-80, 175],
    ]
    const water = hazard(STRAIGHT, area('w', 'penalty-red', [ditch]))
    expect(water.side).toBe('across')
    expect(water.offsetMetres).toBe(0)
    expect(water.crossings).toHaveLength(1)
    expect(water.crossings[0]?.fromMetres).toBeCloseTo(200, 9)
    expect(water.crossings[0]?.toMetres).toBeCloseTo(215, 9)
    expect(water.carryMetres).toBeCloseTo(215, 9)
    expect(water.straight.carryMetres).toBeCloseTo(215, 9)
    expect(water.reachMetres).toBeCloseTo(160, 9)
    expect(water.farMetres).toBeCloseTo(255, 9)
    expect(water.left).toBeNull()
  })

  it('measures along the line round a bend and straight beside it', () => {
    const beyond = hazard(DOGLEG, area('b', 'bunker', rectangle(50, 210, 60, 220)))
    expect(beyond.side).toBe('left')
    expect(beyond.reachMetres).toBeCloseTo(250, 9)
    expect(beyond.farMetres).toBeCloseTo(260, 9)
    expect(beyond.offsetMetres).toBeCloseTo(-10, 9)
    expect(beyond.straight.reachMetres).toBeCloseTo(Math.hypot(50, 210), 9)
    expect(beyond.straight.carryMetres).toBeCloseTo(Math.hypot(60, 220), 9)
    const inside = hazard(DOGLEG, area('t', 'trees', rectangle(20, 100, 40, 120)))
    expect(inside).toMatchObject({ side: 'right' })
    expect(inside.reachMetres).toBeCloseTo(100, 9)
    expect(inside.offsetMetres).toBeCloseTo(20, 9)
  })

  it('tells both sides of a boundary that runs round the hole, and never says that it is carried', () => {
    const ring: Area = area('o', 'out', [
      [
        [-70, -200],
        [70, -200],
        [70, 600],
        [-70, 600],
      ],
      [
        [-35, -60],
        [25, -60],
        [25, 400],
        [-35, 400],
      ],
    ])
    const out = hazard(STRAIGHT, ring)
    expect(out.side).toBe('right')
    expect(out.offsetMetres).toBeCloseTo(25, 9)
    expect(out.left?.offsetMetres).toBeCloseTo(-35, 9)
    expect(out.reachMetres).toBeCloseTo(0, 9)
    // Closed 30 m behind the pin, it is still beside the hole, and the line is seen to run into it.
    const outline = ring.polygon[0] ?? []
    const course30: Point[] = [
      [-35, -60],
      [25, -60],
      [25, 330],
      [-35, 330],
    ]
    const behind = hazard(STRAIGHT, { ...ring, polygon: [outline, course30] })
    expect(behind.side).toBe('right')
    expect(behind.offsetMetres).toBeCloseTo(25, 9)
    expect(behind.crossings[0]?.fromMetres).toBeCloseTo(330, 9)
    const short: Point[] = course30.map(([x, y]) => [x, Math.min(y, 295)])
    const before = hazard(STRAIGHT, { ...ring, polygon: [outline, short] })
    expect(before.side).toBe('across')
    expect(before.carryMetres).toBeNull()
  })

  it('measures a bunker behind the green and leaves out one behind the tee', () => {
    const behind = hazard(STRAIGHT, area('b', 'bunker', rectangle(-5, 320, 5, 326)))
    expect(behind.reachMetres).toBeCloseTo(320, 9)
    expect(behind.carryMetres).toBeCloseTo(326, 9)
    expect(measure(STRAIGHT, area('b', 'bunker', rectangle(-5, -30, 5, -20))).hazards).toEqual([])
    expect(measure(STRAIGHT, area('r', 'rough', rectangle(10, 100, 20, 120))).hazards).toEqual([])
  })

  it('leaves out what belongs to another hole', () => {
    const theirs = area('theirs', 'bunker', rectangle(10, 120, 20, 130), { holes: ['2'] })
    const ours = area('ours', 'bunker', rectangle(10, 150, 20, 160), { holes: ['1', '2'] })
    expect(measure(STRAIGHT, theirs, ours).hazards.map((piece) => piece.id)).toEqual(['ours'])
  })

  it('puts the nearest first', () => {
    const found = measure(
      STRAIGHT,
      area('later', 'bunker', rectangle(10, 220, 20, 230)),
      area('sooner', 'trees', rectangle(10, 120, 20, 130)),
    )
    expect(found.hazards.map((piece) => piece.id)).toEqual(['sooner', 'later'])
  })
})

describe('measureHole: fairway, green and line', () => {
  it('gives the fairway every 20 m, its bands cut by sand, and the pinch', () => {
    // 40 m wide at 100 m, narrowing by 1 m in 10 m to 22 m at 280 m.
    const narrowing: Point[] = [
      [-20, 100],
      [20, 100],
      [11, 280],
      [-11, 280],
    ]
    const found = measure(
      STRAIGHT,
      area('f', 'fairway', [narrowing]),
      area('b', 'bunker', rectangle(4, 195, 10, 205)),
      area('green', 'green', rectangle(-10, 290, 10, 310)),
    )
    expect(found.fairway.map((width) => width.atMetres)).toEqual([
      100, 120, 140, 160, 180, 200, 220, 240, 260,
    ])
    expect(found.fairway[1]?.widthMetres).toBeCloseTo(38, 9)
    expect(found.fairway[1]?.leftMetres).toBeCloseTo(-19, 9)
    // At 200 m the half width is 15 and the bunker starts 4 m right: the band that holds the line is −15 to 4.
    expect(found.fairway[5]?.leftMetres).toBeCloseTo(-15, 9)
    expect(found.fairway[5]?.rightMetres).toBeCloseTo(4, 9)
    // A bunker on the line leaves two bands as near as each other: the wider one counts.
    const split = measure(
      STRAIGHT,
      area('f', 'fairway', rectangle(-15, 100, 25, 250)),
      area('b', 'bunker', rectangle(-5, 155, 5, 165)),
    )
    expect(split.fairway.find((width) => width.atMetres === 160)).toMatchObject({
      leftMetres: 5,
      rightMetres: 25,
    })
    // The bunker pinches it at its far end: at 204 m the left half is 14.8, so 18.8 in all.
    expect(found.pinch?.atMetres).toBe(204)
    expect(found.pinch?.widthMetres).toBeCloseTo(18.8, 9)
  })

  it('does not take the rounded end of a fairway for a pinch', () => {
    const rounded: Point[] = [
      [-15, 120],
      [15, 120],
      [15, 250],
      [0, 262],
      [-15, 250],
    ]
    const found = measure(STRAIGHT, area('f', 'fairway', [rounded]))
    expect(found.pinch?.widthMetres).toBeCloseTo(30, 9)
    expect(measure(STRAIGHT).pinch).toBeNull()
    // Nor the neck before the green, which starts at 260 m here: the fairway is 30 m wide up to 240 m.
    const neck: Point[] = [
      [-15, 120],
      [15, 120],
      [15, 240],
      [4, 262],
      [-4, 262],
      [-15, 240],
    ]
    const green = area('g', 'green', rectangle(-10, 260, 10, 340))
    expect(measure(STRAIGHT, area('f', 'fairway', [neck]), green).pinch?.widthMetres).toBeCloseTo(30, 9)
    expect(measure(STRAIGHT, area('f', 'fairway', rectangle(50, 100, 80, 250))).fairway).toEqual([])
  })

  it('gives front, middle and back of the green along the line, and straight', () => {
    // Played from the bend due east through the centre of the green, which lies 150 m on.
    const found = measure(DOGLEG, area('g', 'green', rectangle(136, 188, 164, 212)))
    expect(found.green?.frontMetres).toBeCloseTo(336, 9)
    expect(found.green?.middleMetres).toBeCloseTo(350, 9)
    expect(found.green?.backMetres).toBeCloseTo(364, 9)
    expect(found.green?.depthMetres).toBeCloseTo(28, 9)
    expect(found.green?.widthMetres).toBeCloseTo(24, 9)
    expect(found.green?.straight.frontMetres).toBeCloseTo(Math.hypot(136, 200), 9)
    expect(found.legs).toEqual([
      { lengthMetres: 200, endsAtMetres: 200, bendDegrees: expect.closeTo(90, 9) },
      { lengthMetres: 150, endsAtMetres: 350, bendDegrees: null },
    ])
  })
})

describe('measureHole: against counting points', () => {
  // Independent of the clipping in the code: points strewn over a star-shaped pond, each asked where it lies.
  const pond = fc.record({
    // Wholly inside the corridor and beside the hole, so that nothing is cut off.
    x: fc.double({ min: -30, max: 50, noNaN: true }),
    y: fc.double({ min: 30, max: 230, noNaN: true }),
    radii: fc.array(fc.double({ min: 5, max: 28, noNaN: true }), { minLength: 5, maxLength: 9 }),
  })
  const line: Point[] = [
    [0, 0],
    [0, 180],
    [60, 290],
  ]

  it('no point of a hazard is nearer, further or closer to the line than it is said to be', () => {
    fc.assert(
      fc.property(pond, ({ x, y, radii }) => {
        const ring = radii.map((radius, corner): Point => {
          const turn = (2 * Math.PI * corner) / radii.length
          return [x + radius * Math.sin(turn), y + radius * Math.cos(turn)]
        })
        const found = hazard(line, area('p', 'penalty-red', [ring]))
        const points = Array.from(
          { length: 900 },
          (_, index): Point => [
            x - 28 + ((index % 30) * 56) / 29,
            y - 28 + (Math.floor(index / 30) * 56) / 29,
          ],
        ).filter((point) => polygonContains([ring], point))
        // At the inside of a bend a place between two measured ones can be up to half a metre nearer along the line.
        const wrong = points.filter((point) => {
          const seen = projectOnPolyline(line, point)
          return (
            seen.along < found.reachMetres - 0.5 ||
            seen.along > found.farMetres + 0.5 ||
            (found.side === 'left' && seen.offset > found.offsetMetres + 0.05) ||
            (found.side === 'right' && seen.offset < found.offsetMetres - 0.05) ||
            Math.hypot(...point) < found.straight.reachMetres - 0.05
          )
        })
        expect(wrong).toEqual([])
        // On the very edge neither answer is wrong.
        const edges = found.crossings.flatMap(({ fromMetres, toMetres }) => [fromMetres, toMetres])
        const alongs = Array.from({ length: 400 }, (_, index) => 0.7 * index).filter((along) =>
          edges.every((edge) => Math.abs(edge - along) > 1e-6),
        )
        const contradicted = alongs.filter(
          (along) =>
            polygonContains([ring], pointAlong(line, along)) !==
            found.crossings.some(({ fromMetres, toMetres }) => fromMetres <= along && along <= toMetres),
        )
        expect(contradicted).toEqual([])
      }),
      { numRuns: 100 },
    )
  })

  it('a mirrored hole has mirrored measures', () => {
    fc.assert(
      fc.property(pond, ({ x, y, radii }) => {
        const ring = radii.map((radius, corner): Point => {
          const turn = (2 * Math.PI * corner) / radii.length
          return [x + radius * Math.sin(turn), y + radius * Math.cos(turn)]
        })
        const full = onLine(line, [
          area('p', 'bunker', [ring]),
          area('f', 'fairway', rectangle(-20, 90.5, 33, 240)),
        ])
        const here = measureHole(holeFromCourse(full, '1'))
        const there = measureHole(
          holeFromCourse(
            mapCourse(full, ([px, py]) => [-px, py]),
            '1',
          ),
        )
        const [a, b] = [here.hazards[0], there.hazards[0]]
        expect(b?.reachMetres).toBeCloseTo(a?.reachMetres ?? 0, 6)
        expect(b?.offsetMetres).toBeCloseTo(-(a?.offsetMetres ?? 0), 6)
        expect(b?.side).toBe({ left: 'right', right: 'left', across: 'across' }[a?.side ?? 'across'])
        expect(b?.right?.offsetMetres ?? 0).toBeCloseTo(-(a?.left?.offsetMetres ?? 0), 6)
        expect(there.fairway.map((width) => width.widthMetres)).toEqual(
          here.fairway.map((width) => expect.closeTo(width.widthMetres, 6)),
        )
        expect(there.pinch?.widthMetres ?? 0).toBeCloseTo(here.pinch?.widthMetres ?? 0, 6)
      }),
      { numRuns: 60 },
    )
  })
})

describe('measureHole: the same ground gives the same numbers', () => {
  // No edge and no bend lies exactly where a width is taken: there a hair's breadth rightly changes the answer.
  const bent: Point[] = [
    [0, 0],
    [0, 204.5],
    [150, 204.5],
  ]
  const full = onLine(bent, [
    area('f', 'fairway', rectangle(-18, 90.5, 22, 219.5)),
    area('b', 'bunker', rectangle(48.3, 212.7, 61, 223)),
    area('w', 'penalty-yellow', rectangle(-70, 141.3, 75, 155.7)),
    area('o', 'out', rectangle(-200, -50, -40, 400)),
    area('g', 'green', rectangle(136, 188, 164, 212)),
  ])
  const reference = measureHole(holeFromCourse(full, '1'))

  function expectClose(actual: unknown, expected: unknown, within: number, path = ''): void {
    if (typeof expected === 'number') {
      if (path.endsWith('bearingDegrees')) return
      expect(Math.abs((actual as number) - expected), path).toBeLessThan(within)
    } else if (expected !== null && typeof expected === 'object') {
      expect(Object.keys(actual as object), path).toEqual(Object.keys(expected))
      for (const [key, value] of Object.entries(expected))
        expectClose((actual as Record<string, unknown>)[key], value, within, `${path}.${key}`)
    } else expect(actual, path).toBe(expected)
  }

  it('however the course is turned and moved on its plane', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -3.1, max: 3.1, noNaN: true }),
        fc.double({ min: -1500, max: 1500, noNaN: true }),
        fc.double({ min: -1500, max: 1500, noNaN: true }),
        (turn, east, north) => {
          const found = measureHole(holeFromCourse(carryCourse(full, turn, east, north), '1'))
          expectClose(found, reference, 1e-6)
        },
      ),
      { numRuns: 40 },
    )
  })

  it('wherever on the earth it lies, to a centimetre', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -179.9, max: 179.9, noNaN: true }),
        fc.double({ min: -70, max: 70, noNaN: true }),
        fc.double({ min: -1200, max: 1200, noNaN: true }),
        (longitude, latitude, away) => {
          // Laid out around one place, surveyed in lon/lat, and read back on a plane touching 1.2 km or less off.
          const here = tangentPlane([longitude, latitude])
          const there = tangentPlane(here.toLonLat([away, -away / 2]))
          const found = measureHole(
            holeFromCourse(
              mapCourse(full, (point) => there.toPlane(here.toLonLat(point))),
              '1',
            ),
          )
          expectClose(found, reference, 0.01)
        },
      ),
      { numRuns: 40 },
    )
  })
})

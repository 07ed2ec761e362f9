import type { Ground } from '#golf/course/ground.ts'
import type { Hole } from '#golf/course/hole.ts'
import { area } from '#golf/course/invented-course.fixture.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import type { ShortProfile } from '#golf/strategy/short-profile.ts'
import { lowDiscrepancyPoints } from '#numbers/statistics/low-discrepancy.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import type { Field } from '#paper/draw/contour-lines.ts'
import type { Pattern } from '#paper/draw/pattern.ts'

const UNKNOWN_CROWN = {
  heightMetres: null,
  crownBaseMetres: null,
  crownRadiusMetres: null,
  densityPerMetre: null,
} as const

/** Small holes of our own for the pictures: every ground at least once, nothing that stands anywhere. */

/** An oval of 20 corners, slightly uneven. */
function oval([x, y]: Point, halfWidth: number, halfLength: number): Polygon {
  return [
    Array.from({ length: 20 }, (_, index): Point => {
      const angle = (index / 20) * 2 * Math.PI
      const uneven = 1 + 0.07 * Math.sin(3 * angle + x)
      return [x + Math.cos(angle) * halfWidth * uneven, y + Math.sin(angle) * halfLength * uneven]
    }),
  ]
}

function box(left: number, low: number, right: number, high: number): Polygon {
  return [
    [
      [left, low],
      [right, low],
      [right, high],
      [left, high],
    ],
  ]
}

/** A par 4 that bends right round a wood, with every class of ground. */
export function everyGround(): Hole {
  const green = oval([62, 300], 13, 16)
  return {
    ref: '4',
    name: 'The Elbow',
    par: 4,
    isParGuess: false,
    strokeIndex: 7,
    teeName: 'back',
    line: [
      [0, 0],
      [0, 190],
      [62, 300],
    ],
    lengthMetres: 190 + Math.hypot(62, 110),
    bearingDegrees: 40,
    isBearingInvented: false,
    pin: [66, 303],
    green,
    greenFallPercent: 2.4,
    greenFallTowardDegrees: 200,
    greenHeights: null,
    greenGridCellMetres: null,
    riseMetres: 3,
    areas: [
      area('out', 'out', box(-160, -60, -72, 420)),
      area('wood', 'trees', oval([58, 165], 32, 60)),
      area('scrub', 'scrub', oval([-52, 130], 12, 40)),
      area('heavy', 'heavy', oval([-45, 245], 20, 40)),
      area('cut', 'first-cut', oval([6, 170], 30, 88)),
      area('path', 'path', box(-36, -20, -33, 120)),
      area('fairway', 'fairway', oval([4, 168], 22, 80)),
      area('neck', 'fairway', oval([34, 250], 20, 36)),
      area('ditch', 'penalty-yellow', box(-90, 112, 100, 118)),
      area('lake', 'penalty-red', oval([112, 285], 30, 45)),
      area('sand', 'bunker', oval([-20, 218], 6, 9)),
      area('sand by the green', 'bunker', oval([43, 309], 5, 8)),
      area('apron', 'fringe', oval([62, 300], 17, 20)),
      area('green', 'green', green),
      area('tee', 'tee', box(-5, -6, 5, 6)),
    ],
    trees: [
      { id: 'lone', position: [-30, 170], ...UNKNOWN_CROWN, heightMetres: 18 },
      { id: 'small', position: [20, 60], ...UNKNOWN_CROWN },
    ],
    localRules: [],
  }
}

/** A short hole over water, surveyed without a fall. */
export function overWater(): Hole {
  const green = oval([0, 138], 14, 11)
  return {
    ref: '12',
    name: null,
    par: 3,
    isParGuess: false,
    strokeIndex: null,
    teeName: '',
    line: [
      [0, 0],
      [0, 138],
    ],
    lengthMetres: 138,
    bearingDegrees: 255,
    isBearingInvented: false,
    pin: [-5, 134],
    green,
    greenFallPercent: 0,
    greenFallTowardDegrees: 0,
    greenHeights: null,
    greenGridCellMetres: null,
    riseMetres: 0,
    areas: [
      area('pond', 'penalty-red', oval([14, 88], 70, 34)),
      area('left sand', 'bunker', oval([-22, 137], 5, 9)),
      area('green', 'green', green),
    ],
    trees: [],
    localRules: [],
  }
}

/** The same hole with its green surveyed by spot heights: a front tier, a step of 35 cm, a back right run-off. */
export function tieredGreen(): Hole {
  const height = (x: number, y: number): number =>
    0.018 * (y - 138) + 0.17 * Math.tanh((y - 137 + 0.25 * x) / 1.6) - 0.002 * Math.max(0, x - 6) ** 2
  const spots = [-14, -9.5, -5, -1, 3, 7, 10.5, 14].flatMap((x) =>
    [127.5, 131, 134.5, 137, 139.5, 143, 148].map((y) => ({
      id: `spot ${x} ${y}`,
      position: [x, y] as const,
      elevationMetres: height(x, y),
    })),
  )
  return {
    ...overWater(),
    greenFallPercent: 3.2,
    greenFallTowardDegrees: 185,
    greenHeights: { kind: 'spot-heights', spots },
  }
}

/** A pattern of 600 equal finishes: five good strikes in six about the aim, one in six mishit and short. */
export function inventedPattern(club: string, totalMetres: number, headingDegrees: number): Pattern {
  const count = 600
  const points = lowDiscrepancyPoints(count)
  const x = new Float64Array(count)
  const y = new Float64Array(count)
  for (let index = 0; index < count; index += 1) {
    const isMishit = index % 6 === 5
    const z = normalQuantile(points[2 * index] ?? 0.5)
    const total = totalMetres * (isMishit ? 0.62 + 0.13 * z : 1 + 0.06 * z)
    const direction =
      headingDegrees + (isMishit ? 8 : 5) * normalQuantile(points[2 * index + 1] ?? 0.5)
    x[index] = total * Math.sin((direction * Math.PI) / 180)
    y[index] = total * Math.cos((direction * Math.PI) / 180)
  }
  return { club, x, y, weight: new Float64Array(count).fill(1 / count) }
}

/** Expected strokes that grow evenly with the distance to the pin and steeply short of the water: a smooth field of our own. */
export function inventedValues(pin: Point): Field {
  const [columns, rows, resolution, originX, originY] = [41, 61, 4, -80, -20]
  const values = Float64Array.from({ length: columns * rows }, (_, index) => {
    const [x, y] = [originX + (index % columns) * resolution, originY + Math.floor(index / columns) * resolution]
    return 1.5 + Math.hypot(x - pin[0], y - pin[1]) / 90 + 0.6 / (1 + Math.exp((y - 50) / 6))
  })
  return { originX, originY, resolution, columns, rows, values }
}

/** Ground cut along a short shot: the ball's own, a strip of rough, fringe, a green that rises 3 % to a tier, and water behind. */
export function inventedProfile(pinMetres: number, length: number, own: Ground = 'rough'): ShortProfile {
  const height = (along: number): number => 0.03 * Math.max(0, along - 3.5) + 0.35 / (1 + Math.exp(-2 * (along - 10)))
  const groundAt = (along: number): Ground =>
    along < 2.2
      ? own
      : along < 2.8
        ? 'rough'
        : along < 3.6
          ? 'fringe'
          : along > length - 1.5
            ? 'penalty-red'
            : 'green'
  return {
    pinMetres,
    points: Array.from({ length: 4 * length + 1 }, (_, step) => ({
      along: step / 4,
      height: height(step / 4) - height(pinMetres),
      ground: groundAt(step / 4),
    })),
  }
}

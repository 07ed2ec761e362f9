import type { Area } from '../../src/golf/course/course.ts'
import type { Ground } from '../../src/golf/course/ground.ts'
import type { Hole } from '../../src/golf/course/hole.ts'
import type { Point, Polygon } from '../../src/numbers/geometry/point.ts'

/** Half the width of the fairway, metres: 30 m is a usual fairway (common practice, 25 to 35 yd). */
const HALF_FAIRWAY = 15
/** Width of the first cut, metres. Common practice: one or two passes of a mower. */
const FIRST_CUT = 3
/** From the line to the trees, metres: a corridor of 50 m between the trees of both sides (common practice, 50 to 60). */
const TREES_FROM_LINE = 28
/** From the line to the boundary on both sides, metres: another hole or the end of the course lies there (our assumption). */
const BOUNDARY_FROM_LINE = 50
/** Grass begins this far in front of the markers, metres, and trees stand from there on (our assumption). */
const CARRY_TO_GRASS = 20
/** One hole stands for every length, so it has bunkers beside all of it: every so many metres, right and left by turns. */
const FAIRWAY_BUNKERS = {
  first: 120,
  apart: 50,
  fromLine: 14,
  width: 8,
  length: 16,
  lastBeforePin: 70,
} as const
/** A red penalty area on the right: metres from the markers, and from the line (our assumption). */
const PENALTY_AREA = { from: 170, to: 250, fromLine: 21 } as const

/**
 * A straight, level par 4 or 5 that has what the published rounds met on a usual hole: fairway, first cut and rough
 * between trees, bunkers by the fairway and at the green, and a red penalty area on the right. The pin is in the
 * middle of a round green. Metres and square metres.
 */
export function yardstickHole(lengthMetres: number, greenSquareMetres: number): Hole {
  const pin: Point = [0, lengthMetres]
  const radius = Math.sqrt(greenSquareMetres / Math.PI)
  const green = disc(pin, radius)
  const end = lengthMetres - radius
  const wide = HALF_FAIRWAY + FIRST_CUT
  const beyond = lengthMetres + 200
  const areas: Area[] = [
    area('trees', box(-BOUNDARY_FROM_LINE, -TREES_FROM_LINE, CARRY_TO_GRASS, beyond)),
    area('trees', box(TREES_FROM_LINE, BOUNDARY_FROM_LINE, CARRY_TO_GRASS, beyond)),
    area('first-cut', box(-wide, wide, CARRY_TO_GRASS, end)),
    area('fairway', box(-HALF_FAIRWAY, HALF_FAIRWAY, CARRY_TO_GRASS, end)),
    area('penalty-red', box(PENALTY_AREA.fromLine, BOUNDARY_FROM_LINE, PENALTY_AREA.from, PENALTY_AREA.to)),
    ...fairwayBunkers(lengthMetres),
    area('bunker', box(-24, 1.3 - radius, lengthMetres - 16, lengthMetres + 2)),
    area('bunker', box(radius - 1.3, 24, lengthMetres - 12, lengthMetres + 8)),
    area('green', green),
    area('out', box(-300, -BOUNDARY_FROM_LINE, -100, beyond)),
    area('out', box(BOUNDARY_FROM_LINE, 300, -100, beyond)),
  ]
  return {
    ref: '1',
    name: null,
    par: 4,
    isParGuess: false,
    strokeIndex: null,
    teeName: 'yardstick',
    line: [[0, 0], pin],
    lengthMetres,
    bearingDegrees: 0,
    isBearingInvented: false,
    pin,
    green,
    greenFallPercent: 0,
    greenFallTowardDegrees: 0,
    greenHeights: null,
    greenGridCellMetres: null,
    riseMetres: 0,
    areas: areas.map((one, index) => ({ ...one, id: `${one.ground} ${index}` })),
    trees: [],
    localRules: [],
  }
}

function fairwayBunkers(lengthMetres: number): Area[] {
  const { first, apart, fromLine, width, length, lastBeforePin } = FAIRWAY_BUNKERS
  const bunkers: Area[] = []
  for (let middle = first; middle < lengthMetres - lastBeforePin; middle += apart) {
    const isLeft = bunkers.length % 2 === 1
    const [left, right] = isLeft ? [-fromLine - width, -fromLine] : [fromLine, fromLine + width]
    bunkers.push(area('bunker', box(left, right, middle - length / 2, middle + length / 2)))
  }
  return bunkers
}

function area(ground: Ground, polygon: Polygon): Area {
  return {
    id: ground,
    ground,
    polygon,
    holes: null,
    name: null,
    unplayableShare: null,
    lostShare: null,
    heightMetres: null,
    crownBaseMetres: null,
    densityPerMetre: null,
    fallPercent: null,
    fallTowardDegrees: null,
    heightGrid: null,
    gridCellMetres: null,
    elevationMetres: null,
  }
}

function box(left: number, right: number, from: number, to: number): Polygon {
  return [
    [
      [left, from],
      [right, from],
      [right, to],
      [left, to],
    ],
  ]
}

function disc([x, y]: Point, radius: number): Polygon {
  const corners = 40
  return [
    Array.from({ length: corners }, (_, k): Point => {
      const angle = (2 * Math.PI * (k + 0.5)) / corners
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)]
    }),
  ]
}

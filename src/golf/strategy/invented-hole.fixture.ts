import type { Area, Tree } from '#golf/course/course.ts'
import { REFERENCE_DAY } from '#golf/course/day.ts'
import { moveGreenHeights } from '#golf/course/green-heights.ts'
import type { Ground } from '#golf/course/ground.ts'
import type { Hole } from '#golf/course/hole.ts'
import { area as plainArea } from '#golf/course/invented-course.fixture.ts'
import { completePlayer } from '#golf/player/complete-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import type { Player } from '#golf/player/player.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'

/** A straight hole of our own along the y axis with a round green; everything else is what a test adds. */
export function inventedHole(lengthMetres: number, areas: readonly Area[] = []): Hole {
  const pin: Point = [0, lengthMetres]
  const green = disc(pin, 11.3)
  return {
    ref: '1',
    name: null,
    par: 4,
    isParGuess: false,
    strokeIndex: null,
    teeName: 'test',
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
    areas: [...areas, area('green', green, 'green')],
    trees: [],
    localRules: [],
  }
}

/** The same hole with boundaries to both sides, behind and beyond: they keep the places few, so that it is solved in a moment. */
export function enclosed(hole: Hole, left: number, right: number): Hole {
  const boundaries = [
    area('out', box(-300, left, -100, 600), 'out left'),
    area('out', box(right, 300, -100, 600), 'out right'),
    area('out', box(-300, 300, -100, -8.9), 'out behind'),
    area('out', box(-300, 300, hole.lengthMetres + 38.3, 600), 'out beyond'),
  ]
  return { ...hole, areas: [...hole.areas, ...boundaries] }
}

/** A piece of ground. */
export function area(ground: Ground, polygon: Polygon, id: string = ground): Area {
  return plainArea(id, ground, polygon)
}

/** A single tree of a height, metres, all else by default. */
export function tree(x: number, y: number, heightMetres: number): Tree {
  const unknown = { crownBaseMetres: null, crownRadiusMetres: null, densityPerMetre: null }
  return { id: `tree ${x} ${y}`, position: [x, y], heightMetres, ...unknown }
}

/** A rectangle by its sides, metres. */
export function box(left: number, right: number, from: number, to: number): Polygon {
  return [
    [
      [left, from],
      [right, from],
      [right, to],
      [left, to],
    ],
  ]
}

/** A regular 40-sided disc. */
export function disc([x, y]: Point, radius: number): Polygon {
  const corners = 40
  return [
    Array.from({ length: corners }, (_, k): Point => {
      const angle = (2 * Math.PI * (k + 0.5)) / corners
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)]
    }),
  ]
}

/** A mirrored hole: left becomes right. */
export function mirrored(hole: Hole): Hole {
  const flip = (polygon: Polygon): Polygon => polygon.map((ring) => ring.map(([x, y]): Point => [-x, y]))
  return {
    ...hole,
    line: hole.line.map(([x, y]): Point => [-x, y]),
    pin: [-hole.pin[0], hole.pin[1]],
    green: hole.green && flip(hole.green),
    greenFallTowardDegrees: (360 - hole.greenFallTowardDegrees) % 360,
    greenHeights: hole.greenHeights && moveGreenHeights(hole.greenHeights, ([x, y]) => [-x, y]),
    areas: hole.areas.map((one) => ({ ...one, polygon: flip(one.polygon) })),
    trees: hole.trees.map((one) => ({ ...one, position: [-one.position[0], one.position[1]] as const })),
  }
}

/** A player known by handicap and a few clubs only, so that small holes are solved in a moment. */
export function inventedPlayer(clubs: readonly object[], handicapIndex = 17): Player {
  return completePlayer(
    parsePlayer(
      JSON.stringify({
        schema: 'player/1',
        name: 'Test',
        hand: 'right',
        handicapIndex,
        bag: 'as-listed',
        clubs,
      }),
      'test',
    ),
  )
}

export const CALM_DAY: typeof REFERENCE_DAY = REFERENCE_DAY

import type { Ground } from '#golf/course/ground.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { distance } from '#numbers/geometry/point.ts'
import type { Shape, Step } from '../drawing.ts'
import { hashNoise } from '../hash-noise.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { Sheet } from '../sheet.ts'
import type { GroundMap } from './ground-map.ts'

interface Grass {
  readonly ground: Ground
  readonly spacing: number
  readonly stroke: number
  readonly width: number
  readonly blades: number
  readonly salt: number
}

const GRASSES: readonly Grass[] = [
  {
    ground: 'rough',
    spacing: DRAW_SETTINGS.roughSpacing,
    stroke: DRAW_SETTINGS.roughStroke,
    width: DRAW_SETTINGS.hairline,
    blades: 1,
    salt: 11,
  },
  {
    ground: 'heavy',
    spacing: DRAW_SETTINGS.heavySpacing,
    stroke: DRAW_SETTINGS.heavyStroke,
    width: DRAW_SETTINGS.hairline,
    blades: 2,
    salt: 21,
  },
  {
    ground: 'first-cut',
    spacing: DRAW_SETTINGS.firstCutSpacing,
    stroke: DRAW_SETTINGS.firstCutStroke,
    width: DRAW_SETTINGS.hairline,
    blades: 1,
    salt: 31,
  },
]

/** Rough as short upright strokes, heavy grass as longer ones in pairs and closer, the first cut as specks; thinning out away from the hole. */
export function strokeGrass(map: GroundMap, sheet: Sheet, line: readonly Point[]): Shape[] {
  const path = line.map(sheet.toSheet)
  return GRASSES.flatMap((grass): Shape[] => {
    const steps: Step[] = []
    for (let row = 0; row * grass.spacing < map.bottom; row += 1)
      for (let column = 0; column * grass.spacing < map.right; column += 1) {
        const shift = row % 2 === 0 ? 0 : 0.5
        const x = (column + shift + (hashNoise(column, row, grass.salt) - 0.5) * 0.75) * grass.spacing
        const y = (row + (hashNoise(column, row, grass.salt + 1) - 0.5) * 0.75) * grass.spacing
        if (map.groundAt(x, y) !== grass.ground || map.edgeAt(x, y) < 1.5) continue
        const away = distanceToLine(path, [x, y]) / sheet.unitsPerMetre
        const kept =
          1 -
          (away - DRAW_SETTINGS.roughFullMetres) /
            (DRAW_SETTINGS.roughGoneMetres - DRAW_SETTINGS.roughFullMetres)
        if (hashNoise(column, row, grass.salt + 2) > kept) continue
        for (let blade = 0; blade < grass.blades; blade += 1) {
          const lean =
            (hashNoise(column, row, grass.salt + 3 + blade) - 0.5) * 0.5 +
            (blade - (grass.blades - 1) / 2) * 0.5
          const length = grass.stroke * (0.8 + 0.4 * hashNoise(column, row, grass.salt + 6 + blade))
          steps.push(
            ['M', x + blade * 0.8, y],
            ['L', x + blade * 0.8 + Math.sin(lean) * length, y - Math.cos(lean) * length],
          )
        }
      }
    if (steps.length === 0) return []
    return [{ kind: 'path', steps, stroke: { paint: 'ink', width: grass.width, cap: 'round' } }]
  })
}

function distanceToLine(path: readonly Point[], at: Point): number {
  let nearest = Number.POSITIVE_INFINITY
  for (let index = 1; index < path.length; index += 1) {
    const [from, to] = [path[index - 1], path[index]]
    if (from === undefined || to === undefined) continue
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
    const square = dx * dx + dy * dy
    const share =
      square === 0 ? 0 : Math.max(0, Math.min(1, ((at[0] - from[0]) * dx + (at[1] - from[1]) * dy) / square))
    nearest = Math.min(nearest, distance(at, [from[0] + share * dx, from[1] + share * dy]))
  }
  return nearest
}

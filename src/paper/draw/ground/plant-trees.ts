import type { Tree } from '#golf/course/course.ts'
import type { Point } from '#numbers/geometry/point.ts'
import type { Shape, Step } from '../drawing.ts'
import { hashNoise } from '../hash-noise.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { Sheet } from '../sheet.ts'
import type { GroundMap } from './ground-map.ts'

interface Crown {
  readonly at: Point
  readonly radius: number
  readonly salt: number
}

/** Woods as small crowns, each with a shaded side, the nearer in front of the farther; single trees where they stand. */
export function plantTrees(map: GroundMap, sheet: Sheet, trees: readonly Tree[]): Shape[] {
  const crowns: Crown[] = []
  const spacing = DRAW_SETTINGS.crownSpacing
  for (let row = 0; row * spacing * 0.8 < map.bottom; row += 1)
    for (let column = 0; column * spacing < map.right; column += 1) {
      const x = (column + (row % 2) * 0.5 + (hashNoise(column, row, 41) - 0.5) * 0.55) * spacing
      const y = (row + (hashNoise(column, row, 42) - 0.5) * 0.5) * spacing * 0.8
      if (map.groundAt(x, y) !== 'trees' || map.edgeAt(x, y) < 2.5) continue
      const radius = DRAW_SETTINGS.crownRadius * (0.75 + 0.45 * hashNoise(column, row, 43))
      crowns.push({ at: [x, y], radius, salt: column * 977 + row })
    }
  for (const [index, tree] of trees.entries()) {
    const at = sheet.toSheet(tree.position)
    if (!map.isInside(at[0], at[1])) continue
    const metres = tree.heightMetres === null ? DRAW_SETTINGS.loneCrownMetres : tree.heightMetres * 0.3
    crowns.push({
      at,
      radius: Math.max(DRAW_SETTINGS.crownRadius, metres * sheet.unitsPerMetre),
      salt: 7000 + index,
    })
  }
  return crowns.sort((a, b) => a.at[1] - b.at[1] || a.at[0] - b.at[0]).flatMap(drawCrown)
}

function drawCrown({ at: [x, y], radius, salt }: Crown): Shape[] {
  const lobes = radius > 7 ? 9 : 7
  const turn = hashNoise(salt, lobes, 44) * Math.PI
  const onEdge = (index: number, reach: number): Point => {
    const angle = turn + (index / lobes) * 2 * Math.PI
    return [x + Math.cos(angle) * radius * reach, y + Math.sin(angle) * radius * reach * 0.94]
  }
  const start = onEdge(0, 0.86)
  const outline: Step[] = [['M', start[0], start[1]]]
  for (let lobe = 0; lobe < lobes; lobe += 1) {
    const [first, second, end] = [onEdge(lobe + 0.2, 1.16), onEdge(lobe + 0.8, 1.16), onEdge(lobe + 1, 0.86)]
    outline.push(['C', first[0], first[1], second[0], second[1], end[0], end[1]])
  }
  outline.push(['Z'])
  const shade: Step[] = []
  for (let bar = 0; bar < 3; bar += 1) {
    const reach = radius * (0.72 - bar * 0.24)
    const [from, to] = [0.05 * Math.PI, 0.5 * Math.PI]
    for (let piece = 0; piece <= 3; piece += 1) {
      const angle = from + ((to - from) * piece) / 3
      shade.push([piece === 0 ? 'M' : 'L', x + Math.cos(angle) * reach, y + Math.sin(angle) * reach * 0.94])
    }
  }
  return [
    { kind: 'path', steps: outline, fill: 'paper', stroke: { paint: 'ink', width: 0.6, join: 'round' } },
    { kind: 'path', steps: shade, stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline, cap: 'round' } },
  ]
}

/** Scrub as tufts: four blades out of one root. */
export function tuftScrub(map: GroundMap): Shape[] {
  const spacing = DRAW_SETTINGS.tuftSpacing
  const steps: Step[] = []
  for (let row = 0; row * spacing * 0.8 < map.bottom; row += 1)
    for (let column = 0; column * spacing < map.right; column += 1) {
      const x = (column + (row % 2) * 0.5 + (hashNoise(column, row, 51) - 0.5) * 0.6) * spacing
      const y = (row + (hashNoise(column, row, 52) - 0.5) * 0.5) * spacing * 0.8
      if (map.groundAt(x, y) !== 'scrub' || map.edgeAt(x, y) < 2) continue
      const size = 3.6 + 1.6 * hashNoise(column, row, 53)
      for (const lean of [-0.95, -0.35, 0.3, 0.9]) {
        const tip: Point = [x + Math.sin(lean) * size, y - Math.cos(lean) * size]
        steps.push(
          ['M', x + lean * 0.8, y],
          ['C', x + lean * 0.8, y - size * 0.5, tip[0] - lean * 0.6, tip[1] + size * 0.2, tip[0], tip[1]],
        )
      }
      steps.push(['M', x - 2.2, y + 0.6], ['L', x + 2.2, y + 0.6])
    }
  return steps.length === 0
    ? []
    : [{ kind: 'path', steps, stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline, cap: 'round' } }]
}

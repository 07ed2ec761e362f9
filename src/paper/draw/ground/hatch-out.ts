import type { Shape, Step } from '../drawing.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { GroundMap } from './ground-map.ts'

/** Out of bounds as a band of crossed lines along its edge; beyond the band the sheet stays empty. */
export function hatchOut(map: GroundMap): Shape[] {
  const steps: Step[] = []
  const spacing = DRAW_SETTINGS.hatchSpacing * Math.SQRT2
  for (const slope of [1, -1]) {
    const low = slope === 1 ? map.top - map.right : map.top + map.left
    const high = slope === 1 ? map.bottom - map.left : map.bottom + map.right
    for (let line = Math.floor(low / spacing); line * spacing < high; line += 1) {
      let from: [number, number] | null = null
      let last: [number, number] | null = null
      for (let x = map.left; x <= map.right; x += 0.8) {
        const y = line * spacing + slope * x
        const isIn =
          map.isInside(x, y) && map.groundAt(x, y) === 'out' && map.edgeAt(x, y) < DRAW_SETTINGS.hatchDepth
        if (isIn) {
          from ??= [x, y]
          last = [x, y]
        } else if (from !== null && last !== null) {
          steps.push(['M', ...from], ['L', ...last])
          from = null
        }
      }
      if (from !== null && last !== null) steps.push(['M', ...from], ['L', ...last])
    }
  }
  return steps.length === 0
    ? []
    : [{ kind: 'path', steps, stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline } }]
}

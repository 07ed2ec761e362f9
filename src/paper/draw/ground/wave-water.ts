import type { Shape, Step } from '../drawing.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { GroundMap } from './ground-map.ts'

/** Distance between two points of a wave line, units. */
const STEP = 1.4

/** Water as horizontal wave lines: every second and fourth line only near the edge, as old charts show a shore. */
export function waveWater(map: GroundMap): Shape[] {
  const steps: Step[] = []
  const quarter = DRAW_SETTINGS.waterSpacing / 4
  for (let line = 0; line * quarter < map.bottom; line += 1) {
    const reach = line % 4 === 0 ? Number.POSITIVE_INFINITY : line % 2 === 0 ? 13 : 5.5
    const level = line * quarter
    const shift = line * 2.3
    let isDown = false
    let pending: Step | null = null
    for (let x = map.left; x < map.right; x += STEP) {
      const y =
        level +
        DRAW_SETTINGS.waterAmplitude * Math.sin(((x + shift) * 2 * Math.PI) / DRAW_SETTINGS.waterWavelength)
      const isWater = isPenalty(map, x, y)
      const edge = isWater ? map.edgeAt(x, y) : 0
      if (isWater && edge > 1.4 && edge < reach) {
        if (!isDown) pending = ['M', x, y]
        else {
          if (pending !== null) steps.push(pending)
          pending = null
          steps.push(['L', x, y])
        }
        isDown = true
      } else {
        isDown = false
        pending = null
      }
    }
  }
  return steps.length === 0
    ? []
    : [
        {
          kind: 'path',
          steps,
          stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline, cap: 'round', join: 'round' },
        },
      ]
}

function isPenalty(map: GroundMap, x: number, y: number): boolean {
  const ground = map.groundAt(x, y)
  return ground === 'penalty-red' || ground === 'penalty-yellow'
}

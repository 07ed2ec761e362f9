import type { HoleModel } from './hole-model.ts'
import { directionsOn } from './lines-of-play.ts'
import { STROKE_LINES_DEGREES } from './settings.ts'

/** Headings to try for one stroke, radians: multiples of the step about the pin and about the next bend, from left to right. */
export function strokeLines(model: HoleModel, x: number, y: number, stepDegrees: number): number[] {
  const { pin, bend } = directionsOn(model.hole, x, y)
  const found = new Set<number>()
  for (const direction of Number.isNaN(bend) ? [pin] : [pin, bend]) {
    const centre = (direction * 180) / Math.PI
    const first = Math.ceil((centre - STROKE_LINES_DEGREES) / stepDegrees)
    const last = Math.floor((centre + STROKE_LINES_DEGREES) / stepDegrees)
    for (let multiple = first; multiple <= last; multiple++) found.add(multiple)
  }
  return [...found].sort((a, b) => a - b).map((multiple) => (multiple * stepDegrees * Math.PI) / 180)
}

import { distance, type Point, type Polygon } from '#numbers/geometry/point.ts'
import { polylineLength } from '#numbers/geometry/polyline.ts'
import { greenApproach } from '../greens/green-approach.ts'
import type { GreenMeasure } from '../hole-measures.ts'
import { chordsAcross } from './chords-across.ts'
import { gapFromZero } from './intervals.ts'

/** The green of a hole along its line of approach (hole frame, line from markers to pin); `null` when that line misses it. */
export function greenMeasure(green: Polygon, line: readonly Point[]): GreenMeasure | null {
  const tee = line[0] ?? [0, 0]
  const from = line.at(-2) ?? tee
  const approach = greenApproach(green, from)
  if (!approach) return null
  const before = polylineLength(line.slice(0, -1))
  const chord = chordsAcross(green, approach.middle, approach.headingRadians).sort(
    (a, b) => gapFromZero(a) - gapFromZero(b),
  )[0]
  return {
    frontMetres: before + distance(from, approach.front),
    middleMetres: before + distance(from, approach.middle),
    backMetres: before + distance(from, approach.back),
    depthMetres: approach.depthMetres,
    widthMetres: chord ? chord[1] - chord[0] : 0,
    straight: {
      frontMetres: distance(tee, approach.front),
      middleMetres: distance(tee, approach.middle),
      backMetres: distance(tee, approach.back),
    },
  }
}

import type { Area } from '#golf/course/course.ts'
import type { Ground } from '#golf/course/ground.ts'
import { polygonBounds, polygonContains } from '#numbers/geometry/polygon.ts'
import { projectOnPolyline } from '#numbers/geometry/polyline.ts'
import type { Candidate } from './evaluate-stroke.ts'
import type { HoleModel } from './hole-model.ts'

/** Rough price of one ball in each hazard, strokes: enough to say which hazard matters most. Our assumption. */
const PRICES: Readonly<Partial<Record<Ground, number>>> = {
  out: 2,
  'penalty-red': 1.2,
  'penalty-yellow': 1.3,
  scrub: 1,
  trees: 0.6,
  bunker: 0.4,
  heavy: 0.3,
}

/** The hazard that costs a stroke most, and on which side of the line it lies. */
export interface MainHazard {
  readonly area: Area
  readonly side: 'left' | 'right' | 'across'
}

/**
 * The hazard that the patterns of these candidates find most dearly: where their balls come down or finish, weighted
 * by the price of the ground. `null` when they find none worth naming.
 */
export function mainHazard(model: HoleModel, candidates: readonly Candidate[]): MainHazard | null {
  const priced = new Map<Area, number>()
  const hazards = model.hole.areas
    .filter((area) => area.ground in PRICES)
    .map((area) => ({ area, bounds: polygonBounds(area.polygon) }))
  for (const { ends } of candidates)
    for (let end = 0; end < ends.count; end++) {
      const x = ends.x[end] as number
      const y = ends.y[end] as number
      for (const { area, bounds } of hazards) {
        if (x < bounds.minX || x > bounds.maxX || y < bounds.minY || y > bounds.maxY) continue
        if (!polygonContains(area.polygon, [x, y])) continue
        priced.set(area, (priced.get(area) ?? 0) + (ends.weight[end] as number) * (PRICES[area.ground] ?? 0))
      }
    }
  const [dearest] = [...priced].sort((a, b) => b[1] - a[1])
  if (!dearest || dearest[1] < LEAST_PRICE * candidates.length) return null
  return { area: dearest[0], side: sideOf(model, dearest[0]) }
}

/** Under this many strokes a hazard is not worth naming. */
const LEAST_PRICE = 0.005

function sideOf(model: HoleModel, area: Area): MainHazard['side'] {
  const offsets = (area.polygon[0] ?? []).map((point) => projectOnPolyline(model.hole.line, point).offset)
  const left = Math.min(...offsets)
  const right = Math.max(...offsets)
  if (left < -ACROSS_METRES && right > ACROSS_METRES) return 'across'
  return left + right < 0 ? 'left' : 'right'
}

/** What reaches this far to both sides of the hole line lies across it, metres. */
const ACROSS_METRES = 5

/** What a hazard is called in a plan: its own name, else ground and side. */
export function hazardName({ area, side }: MainHazard): string {
  return area.name ?? `${HAZARD_WORDS[area.ground] ?? area.ground}-${side}`
}

/** The hazard in words, without its side. */
export function hazardWords({ area }: MainHazard): string {
  return (area.name ?? HAZARD_WORDS[area.ground] ?? area.ground).replaceAll('-', ' ')
}

const HAZARD_WORDS: Readonly<Partial<Record<Ground, string>>> = {
  'penalty-red': 'water',
  'penalty-yellow': 'water',
  out: 'out-of-bounds',
}

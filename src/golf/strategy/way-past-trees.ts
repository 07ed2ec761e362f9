import type { Crown } from '#golf/course/crown.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { CrownRays } from './crown-rays.ts'
import type { Candidate, Situation } from './evaluate-stroke.ts'
import { isInTheWay } from './hampered.ts'
import type { HoleModel } from './hole-model.ts'
import { directionsOn } from './lines-of-play.ts'
import { emptyPassage, heightAt, passCrownsInto } from './pass-crowns.ts'
import type { PlanOption } from './plan.ts'
import {
  CAUGHT_ON_THE_WAY,
  GAP_DEGREES,
  GAP_STEP_DEGREES,
  LOW_GROWTH_METRES,
  SIDEWAYS_FROM_DEGREES,
  TREES_WORTH_SAYING_METRES,
} from './settings.ts'
import { type StrikePaths, strikePaths } from './strike-paths.ts'

/** How a shot gets past the trees on its line, and how many of its balls they catch. */
export function wayPastTrees(
  model: HoleModel,
  situation: Situation,
  candidate: Candidate,
): PlanOption['trees'] {
  const { ends, table } = candidate
  if (table.paths === null) return { ...OPEN, caught: 0, gap: null }
  let caught = 0
  for (let end = 0; end < ends.count; end++)
    if (ends.isCaught[end] === 1) caught += ends.weight[end] as number
  const middle = middleStrike(candidate)
  return {
    ...wayOf(model, situation, middle),
    caught,
    gap: gapOf(model, situation, candidate, middle),
  }
}

/** The good strike that flies straight at the middle of the pattern, as a way of its own. */
interface Middle {
  readonly heading: number
  readonly paths: StrikePaths
}

function middleStrike({ table }: Candidate): Middle {
  let x = 0
  let y = 0
  for (let k = 0; k < table.goodCount; k++) {
    x += table.dx[k] as number
    y += table.dy[k] as number
  }
  const paths = strikePaths({
    heights: (table.paths as StrikePaths).heights,
    heightShare: Float64Array.of(1),
    dx: Float64Array.of(x / Math.max(1, table.goodCount)),
    dy: Float64Array.of(y / Math.max(1, table.goodCount)),
    falls: [],
  })
  return { heading: Math.atan2(x, y), paths }
}

function wayOf(model: HoleModel, { x, y }: Situation, { heading, paths }: Middle): Way {
  const { canopy } = model
  const { pin, bend } = directionsOn(model.hole, x, y)
  const isSideways = [pin, bend].every(
    (ahead) =>
      Number.isNaN(ahead) || Math.cos(heading - ahead) < Math.cos(degreesToRadians(SIDEWAYS_FROM_DEGREES)),
  )
  if (isSideways) return { way: 'sideways', growth: null }
  const rays = canopy.fromPoint(x, y)
  const ray = rays.rayAt(0, rays.headingNumber(heading))
  if (ray === 0) return OPEN
  const isCaught = passCrownsInto(emptyPassage(), canopy.crowns, rays, ray, paths, 0) < 1 - CAUGHT_ON_THE_WAY
  return wayAlong(model, rays, ray, paths, isCaught)
}

/** The way past what is in the way: through it where it is met and likely to catch, else under or over the first of it. */
function wayAlong(
  { canopy }: HoleModel,
  rays: CrownRays,
  ray: number,
  paths: StrikePaths,
  isCaught: boolean,
): Way {
  const reach = paths.reach[0] as number
  let found: Way = OPEN
  for (let stretch = rays.first[ray] as number; stretch < (rays.first[ray + 1] as number); stretch++) {
    const from = rays.from[stretch] as number
    if (from >= reach) break
    const { topMetres, baseMetres } = canopy.crowns[rays.crown[stretch] as number] as Crown
    if (!isInTheWay(topMetres, from) && topMetres < TREES_WORTH_SAYING_METRES) continue
    const until = Math.min(reach, rays.to[stretch] as number)
    const middle = heightAt(paths, 0, (from + until) / 2)
    const heights = [heightAt(paths, 0, from), middle, heightAt(paths, 0, until)]
    const isUnder = Math.max(...heights) < baseMetres
    const isOver = Math.min(...heights) >= topMetres
    const growth = topMetres < LOW_GROWTH_METRES ? 'scrub' : 'trees'
    if (isCaught && !isUnder && !isOver) return { way: 'through', growth }
    const isHigh = isOver || middle > (baseMetres + topMetres) / 2
    if (found === OPEN) found = { way: isHigh ? 'over' : 'under', growth }
  }
  return found
}

type Way = Pick<PlanOption['trees'], 'way' | 'growth'>

const OPEN: Way = { way: 'open', growth: null }

/**
 * The gap that a line goes through: how far its edges lie apart, seen from the ball, where the middle strike would more
 * likely than not be caught. `null` when one side is open as far as it is looked for, or the line itself is shut.
 */
function gapOf(
  model: HoleModel,
  { x, y }: Situation,
  { shot }: Candidate,
  { heading, paths }: Middle,
): PlanOption['trees']['gap'] {
  const { canopy } = model
  const rays = canopy.fromPoint(x, y)
  const passage = emptyPassage()
  const isShut = (degrees: number): boolean => {
    const ray = rays.rayAt(0, rays.headingNumber(heading + degreesToRadians(degrees)))
    return ray > 0 && passCrownsInto(passage, canopy.crowns, rays, ray, paths, 0) < 1 - 2 * CAUGHT_ON_THE_WAY
  }
  if (isShut(0)) return null
  const edge = (side: 1 | -1): number | null => {
    for (let degrees = GAP_STEP_DEGREES; degrees <= GAP_DEGREES; degrees += GAP_STEP_DEGREES)
      if (isShut(side * degrees)) return degrees - GAP_STEP_DEGREES / 2
    return null
  }
  const left = edge(-1)
  const right = edge(1)
  if (left === null || right === null) return null
  const { directionSdDegrees, leftShare, rightShare } = shot.stock
  return { degrees: left + right, spreads: (left + right) / (directionSdDegrees * (leftShare + rightShare)) }
}

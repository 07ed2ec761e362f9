import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { RasterFrame } from '#golf/course/hole-raster.ts'
import type { Player } from '#golf/player/player.ts'
import type { Candidate } from './evaluate-stroke.ts'
import type { NearGreenCorrections } from './near-green-corrections.ts'
import type { SolvedHole } from './neighbour.ts'
import type { ScoreChances } from './score-distribution.ts'
import type { Shot } from './shots.ts'

/** What a plan leaves behind for a plan of nearly the same: plain data, to be handed from worker to worker. */
export interface NearbyStart {
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
  readonly frame: RasterFrame
  /** By number: club and shape of each shot. */
  readonly shots: readonly string[]
  /** By coarse cell and slot: numbers of the kept actions, −1 for none. */
  readonly kept: Int32Array
  /** By place: what it costs, and what it costs by the few strikes of the first solve, which the next is held against. */
  readonly values: Float64Array
  readonly coarseValues: Float64Array
  /** By strokes and place: the chances to be holed in so many. */
  readonly chances: ScoreChances
  readonly nearGreen: NearGreenCorrections | null
  /** The best line of each shot of the plan, radians, and how much dearer it is than the plan, strokes. */
  readonly lines: readonly { readonly shot: string; readonly heading: number; readonly cost: number }[]
}

/** The start that a solved hole gives, with the plan's shots on their best lines. */
export function nearbyStart(
  { ground, player, day, nearGreen, problem, values }: SolvedHole,
  coarseValues: Float64Array,
  best: readonly Candidate[],
  chances: ScoreChances,
): NearbyStart {
  return {
    hole: ground.hole,
    player,
    day,
    frame: ground.places.coarse,
    shots: problem.shots.map(shotName),
    kept: problem.kept,
    values,
    coarseValues,
    chances,
    nearGreen,
    lines: linesOf(best),
  }
}

/** Each candidate's shot by name, its line and its cost; the cheapest comes first. */
export function linesOf(best: readonly Candidate[]): NearbyStart['lines'] {
  const least = best[0]?.strokes ?? 0
  return best.map(({ shot, heading, strokes }) => ({ shot: shotName(shot), heading, cost: strokes - least }))
}

/** A shot by club and shape. */
export function shotName(shot: Pick<Shot, 'club' | 'shape'>): string {
  return `${shot.club} ${shot.shape}`
}

import { distance } from '#numbers/geometry/point.ts'
import { radiansToDegrees } from '#numbers/units/units.ts'
import { type GreenSurface, greenSurface } from './green-surface.ts'
import type { Hole } from './hole.ts'
import { headingTo } from './measures/ahead.ts'

/** What is known of the slope of a green. */
export interface GreenSurvey {
  readonly source: GreenSurface['source']
  /** Mean fall over the green. */
  readonly fallPercent: number
  /** Downhill, degrees clockwise from the line of approach: 180 falls towards the player. */
  readonly fallTowardDegrees: number
  /** Spot heights it was taken from. */
  readonly spots: number
  /** Side of the cells of the grid it was taken from, or that was too coarse for it; `null` when there was no grid. */
  readonly gridCellMetres: number | null
}

/** What is known of the slope of a hole's green; `null` when the survey lacks the green. */
export function greenSurvey(hole: Hole): GreenSurvey | null {
  if (!hole.green) return null
  const { greenHeights: heights } = hole
  const approach = radiansToDegrees(headingTo(hole.line.at(-2) ?? [0, 0], hole.pin))
  return {
    source: greenSurface(hole).source,
    fallPercent: hole.greenFallPercent,
    fallTowardDegrees: (((hole.greenFallTowardDegrees - approach) % 360) + 360) % 360,
    spots: heights?.kind === 'spot-heights' ? heights.spots.length : 0,
    gridCellMetres:
      heights?.kind === 'grid' ? distance([0, 0], heights.grid.stepX) : hole.greenGridCellMetres,
  }
}

/** The same as a sentence, with what the survey does not show. */
export function greenSurveySentence(survey: GreenSurvey): string {
  const cell = survey.gridCellMetres === null ? '' : `${Number(survey.gridCellMetres.toFixed(1))} m`
  if (survey.source === 'level')
    return cell === ''
      ? 'No fall of this green is surveyed; it is taken as level.'
      : `The grid of heights (cell ${cell}) is too coarse for the slope of this green; it is taken as level.`
  const fall = `The green falls ${survey.fallPercent.toFixed(1)} per cent towards its ${sideOf(survey.fallTowardDegrees)}`
  if (survey.source === 'spot-heights') return `${fall}, by ${survey.spots} spot heights.`
  if (survey.source === 'grid') return `${fall}, by a grid of heights (cell ${cell}).`
  return cell === ''
    ? `${fall}, taken as one plane: its contours are not surveyed.`
    : `${fall}, a mean from a grid of heights too coarse for its contours (cell ${cell}).`
}

/** The sides of a green as the player sees them who comes to it, each 45 degrees clockwise from the one before. */
export const GREEN_SIDES = [
  'back',
  'back right',
  'right',
  'front right',
  'front',
  'front left',
  'left',
  'back left',
] as const

/** The side of a green that a direction points to, as the player sees it who comes to it. */
function sideOf(degrees: number): string {
  return GREEN_SIDES[Math.round(degrees / 45) % 8] ?? 'front'
}

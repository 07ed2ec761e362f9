import type { Ground } from '../ground.ts'
import type { SurveyFeature } from '../survey-feature.ts'
import {
  CART_PATH_WIDTH_METRES,
  DITCH_WIDTH_METRES,
  FOOTPATH_WIDTH_METRES,
  RIVER_WIDTH_METRES,
  STREAM_WIDTH_METRES,
  TREE_ROW_WIDTH_METRES,
} from './settings.ts'

/** What a feature is for a golf course. */
export type Role =
  | { readonly kind: 'hole' | 'tee' | 'pin' | 'tree' | 'spot' | 'boundary' | 'range' }
  | {
      readonly kind: 'ground'
      readonly ground: Ground
      /** Width of the strip when it is drawn as a line; `null` = it must be an outline. */
      readonly lineWidthMetres: number | null
      /** What was assumed where the source leaves it open; `null` when nothing was. */
      readonly assumed: string | null
      /** Bare sand that is no bunker by name: water lies over it. */
      readonly isBareSand: boolean
    }
  | { readonly kind: 'ignored' | 'person'; readonly reason: string }

/** What a feature is by its tags alone (OpenStreetMap's golf scheme and our own properties); the golf tag speaks first. */
export function classifyFeature(feature: SurveyFeature): Role {
  const { tags } = feature
  const survey = tags['marram:survey']
  if (survey === 'spot-height') return { kind: 'spot' }
  if (survey !== undefined) return { kind: 'person', reason: `“${survey}” is nothing that is surveyed` }
  const golf = tags.golf
  if (golf !== undefined) return golfRole(golf, tags)
  if (tags.leisure === 'golf_course') return { kind: 'boundary' }
  return (
    naturalRole(tags) ??
    waterwayRole(tags) ??
    (tags.landuse === 'forest' ? ground('trees') : null) ?? {
      kind: 'ignored',
      reason: Object.keys(tags).length === 0 ? 'it carries no tags' : 'it has no bearing on play',
    }
  )
}

function ground(
  name: Ground,
  options: { lineWidthMetres?: number; assumed?: string; isBareSand?: boolean } = {},
): Role {
  return {
    kind: 'ground',
    ground: name,
    lineWidthMetres: options.lineWidthMetres ?? null,
    assumed: options.assumed ?? null,
    isBareSand: options.isBareSand ?? false,
  }
}

const GRASSES: Readonly<Record<string, Ground>> = {
  'first-cut': 'first-cut',
  rough: 'rough',
  heavy: 'heavy',
  fringe: 'fringe',
}

function golfRole(golf: string, tags: SurveyFeature['tags']): Role {
  switch (golf) {
    case 'hole':
    case 'tee':
    case 'pin':
      return { kind: golf }
    case 'driving_range':
      return { kind: 'range' }
    case 'fairway':
    case 'green':
    case 'bunker':
    case 'fringe':
      return ground(golf)
    case 'out_of_bounds':
      return ground('out')
    case 'rough': {
      const grass = tags['marram:grass'] ?? 'rough'
      const known = GRASSES[grass]
      return known ? ground(known) : { kind: 'person', reason: `“${grass}” is not a kind of grass` }
    }
    case 'water_hazard':
      return penalty(tags, 'yellow', null)
    case 'lateral_water_hazard':
      return penalty(tags, 'red', null)
    case 'cartpath':
      return ground('path', { lineWidthMetres: CART_PATH_WIDTH_METRES })
    case 'path':
      return ground('path', { lineWidthMetres: FOOTPATH_WIDTH_METRES })
    default:
      return { kind: 'ignored', reason: `golf=${golf} has no bearing on play` }
  }
}

function penalty(
  tags: SurveyFeature['tags'],
  usual: 'red' | 'yellow',
  assumed: string | null,
  width?: number,
): Role {
  const colour = tags['marram:penalty'] ?? usual
  if (colour !== 'red' && colour !== 'yellow') {
    return { kind: 'person', reason: `“${colour}” is not a colour of penalty area` }
  }
  return ground(colour === 'red' ? 'penalty-red' : 'penalty-yellow', {
    lineWidthMetres: width ?? STREAM_WIDTH_METRES,
    ...(assumed !== null && tags['marram:penalty'] === undefined ? { assumed } : {}),
  })
}

// Rules of Golf 2023, definition of penalty area: one whose colour is not marked is treated as red.
const UNMARKED = 'taken as a red penalty area, since no colour is marked'

function naturalRole(tags: SurveyFeature['tags']): Role | null {
  switch (tags.natural) {
    case 'wood':
      return ground('trees')
    case 'tree_row':
      return ground('trees', { lineWidthMetres: TREE_ROW_WIDTH_METRES })
    case 'scrub':
    case 'heath':
      return ground('scrub')
    case 'tree':
      return { kind: 'tree' }
    case 'water':
      return penalty(tags, 'red', UNMARKED)
    case 'wetland':
      return penalty(tags, 'red', 'wet ground taken as a red penalty area')
    case 'sand':
      return ground('bunker', { assumed: 'bare sand taken as a bunker', isBareSand: true })
    case 'coastline':
      return {
        kind: 'person',
        reason: 'the shore is only a line: draw the sea or beach as an area where it is in play',
      }
    default:
      return null
  }
}

const WATERWAY_WIDTHS: Readonly<Record<string, number>> = {
  ditch: DITCH_WIDTH_METRES,
  drain: DITCH_WIDTH_METRES,
  stream: STREAM_WIDTH_METRES,
  tidal_channel: STREAM_WIDTH_METRES,
  canal: RIVER_WIDTH_METRES,
  river: RIVER_WIDTH_METRES,
  riverbank: RIVER_WIDTH_METRES,
}

function waterwayRole(tags: SurveyFeature['tags']): Role | null {
  const waterway = tags.waterway
  if (waterway === undefined) return null
  if (tags.tunnel !== undefined && tags.tunnel !== 'no')
    return { kind: 'ignored', reason: 'it runs underground' }
  const width = WATERWAY_WIDTHS[waterway]
  if (width === undefined) return { kind: 'ignored', reason: `waterway=${waterway} has no bearing on play` }
  return penalty(tags, 'red', UNMARKED, width)
}

import type { LonLat, SurveyFeature } from '../survey-feature.ts'

/** Every position of a feature, in drawing order. */
export function positionsOf(feature: SurveyFeature): readonly LonLat[] {
  const { geometry } = feature
  switch (geometry.kind) {
    case 'point':
      return [geometry.position]
    case 'line':
      return geometry.positions
    case 'area':
    case 'areas':
      return ringsOf(feature).flat(2)
    case 'none':
      return []
  }
}

/** The polygons of a feature that is an area; empty for points and lines. */
export function ringsOf(feature: SurveyFeature): readonly (readonly (readonly LonLat[])[])[] {
  const { geometry } = feature
  if (geometry.kind === 'area') return [geometry.rings]
  return geometry.kind === 'areas' ? geometry.polygons : []
}

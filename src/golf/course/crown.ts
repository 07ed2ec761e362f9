import type { Area, Tree } from './course.ts'
import {
  CROWN_BASE_SHARE,
  CROWN_DEFAULTS,
  CROWN_RADIUS_SHARE,
  HIGHEST_DEFAULT_CROWN_BASE_METRES,
  TRUNK_DENSITY_SHARE,
} from './settings.ts'

/** What stands over a place and may catch a ball in flight: metres above the ground, chances per metre of its path. */
export interface Crown {
  readonly topMetres: number
  /** Height of the lowest branches. */
  readonly baseMetres: number
  /** Between the lowest branches and the top. */
  readonly densityPerMetre: number
  /** Under the lowest branches. */
  readonly trunkDensityPerMetre: number
}

type Figures = Pick<Area, 'heightMetres' | 'crownBaseMetres' | 'densityPerMetre'>

/** The crowns of a wood or of scrub; what the survey does not say is the default. `null` on any other ground. */
export function crownOfArea(ground: string, figures: Figures | null): Crown | null {
  return ground === 'trees' || ground === 'scrub' ? crownOf(ground, figures) : null
}

/** The crown of a single tree, and its radius in metres. */
export function crownOfTree(tree: Tree): { readonly crown: Crown; readonly radiusMetres: number } {
  const crown = crownOf('tree', tree)
  return { crown, radiusMetres: tree.crownRadiusMetres ?? CROWN_RADIUS_SHARE * crown.topMetres }
}

function crownOf(kind: keyof typeof CROWN_DEFAULTS, figures: Figures | null): Crown {
  const topMetres = figures?.heightMetres ?? CROWN_DEFAULTS[kind].heightMetres
  const usualBase =
    kind === 'scrub' ? 0 : Math.min(CROWN_BASE_SHARE * topMetres, HIGHEST_DEFAULT_CROWN_BASE_METRES)
  const densityPerMetre = figures?.densityPerMetre ?? CROWN_DEFAULTS[kind].densityPerMetre
  return {
    topMetres,
    baseMetres: Math.min(topMetres, figures?.crownBaseMetres ?? usualBase),
    densityPerMetre,
    trunkDensityPerMetre: TRUNK_DENSITY_SHARE * densityPerMetre,
  }
}

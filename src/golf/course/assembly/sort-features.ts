import type { SurveyFeature } from '../survey-feature.ts'
import { classifyFeature, type Role } from './classify-feature.ts'
import { placeOf, type Tally } from './tally.ts'

/** A feature that is ground, with what it becomes. */
export interface GroundFeature {
  readonly feature: SurveyFeature
  readonly role: Extract<Role, { kind: 'ground' }>
}

/** Features by what they are for a golf course; those without bearing are in the tally already. */
export interface SortedFeatures {
  readonly holes: readonly SurveyFeature[]
  readonly tees: readonly SurveyFeature[]
  readonly pins: readonly SurveyFeature[]
  readonly trees: readonly SurveyFeature[]
  readonly spots: readonly SurveyFeature[]
  readonly boundaries: readonly SurveyFeature[]
  readonly ranges: readonly SurveyFeature[]
  readonly ground: readonly GroundFeature[]
  /** What matters only if it lies near a hole, and then to a person. */
  readonly doubtful: readonly { readonly feature: SurveyFeature; readonly reason: string }[]
}

/** Sorts the features of a source. One whose place is unknown goes to the tally, as a question if it would matter. */
export function sortFeatures(features: readonly SurveyFeature[], tally: Tally): SortedFeatures {
  const byKind = {
    hole: [] as SurveyFeature[],
    tee: [] as SurveyFeature[],
    pin: [] as SurveyFeature[],
    tree: [] as SurveyFeature[],
    spot: [] as SurveyFeature[],
    boundary: [] as SurveyFeature[],
    range: [] as SurveyFeature[],
  }
  const ground: GroundFeature[] = []
  const doubtful: { feature: SurveyFeature; reason: string }[] = []
  for (const feature of features) {
    const role = classifyFeature(feature)
    const isBlank = Object.keys(feature.tags).length === 0
    if (feature.geometry.kind === 'none' && (isBlank || role.kind !== 'ignored')) askForPlace(feature, tally)
    else if (role.kind === 'ignored') tally.ignore(feature, role.reason)
    else if (role.kind === 'ground') ground.push({ feature, role })
    else if (role.kind === 'person') doubtful.push({ feature, reason: role.reason })
    else byKind[role.kind].push(feature)
  }
  return {
    holes: byKind.hole,
    tees: byKind.tee,
    pins: byKind.pin,
    trees: byKind.tree,
    spots: byKind.spot,
    boundaries: byKind.boundary,
    ranges: byKind.range,
    ground,
    doubtful,
  }
}

const CORRECT_ROW = 'Correct that row of the hole table; docs/course-file.md describes the columns.'

/** What to do where nothing was drawn, so that there is nothing to draw again. */
const ADVICE: Readonly<Record<string, string>> = {
  'MAR-IMPORT-018': CORRECT_ROW,
  'MAR-IMPORT-019': CORRECT_ROW,
  'MAR-IMPORT-036':
    'Name it after what it is (fairway, green, bunker, water, trees, tee, pin, …) with the hole’s number.',
}

function askForPlace(feature: SurveyFeature, tally: Tally): void {
  if (feature.geometry.kind !== 'none') return
  const { reason, code = 'MAR-IMPORT-012' } = feature.geometry
  tally.ask(feature, reason)
  tally.fault(
    'error',
    code,
    placeOf(feature),
    `${placeOf(feature)} was left out: ${reason}.`,
    ADVICE[code] ?? 'Draw it again where it came from, or fetch the area again so that it is whole.',
  )
}

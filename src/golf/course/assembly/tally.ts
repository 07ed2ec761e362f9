import type { FaultCode } from '#faults/codes.ts'
import type { Fault, Severity } from '#faults/fault.ts'
import type { SetAside, UsedElement } from '../import-report.ts'
import type { SurveyFeature } from '../survey-feature.ts'

/**
 * Keeps the books while a course is put together: every feature ends in exactly one of three lists, the one it was
 * put in first.
 */
export interface Tally {
  readonly use: (feature: SurveyFeature, as: string) => void
  readonly ignore: (feature: SurveyFeature, reason: string) => void
  readonly ask: (feature: SurveyFeature, reason: string) => void
  readonly fault: (
    severity: Severity,
    code: FaultCode,
    place: string,
    message: string,
    advice: string,
  ) => void
  readonly used: readonly UsedElement[]
  readonly ignored: readonly SetAside[]
  readonly asked: readonly SetAside[]
  readonly faults: readonly Fault[]
}

/** A tally with empty lists. */
export function createTally(): Tally {
  const used: UsedElement[] = []
  const ignored: SetAside[] = []
  const asked: SetAside[] = []
  const faults: Fault[] = []
  const booked = new Set<SurveyFeature>()
  const book = (feature: SurveyFeature, enter: () => void): void => {
    if (!booked.has(feature)) enter()
    booked.add(feature)
  }
  const aside = (feature: SurveyFeature, reason: string): SetAside => ({
    id: feature.id,
    what: describe(feature),
    reason,
  })
  return {
    use: (feature, as) => book(feature, () => used.push({ id: feature.id, as })),
    ignore: (feature, reason) => book(feature, () => ignored.push(aside(feature, reason))),
    ask: (feature, reason) => book(feature, () => asked.push(aside(feature, reason))),
    fault: (severity, code, place, message, advice) =>
      faults.push({ severity, code, message, place, advice }),
    used,
    ignored,
    asked,
    faults,
  }
}

/** Where a person finds a feature in the source. */
export function placeOf(feature: SurveyFeature): string {
  return feature.faultsAt ? `${feature.id} (${feature.faultsAt})` : feature.id
}

const TELLING_KEYS = [
  'golf',
  'natural',
  'waterway',
  'leisure',
  'landuse',
  'highway',
  'building',
  'boundary',
  'place',
]

function describe(feature: SurveyFeature): string {
  const tags = Object.entries(feature.tags)
  const telling = TELLING_KEYS.find((key) => key in feature.tags)
  const [key, value] = (telling ? [telling, feature.tags[telling]] : tags[0]) ?? []
  return key === undefined ? 'no tags' : `${key}=${value}`
}

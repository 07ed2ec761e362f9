import type { Point } from '#numbers/geometry/point.ts'
import { polylineLength } from '#numbers/geometry/polyline.ts'
import type { HoleLine } from '../course.ts'
import type { LonLat, SurveyFeature } from '../survey-feature.ts'
import { type FoundPar, readPar } from './read-par.ts'
import { readLengthTag, readNumberTag, readRefs } from './read-values.ts'
import { HIGHEST_REF, LONGEST_HOLE_METRES, SHORTEST_HOLE_METRES } from './settings.ts'
import { placeOf, type Tally } from './tally.ts'

/** A hole line that may belong to the course, still beside the feature it came from. */
export interface Candidate {
  readonly feature: SurveyFeature
  readonly ref: string
  readonly line: readonly Point[]
}

/** What is asked of a hole line before it is taken for a hole. */
export interface HoleTests {
  readonly toPlane: (position: LonLat) => Point
  /** Our own course file is taken at its word: no limits of ref and length. */
  readonly isTrusted: boolean
  readonly isInRange: (line: readonly Point[]) => boolean
}

/** The lines that can be holes; the others go to the tally with the reason. */
export function readHoleLines(
  features: readonly SurveyFeature[],
  tests: HoleTests,
  tally: Tally,
): Candidate[] {
  return features.flatMap((feature): Candidate[] => {
    const positions = linePositions(feature, tally)
    if (!positions) return []
    const refs = readRefs(feature.tags.ref)
    const line = positions.map(tests.toPlane)
    if (refs.length === 0) {
      tally.ask(feature, 'it has no ref: which hole is it?')
      const message = `The hole line ${placeOf(feature)} has no ref.`
      tally.fault(
        'warning',
        'MAR-IMPORT-007',
        placeOf(feature),
        message,
        'Give it the number of its hole as “ref”.',
      )
      return []
    }
    const reason = tests.isTrusted ? null : whyNoHole(refs, line, tests)
    // Nine holes played twice carry both refs: each is a hole of the card.
    if (reason === null) return refs.map((ref) => ({ feature, ref, line }))
    tally.ignore(feature, reason)
    tally.fault(
      'note',
      'MAR-IMPORT-006',
      placeOf(feature),
      `The line with ref “${refs.join(';')}” was set aside: ${reason}.`,
      'Nothing to do, unless it is a hole after all: then correct its ref or its line.',
    )
    return []
  })
}

function whyNoHole(refs: readonly string[], line: readonly Point[], tests: HoleTests): string | null {
  const stray = refs.find((ref) => Number(ref) < 1 || Number(ref) > HIGHEST_REF)
  if (stray !== undefined) return `ref ${stray} is no hole number from 1 to ${HIGHEST_REF}`
  if (tests.isInRange(line)) return 'it lies on a driving range'
  const length = polylineLength(line)
  if (length < SHORTEST_HOLE_METRES) return `it is only ${length.toFixed(0)} m long`
  if (length > LONGEST_HOLE_METRES) return `it is ${length.toFixed(0)} m long`
  return null
}

function linePositions(feature: SurveyFeature, tally: Tally): readonly LonLat[] | null {
  const { geometry } = feature
  const positions = geometry.kind === 'line' ? geometry.positions : null
  const first = positions?.[0]
  const last = positions?.at(-1)
  if (positions && first && last && (first[0] !== last[0] || first[1] !== last[1])) return positions
  const drawn =
    positions !== null
      ? 'a closed line: an outline of the hole, not its line of play'
      : geometry.kind === 'point'
        ? 'a point'
        : 'an area'
  const reason = `it is drawn as ${drawn}; a hole is a line from the tee to the pin`
  tally.ask(feature, reason)
  tally.fault(
    'warning',
    'MAR-IMPORT-014',
    placeOf(feature),
    `${placeOf(feature)} is no hole line: ${reason}.`,
    'Draw a line from the back tee through the bends to the middle of the green.',
  )
  return null
}

/** A candidate as a hole of the course. */
export function holeLineOf(candidate: Candidate, tally: Tally): { hole: HoleLine; found: FoundPar } {
  const { feature, ref, line } = candidate
  const found = readPar(feature, polylineLength(line), tally)
  const cardLengths: Record<string, number> = {}
  for (const key of Object.keys(feature.tags)) {
    if (key !== 'dist' && !key.startsWith('dist:')) continue
    const metres = readLengthTag(feature, key, tally)
    if (metres !== null) cardLengths[key.slice('dist:'.length)] = metres
  }
  const hole: HoleLine = {
    id: ref === readRefs(feature.tags.ref)[0] ? feature.id : `${feature.id} as ${ref}`,
    ref,
    par: found.par,
    strokeIndex: readNumberTag(feature, 'handicap', 1, HIGHEST_REF, tally),
    name: feature.tags.name ?? null,
    line,
    isBearingInvented: feature.tags['marram:bearing'] === 'invented',
    cardLengths,
  }
  return { hole, found }
}

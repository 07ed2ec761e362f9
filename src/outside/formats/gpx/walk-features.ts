import type { Fault } from '#faults/fault.ts'
import type { LonLat, SurveyFeature } from '#golf/course/survey-feature.ts'
import { type TangentPlane, tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import type { GpxRecords, RecordedMark, RecordedWalk } from './read-gpx.ts'
import { readWalkName, type WalkedKind } from './walk-names.ts'
import { walkedLine, walkedOutline } from './walked-outline.ts'

/** What a kind is in the course file: OpenStreetMap's golf scheme. */
const TAGS: Readonly<Record<WalkedKind, Readonly<Record<string, string>>>> = {
  fairway: { golf: 'fairway' },
  green: { golf: 'green' },
  bunker: { golf: 'bunker' },
  'water-red': { golf: 'lateral_water_hazard' },
  'water-yellow': { golf: 'water_hazard' },
  trees: { natural: 'wood' },
  scrub: { natural: 'scrub' },
  heavy: { golf: 'rough', 'marram:grass': 'heavy' },
  out: { golf: 'out_of_bounds' },
  hole: { golf: 'hole' },
  tee: { golf: 'tee' },
  pin: { golf: 'pin' },
  tree: { natural: 'tree' },
}

interface Walked {
  readonly features: readonly SurveyFeature[]
  readonly faults: readonly Fault[]
}

/** Walks as outlines and lines, waypoints as points, and a hole line from the tee to the pin of one number where none was walked. */
export function walkFeatures({ walks, marks }: GpxRecords, where: string): Walked {
  const origin = [
    ...walks.flatMap(({ positions }) => positions),
    ...marks.map(({ position }) => position),
  ].find((position) => position !== null)
  const plane = tangentPlane(origin ?? [0, 0])
  const faults: Fault[] = []
  const features = [
    ...walks.map((walk) => walkFeature(walk, plane, where, faults)),
    ...marks.map((mark) => markFeature(mark, where)),
  ]
  const walked = new Set(features.filter(({ tags }) => tags.golf === 'hole').map(({ tags }) => tags.ref))
  return { features: [...features, ...holeLines(marks, walked, where)], faults }
}

function walkFeature(walk: RecordedWalk, plane: TangentPlane, where: string, faults: Fault[]): SurveyFeature {
  const said = readWalkName(walk.name)
  const named = { id: walk.id, faultsAt: `${where}, line ${walk.line}` }
  if (said.kind === null || said.kind === 'pin' || said.kind === 'tree') return unnamed(named, walk.name)
  const points = walk.positions.map(plane.toPlane)
  const tags = tagsOf(said.kind, walk.name)
  if (said.kind === 'hole') {
    const positions = walkedLine(points).map(plane.toLonLat)
    return { ...named, tags, geometry: { kind: 'line', positions } }
  }
  const { corners, gapMetres, isClosed } = walkedOutline(points)
  const [first] = corners
  if (first === undefined)
    return { ...named, tags, geometry: { kind: 'none', reason: 'what was walked encloses no ground' } }
  if (!isClosed)
    faults.push({
      severity: 'warning',
      code: 'MAR-IMPORT-035',
      message: `The walk “${walk.name}” does not come back to its start: ${gapMetres.toFixed(0)} m are missing and were closed by a straight line.`,
      place: named.faultsAt,
      advice: 'Walk the missing edge, or correct the outline by hand.',
    })
  const ring: LonLat[] = [...corners, first].map(plane.toLonLat)
  return { ...named, tags, geometry: { kind: 'area', rings: [ring] } }
}

function markFeature(mark: RecordedMark, where: string): SurveyFeature {
  const { kind } = readWalkName(mark.name)
  const named = { id: mark.id, faultsAt: `${where}, line ${mark.line}` }
  if (kind !== 'tee' && kind !== 'pin' && kind !== 'tree') return unnamed(named, mark.name)
  const tags = tagsOf(kind, mark.name)
  if (mark.position === null)
    return {
      ...named,
      tags,
      geometry: { kind: 'none', reason: 'it has no usable place', code: 'MAR-IMPORT-034' },
    }
  return { ...named, tags, geometry: { kind: 'point', position: mark.position } }
}

function unnamed(named: { readonly id: string; readonly faultsAt: string }, name: string): SurveyFeature {
  const reason =
    name === '' ? 'it has no name that says what it is' : `its name “${name}” does not say what it is`
  return { ...named, tags: {}, geometry: { kind: 'none', reason, code: 'MAR-IMPORT-036' } }
}

function tagsOf(kind: WalkedKind, name: string): Record<string, string> {
  const { ref, par, rest } = readWalkName(name)
  const isOfHole = kind === 'hole' || kind === 'tee'
  return {
    ...TAGS[kind],
    ...(ref === null ? {} : { [isOfHole ? 'ref' : 'marram:hole']: ref }),
    ...(kind === 'hole' && par !== null ? { par } : {}),
    ...(kind === 'tee' && rest !== '' ? { tee: rest } : {}),
  }
}

/** A hole line for each number that stands on one tee or more and on one pin; the first tee of it is where the line begins. */
function holeLines(
  marks: readonly RecordedMark[],
  walked: ReadonlySet<string | undefined>,
  where: string,
): SurveyFeature[] {
  const said = marks.map((mark) => ({ mark, name: readWalkName(mark.name) }))
  return said.flatMap(({ mark: pin, name }): SurveyFeature[] => {
    const { ref } = name
    if (name.kind !== 'pin' || pin.position === null || (ref !== null && walked.has(ref))) return []
    const tee = said.find(
      (one) => one.name.kind === 'tee' && one.name.ref === ref && one.mark.position !== null,
    )
    if (tee?.mark.position == null) return []
    const par = name.par ?? tee.name.par
    return [
      {
        id: `${tee.mark.id} to ${pin.id}`,
        faultsAt: `${where}, line ${tee.mark.line}`,
        tags: { golf: 'hole', ...(ref === null ? {} : { ref }), ...(par === null ? {} : { par }) },
        geometry: { kind: 'line', positions: [tee.mark.position, pin.position] },
      },
    ]
  })
}

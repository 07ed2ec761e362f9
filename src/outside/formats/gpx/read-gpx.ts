import type { Failure } from '#faults/failure.ts'
import type { LonLat } from '#golf/course/survey-feature.ts'
import type { XmlTag } from '../xml/read-xml.ts'

/** A track or a route as it was walked. */
export interface RecordedWalk {
  /** `track 2`, `route 1`: counted in the file. */
  readonly id: string
  /** What the surveyor called it; perhaps empty. */
  readonly name: string
  readonly positions: readonly LonLat[]
  /** Lines of the file on which a point without a usable place stands. */
  readonly damagedLines: readonly number[]
  readonly line: number
}

/** A waypoint. */
export interface RecordedMark {
  readonly id: string
  readonly name: string
  /** `null` where the file does not say where it is. */
  readonly position: LonLat | null
  readonly line: number
}

/** What a GPX file holds. */
export interface GpxRecords {
  readonly walks: readonly RecordedWalk[]
  readonly marks: readonly RecordedMark[]
}

interface Draft {
  name: string
  readonly positions: LonLat[]
  readonly damagedLines: number[]
  readonly line: number
}

/**
 * Tracks, routes and waypoints of GPX 1.1 (Topografix, schema http://www.topografix.com/GPX/1/1): the segments of a track
 * are one walk, since a new one begins where the reception was lost. Heights are passed over: they are worse than places.
 */
export function readGpx(tags: readonly XmlTag[]): GpxRecords {
  const walks: RecordedWalk[] = []
  const marks: RecordedMark[] = []
  const path: string[] = []
  const counts = { trk: 0, rte: 0 }
  let draft: Draft = newDraft(0)
  for (const tag of tags) {
    const { name, line } = tag
    if (tag.kind === 'open') {
      path.push(name)
      if (name === 'trk' || name === 'rte' || name === 'wpt') draft = newDraft(line)
      if (name === 'trkpt' || name === 'rtept' || name === 'wpt') {
        const position = readPosition(tag.attributes)
        if (position === null) draft.damagedLines.push(line)
        else draft.positions.push(position)
      }
      continue
    }
    path.pop()
    const parent = path.at(-1)
    if (name === 'name' && (parent === 'trk' || parent === 'rte' || parent === 'wpt')) draft.name = tag.text
    if (name === 'wpt') {
      const { positions, name: called } = draft
      marks.push({
        id: `waypoint ${marks.length + 1}`,
        name: called,
        position: positions[0] ?? null,
        line: draft.line,
      })
    }
    if (name === 'trk' || name === 'rte') {
      counts[name] += 1
      walks.push({ id: `${name === 'trk' ? 'track' : 'route'} ${counts[name]}`, ...draft })
    }
  }
  return { walks, marks }
}

/** A file that breaks off is read as if what was open had been closed there, so that its points are not lost. */
export function closedTags(tags: readonly XmlTag[], broken: Failure | null): readonly XmlTag[] {
  if (broken === null) return tags
  const open: XmlTag[] = []
  for (const tag of tags) {
    if (tag.kind === 'open') open.push(tag)
    else open.pop()
  }
  return [
    ...tags,
    ...open.reverse().map((tag): XmlTag => ({ ...tag, kind: 'close', attributes: {}, text: '' })),
  ]
}

function newDraft(line: number): Draft {
  return { name: '', positions: [], damagedLines: [], line }
}

function readPosition({ lat, lon }: XmlTag['attributes']): LonLat | null {
  const [longitude, latitude] = [numberOf(lon), numberOf(lat)]
  return Math.abs(longitude) <= 180 && Math.abs(latitude) <= 90 ? [longitude, latitude] : null
}

function numberOf(text: string | undefined): number {
  return text === undefined || text.trim() === '' ? Number.NaN : Number(text)
}

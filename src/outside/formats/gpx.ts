import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import { closedTags, type GpxRecords, readGpx } from './gpx/read-gpx.ts'
import { WALK } from './gpx/settings.ts'
import { walkFeatures } from './gpx/walk-features.ts'
import type { SourceReading } from './source-reading.ts'
import { readXml } from './xml/read-xml.ts'

/** A file of walks as it was recorded, and what is wrong with it. */
export interface GpxReading extends GpxRecords {
  readonly faults: readonly Fault[]
}

/**
 * Walks, routes and waypoints of a GPX 1.1 file as they were recorded. A damaged point is left out and a file that breaks
 * off is read up to there, both named with their line. Throws `MAR-FILE-007` for other XML and `MAR-IMPORT-001` where
 * nothing stands before the break.
 */
export function parseWalks(text: string, where: string): GpxReading {
  const { tags, broken } = readXml(text, where)
  const [root] = tags
  if (root === undefined) throw broken ?? new Failure('MAR-FILE-003', 'The file is empty.', where)
  if (root.name !== 'gpx')
    throw new Failure(
      'MAR-FILE-007',
      `This is XML, but no walk: its root is <${root.name}>, not <gpx>.`,
      where,
    )
  const records = readGpx(closedTags(tags, broken))
  const faults: Fault[] = []
  if (broken !== null)
    faults.push({
      severity: 'warning',
      code: broken.code,
      message: `${broken.message} What was recorded before is kept.`,
      place: broken.where,
      advice: 'Look whether the last walk is whole.',
    })
  for (const { id, damagedLines } of records.walks)
    if (damagedLines.length > 0)
      faults.push({
        severity: 'warning',
        code: 'MAR-IMPORT-034',
        message: `${damagedLines.length === 1 ? 'A point' : `${damagedLines.length} points`} of ${id} ${damagedLines.length === 1 ? 'has' : 'have'} no usable place and ${damagedLines.length === 1 ? 'was' : 'were'} left out; the others are kept.`,
        place: `${where}, line ${damagedLines[0]}`,
        advice: 'Look whether the outline is still right there.',
      })
  return { ...records, faults }
}

/** A file of walks as a course source: what each is, its name says. */
export function parseGpx(text: string, where: string): SourceReading {
  const reading = parseWalks(text, where)
  const { features, faults } = walkFeatures(reading, where)
  const accuracy: Fault = {
    severity: 'note',
    code: 'MAR-IMPORT-037',
    message: `What was walked is good to about ${WALK.accuracy} m under open sky, worse under trees; jitter under ${WALK.tolerance} m was thinned.`,
    place: where,
    advice: 'Measure what a choice hangs on: the carry over water, the edge of a bunker.',
  }
  return {
    kind: 'gpx',
    features,
    faults: [...reading.faults, ...faults, ...(features.length > 0 ? [accuracy] : [])],
    collection: {},
    vertices: 0,
  }
}

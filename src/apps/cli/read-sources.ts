import { basename } from 'node:path'
import { readSource } from '#outside/formats/read-source.ts'
import type { SourceReading } from '#outside/formats/source-reading.ts'
import { readBytes } from './read-file.ts'

/**
 * Several sources of one course as one reading, in the order given; ids are prefixed with the file's name when there
 * are several. Throws what reading a file throws.
 */
export async function readSources(paths: readonly string[]): Promise<SourceReading> {
  const readings: SourceReading[] = []
  for (const path of paths) readings.push(await readSource(readBytes(path), basename(path)))
  const [first, ...others] = readings
  if (first === undefined || others.length === 0) return first ?? EMPTY
  return {
    kind: first.kind,
    features: readings.flatMap(({ features }, index) =>
      features.map((feature) => ({ ...feature, id: `${basename(paths[index] ?? '')} ${feature.id}` })),
    ),
    faults: readings.flatMap(({ faults }) => faults),
    collection: Object.assign({}, ...readings.toReversed().map(({ collection }) => collection)),
    vertices: readings.reduce((sum, { vertices }) => sum + vertices, 0),
  }
}

const EMPTY: SourceReading = { kind: 'geojson', features: [], faults: [], collection: {}, vertices: 0 }

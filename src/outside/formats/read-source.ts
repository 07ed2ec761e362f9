import { Failure } from '#faults/failure.ts'
import { decodeText } from './decode-text.ts'
import { readGeojson } from './geojson.ts'
import { parseJsonText } from './json-text.ts'
import type { SourceReading } from './source-reading.ts'

/**
 * Reads a course source of any kind: what it is shows in its first characters, the file name only helps where they
 * leave it open. Throws a Failure (`MAR-FILE-*`, `MAR-IMPORT-*`) when nothing of it can be read; what is wrong with
 * single elements comes back as faults.
 */
export function readSource(bytes: Uint8Array, fileName: string): SourceReading {
  const { text, faults } = decodeText(bytes, fileName)
  const reading = readText(text, fileName)
  return { ...reading, faults: [...faults, ...reading.faults] }
}

function readText(text: string, fileName: string): SourceReading {
  const start = text
    .slice(0, 4096)
    .replace(/^\uFEFF/, '')
    .trimStart()
  if (start.startsWith('{') || start.startsWith('[') || /\.(geo)?json$/i.test(fileName)) {
    return readGeojson(parseJsonText(text, fileName), fileName)
  }
  throw unknownKind(fileName)
}

function unknownKind(fileName: string): Failure {
  return new Failure(
    'MAR-FILE-007',
    'This is none of the kinds of file that Marram imports: map data (OSM XML or its JSON form), GeoJSON, or a hole table (.csv).',
    fileName,
  )
}

import { Failure } from '#faults/failure.ts'
import { decodeText } from './decode-text.ts'
import { readGeojson } from './geojson.ts'
import { parseGpx } from './gpx.ts'
import { headerLineOf } from './hole-table/table-columns.ts'
import { parseHoleTable } from './hole-table.ts'
import { isJsonObject, parseJsonText } from './json-text.ts'
import { parseOsmXml } from './osm-xml.ts'
import { readOverpassJson } from './overpass-json.ts'
import type { SourceReading } from './source-reading.ts'

/**
 * Reads a course source of any kind: what it is shows in its first characters, the file name only helps where they
 * leave it open. Throws a Failure (`MAR-FILE-*`, `MAR-IMPORT-*`) when nothing of it can be read; an element
 * whose geometry cannot be used stays in the list with the reason.
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
  if (rootOf(start) === 'gpx') return parseGpx(text, fileName)
  if (start.startsWith('<')) return parseOsmXml(text, fileName)
  if (start.startsWith('{') || start.startsWith('[') || /\.(geo)?json$/i.test(fileName)) {
    const value = parseJsonText(text, fileName)
    const isReply = isJsonObject(value) && Array.isArray(value.elements)
    return isReply ? readOverpassJson(value, fileName) : readGeojson(value, fileName)
  }
  const firstLine = headerLineOf(start)
  const isTable = /\bhole\b/i.test(firstLine) && /\bwhat\b/i.test(firstLine)
  if (isTable || /\.(csv|tsv)$/i.test(fileName)) return parseHoleTable(text, fileName)
  throw unknownKind(fileName)
}

/** The name of the first element, past declarations and comments; `undefined` where no XML begins. */
function rootOf(start: string): string | undefined {
  const elements = start.replaceAll(/<\?.*?\?>|<!--.*?-->|<![^>]*>/gs, '')
  return /^\s*<([\w.-]+)/.exec(elements)?.[1]
}

function unknownKind(fileName: string): Failure {
  return new Failure(
    'MAR-FILE-007',
    'This is none of the kinds of file that Marram imports: map data (OSM XML or its JSON form), GeoJSON, walks (GPX), or a hole table (.csv).',
    fileName,
  )
}

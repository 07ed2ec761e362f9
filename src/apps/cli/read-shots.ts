import { basename } from 'node:path'
import { Failure } from '#faults/failure.ts'
import { decodeText } from '#outside/formats/decode-text.ts'
import {
  readMapping,
  readMappingFile,
  readShotTables,
  type ShotReading,
} from '#outside/formats/shot-table.ts'
import { readBytes, readText } from './read-file.ts'

/**
 * The shots in tables of one player, with what the columns are where that was said. Throws what reading a file and its
 * columns throw, MAR-USAGE-002 when columns are said twice, and MAR-SHOTS-017 when no row is a shot.
 */
export function readShots(
  paths: readonly string[],
  { columns, mapping }: { readonly columns?: string; readonly mapping?: string },
): ShotReading {
  if (columns !== undefined && mapping !== undefined)
    throw new Failure('MAR-USAGE-002', 'Say the columns once, with --columns or --mapping.', '--mapping')
  const meanings =
    columns !== undefined
      ? readMapping(columns)
      : mapping !== undefined
        ? readMappingFile({ text: readText(mapping), name: mapping })
        : null
  const texts = paths.map((path) => ({ name: basename(path), ...decodeText(readBytes(path), path) }))
  const reading = readShotTables(texts, meanings)
  if (reading.shots.length === 0) {
    const first = reading.faults.find(({ severity }) => severity === 'error') ?? reading.faults[0]
    const why = first === undefined ? '' : ` The first, ${first.place}: ${first.message}`
    throw new Failure('MAR-SHOTS-017', `None of ${reading.rows} rows is a shot.${why}`, paths.join(', '))
  }
  return { ...reading, faults: [...texts.flatMap(({ faults }) => faults), ...reading.faults] }
}

import { parseLog, type ReadRound } from '#golf/round/parse-log.ts'
import { parseRound } from '#golf/round/parse-round.ts'
import { readText } from './read-file.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

/** A round from a `round/1` file or a typed paper log, told apart by the first brace. Throws when there is no round in it. */
export function loadRound(path: string, units: ReaderUnits): ReadRound {
  const text = readText(path)
  return /^\uFEFF?\s*[{[]/.test(text) ? parseRound(text, path) : parseLog(text, path, units)
}

import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Store } from '#outside/store/store.ts'
import { DOCUMENT_KINDS, type DocumentKind } from './document-check.ts'
import { documentChecks } from './document-checks.ts'

/**
 * Puts the sample courses, players and days of a folder into a store that holds nothing yet, and returns how many.
 * A file is a sample by its ending: `*.course.geojson`, `*.player.json`, `*.day.json`; the rest of its name is the
 * id. Throws the Failure of the reader when a sample is broken.
 */
export async function putSamples(store: Store, examplesFolder: string): Promise<number> {
  for (const kind of DOCUMENT_KINDS) if ((await store[kind].list()).length > 0) return 0
  if (!existsSync(examplesFolder)) return 0
  let count = 0
  for (const file of readdirSync(examplesFolder).sort()) {
    const kind = kindOf(file)
    if (kind === null) continue
    const id = file.split('.')[0] ?? file
    const text = readFileSync(join(examplesFolder, file), 'utf8')
    await store[kind].put(id, documentChecks[kind](text, file).name, text, { expectedRevision: 0 })
    count += 1
  }
  return count
}

function kindOf(file: string): DocumentKind | null {
  const ending = Object.keys(ENDINGS).find((end) => file.endsWith(end))
  return ending === undefined ? null : (ENDINGS[ending] ?? null)
}

const ENDINGS: Readonly<Record<string, DocumentKind>> = {
  '.course.geojson': 'courses',
  '.player.json': 'players',
  '.day.json': 'days',
}

import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Store } from '#outside/store/store.ts'
import { DOCUMENT_KINDS, type DocumentKind } from './document-check.ts'
import { documentChecks } from './document-checks.ts'

/**
 * Puts the sample courses, players and days of a folder into a store that holds nothing of anybody's own, and returns
 * how many. A file is a sample by its ending: `*.course.geojson`, `*.player.json`, `*.day.json`; the rest of its name is
 * the id. Courses come last: a store with one was filled to the end, and
 * what an interrupted start has put already is passed over. Throws the Failure of the reader when a sample is
 * broken.
 */
export async function putSamples(store: Store, examplesFolder: string): Promise<number> {
  const samples = existsSync(examplesFolder) ? samplesIn(examplesFolder) : []
  if ((await store.courses.list()).length > 0) return 0
  for (const kind of DOCUMENT_KINDS)
    for (const { id, revision } of await store[kind].list())
      if (revision > 1 || !samples.some((sample) => sample.kind === kind && sample.id === id)) return 0
  let count = 0
  for (const { kind, id, file } of samples) {
    if ((await store[kind].get(id)) !== null) continue
    const text = readFileSync(join(examplesFolder, file), 'utf8')
    await store[kind].put(id, documentChecks[kind](text, file).name, text, { expectedRevision: 0 })
    count += 1
  }
  return count
}

interface Sample {
  readonly kind: DocumentKind
  readonly id: string
  readonly file: string
}

function samplesIn(folder: string): Sample[] {
  return readdirSync(folder)
    .sort()
    .flatMap((file): Sample[] => {
      const kind = kindOf(file)
      return kind === null ? [] : [{ kind, id: file.split('.')[0] ?? file, file }]
    })
    .sort((a, b) => Number(a.kind === 'courses') - Number(b.kind === 'courses'))
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

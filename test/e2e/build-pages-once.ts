import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { BUILT_PAGES, buildPages } from '../../tools/served-desk.ts'

const folder = mkdtempSync(join(tmpdir(), 'marram-pages-'))

/** Builds the pages for every browser test of a run: each file would build the very same. */
export async function setup(): Promise<void> {
  await buildPages(folder)
  process.env[BUILT_PAGES] = folder
}

/** Puts them away. */
export function teardown(): void {
  rmSync(folder, { recursive: true, force: true })
}

import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { join } from 'node:path'

// Inside the repository, because the bundle finds its packages from where it lies; apart from `dist`, so that a source
// saved in the middle of a run cannot change what is tested.
const folder = mkdtempSync(join(process.cwd(), 'node_modules/.marram-cli-'))

/** Builds the command line for every test of a run that calls it. */
export function setup(): void {
  execFileSync(process.execPath, ['tools/build.mjs', folder])
  process.env.MARRAM_BUNDLE = join(folder, 'marram.js')
}

/** Puts it away. */
export function teardown(): void {
  rmSync(folder, { recursive: true, force: true })
}

// `npm test` on a fresh machine: installs what is missing, runs every check and every test, and ends with one
// plain line. Nothing here may import a package: it runs before there is one.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { installWhenMissing } from './install-when-missing.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
installWhenMissing(root)
// Loaded only now: what the checks run comes from the packages just installed.
const { runChecks } = await import('./checks.mjs')
const checks = await runChecks()
const tests = runTests()

for (const { name, reason } of tests.skipped) console.log(`skipped: ${name} (${reason})`)
const passed = checks.passed + tests.passed
const failed = checks.failed + tests.failed
const skipped = tests.skipped.length
console.log(`${passed} passed, ${failed} failed${skipped === 0 ? '' : `, ${skipped} skipped`}`)
process.exit(failed === 0 ? 0 : 1)

/** Runs Vitest; a run that leaves no outcome, or none of any file, has failed. */
function runTests() {
  const folder = mkdtempSync(join(tmpdir(), 'marram-test-'))
  const outcomeFile = join(folder, 'outcome.json')
  const result = spawnSync(
    process.execPath,
    [
      'node_modules/vitest/vitest.mjs',
      'run',
      '--reporter=default',
      '--reporter=./tools/outcome-reporter.mjs',
    ],
    { cwd: root, stdio: 'inherit', env: { ...process.env, MARRAM_TEST_OUTCOME: outcomeFile } },
  )
  const outcome = existsSync(outcomeFile) ? JSON.parse(readFileSync(outcomeFile, 'utf8')) : null
  rmSync(folder, { recursive: true, force: true })
  if (outcome === null || outcome.files === 0) return { passed: 0, failed: 1, skipped: [] }
  // Whatever else made Vitest fail (a time-out on closing, a broken set-up) counts once.
  if (result.status !== 0 && outcome.failed === 0) outcome.failed = 1
  return outcome
}

// `npm test` on a fresh machine: installs what is missing, runs every check and every test, and ends with one
// plain line. Nothing here may import a package: it runs before there is one.
import { execFileSync, spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

if (!existsSync('node_modules/.package-lock.json'))
  execFileSync('npm', ['ci', '--no-audit', '--no-fund'], { stdio: 'inherit' })

let passed = 0
let failed = 0
const skipped = 0

/** One check counts as one test: passed when the command ends with 0. */
function check(title, command, args) {
  const result = spawnSync(command, args, { stdio: 'inherit' })
  if (result.status === 0) passed += 1
  else failed += 1
  console.log(`${result.status === 0 ? 'ok' : 'FAILED'}: ${title}`)
}

for (const environment of ['pure'])
  check(`types, ${environment}`, 'npx', ['tsc', '-p', `tsconfig.${environment}.json`])

const report = join(mkdtempSync(join(tmpdir(), 'marram-test-')), 'report.json')
spawnSync('npx', ['vitest', 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`], {
  stdio: 'inherit',
})
if (existsSync(report)) {
  const counts = JSON.parse(readFileSync(report, 'utf8'))
  passed += counts.numPassedTests
  failed += counts.numFailedTests + (counts.success ? 0 : counts.numFailedTests === 0 ? 1 : 0)
} else failed += 1

console.log(`${passed} passed, ${failed} failed, ${skipped} skipped`)
process.exit(failed === 0 ? 0 : 1)

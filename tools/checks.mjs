// The checks that are no tests of behaviour: form, types, walls, unused code, the drawn room graph.
// `npm test` counts each as one test; alone: `node tools/checks.mjs [words of a title]`.
import { execFile } from 'node:child_process'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('..', import.meta.url))

/** The long ones first, so that two lanes end together. */
const CHECKS = [
  ...['test', 'web', 'node', 'pure'].map((environment) => ({
    title: `types, ${environment}`,
    // The native compiler checks; the one before it is there for the tools that read its syntax trees.
    command: ['node', 'node_modules/typescript-native/bin/tsc', '-p', `tsconfig.${environment}.json`],
    // TS18003: a floor that has no file yet is not wrong.
    forgives: 'error TS18003',
  })),
  { title: 'walls between rooms', command: ['node', 'tools/check-walls.mjs'] },
  { title: 'room graph of ARCHITECTURE.md', command: ['node', 'tools/room-graph.mjs'] },
  { title: 'build of command line and screen', command: ['node', 'tools/build.mjs'] },
  { title: 'unused files, exports and packages', command: ['knip'] },
  { title: 'form and lint', command: ['biome', 'check', '--error-on-warnings', '--max-diagnostics=10', '.'] },
]

/**
 * Runs the checks whose title holds `words`, two at a time as the tests are run, prints what each says as it ends, and
 * returns how many passed and failed.
 */
export async function runChecks(words = '') {
  const outcome = { passed: 0, failed: 0 }
  const waiting = CHECKS.filter((check) => check.title.includes(words))
  const lane = async () => {
    for (let check = waiting.shift(); check !== undefined; check = waiting.shift()) {
      if (await passes(check)) outcome.passed += 1
      else outcome.failed += 1
    }
  }
  await Promise.all([lane(), lane()])
  return outcome
}

/** Runs one check and says how it went. */
async function passes({ title, command, forgives }) {
  const [program, ...rest] =
    command[0] === 'node' ? command.slice(1) : [`node_modules/.bin/${command[0]}`, ...command.slice(1)]
  const started = Date.now()
  const { status, said } = await new Promise((resolve) => {
    const options = { cwd: ROOT, encoding: 'utf8', maxBuffer: 1 << 26 }
    execFile(process.execPath, [program, ...rest], options, (error, out, err) =>
      resolve({ status: error === null ? 0 : error.code, said: `${out}${err}`.trim() }),
    )
  })
  const isOk = status === 0 || (forgives !== undefined && said.includes(forgives))
  if (!isOk) console.log(said)
  console.log(`${isOk ? 'ok' : 'FAILED'}: ${title} (${((Date.now() - started) / 1000).toFixed(1)} s)`)
  return isOk
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  process.exitCode = (await runChecks(process.argv.slice(2).join(' '))).failed === 0 ? 0 : 1

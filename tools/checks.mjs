// The checks that are no tests of behaviour: form, types, walls, unused code, the drawn room graph.
// `npm test` counts each as one test; alone: `node tools/checks.mjs [words of a title]`.
import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('..', import.meta.url))

const CHECKS = [
  { title: 'form and lint', command: ['biome', 'check', '--error-on-warnings', '--max-diagnostics=10', '.'] },
  ...['pure', 'node', 'web', 'test'].map((environment) => ({
    title: `types, ${environment}`,
    command: ['tsc', '-p', `tsconfig.${environment}.json`],
    // TS18003: a floor that has no file yet is not wrong.
    forgives: 'error TS18003',
  })),
  { title: 'build of command line and screen', command: ['node', 'tools/build.mjs'] },
  { title: 'walls between rooms', command: ['node', 'tools/check-walls.mjs'] },
  { title: 'unused files, exports and packages', command: ['knip'] },
  { title: 'room graph of ARCHITECTURE.md', command: ['node', 'tools/room-graph.mjs'] },
]

/** Runs the checks whose title holds `words`, prints what each says, and returns how many passed and failed. */
export function runChecks(words = '') {
  const outcome = { passed: 0, failed: 0 }
  for (const { title, command, forgives } of CHECKS.filter((check) => check.title.includes(words))) {
    const [program, ...rest] =
      command[0] === 'node' ? command.slice(1) : [`node_modules/.bin/${command[0]}`, ...command.slice(1)]
    const started = Date.now()
    const result = spawnSync(process.execPath, [program, ...rest], {
      cwd: ROOT,
      encoding: 'utf8',
      maxBuffer: 1 << 26,
    })
    const said = `${result.stdout ?? ''}${result.stderr ?? ''}`.trim()
    const isOk = result.status === 0 || (forgives !== undefined && said.includes(forgives))
    if (isOk) outcome.passed += 1
    else {
      outcome.failed += 1
      console.log(said)
    }
    console.log(`${isOk ? 'ok' : 'FAILED'}: ${title} (${((Date.now() - started) / 1000).toFixed(1)} s)`)
  }
  return outcome
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  process.exitCode = runChecks(process.argv.slice(2).join(' ')).failed === 0 ? 0 : 1

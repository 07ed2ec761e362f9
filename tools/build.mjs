// Builds what runs: the command line with its parts beside the module of its threads, the screen as a folder of pages. Skips what is up to date.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('..', import.meta.url))

/** The hole, player and course of the sample plan. */
const SAMPLE = [
  'examples/sandrel-ness.course.geojson',
  '--player',
  'examples/aldous-brack.player.json',
  '--hole',
  '3',
  '--no-flips',
  '--draws',
  '0',
]

/** Builds the command line and the screen into `dist`, each only when a source of it has changed. */
export async function buildWhenChanged() {
  process.chdir(ROOT)
  mkdirSync('dist', { recursive: true })
  await whenChanged('dist/marram.js', ['src', 'package.json'], () => buildCommandLine('dist'))
  const screen = [
    'src',
    'package.json',
    'vite.config.ts',
    'tools/offline-pages.ts',
    'tools/packed-pages.ts',
    'tools/round-page.ts',
  ]
  await whenChanged('dist/web/index.html', screen, buildScreen)
}

/** The sample plan as text, worked out unless it is there already and still true. */
export async function samplePlan() {
  process.chdir(ROOT)
  await whenChanged('dist/sample-plan.txt', ['src', 'package.json', 'examples'], planSample)
  return readFileSync('dist/sample-plan.txt', 'utf8')
}

/** Calls `build` unless the sources have the fingerprint that the product was last built from. */
async function whenChanged(product, sources, build) {
  const stamp = join('dist', `.${product.replaceAll('/', '-')}.stamp`)
  const fingerprint = fingerprintOf(sources.filter((path) => existsSync(path)))
  if (existsSync(product) && existsSync(stamp) && readFileSync(stamp, 'utf8') === fingerprint) {
    // A source may be newer by date alone; bin/marram.js compares dates.
    utimesSync(product, new Date(), new Date())
    return
  }
  await build()
  writeFileSync(stamp, fingerprint)
}

/** Bundles the command line, each command by itself, and what its threads load, into a folder; packages stay outside. */
async function buildCommandLine(folder) {
  const { build } = await import('esbuild')
  // Parts carry their fingerprint in their name, so that those of the build before would stay for ever.
  rmSync(join(folder, 'parts'), { recursive: true, force: true })
  await build({
    entryPoints: {
      marram: 'src/apps/cli/run-marram.ts',
      // Beside the part that starts the threads, which looks for it there.
      'parts/plan-task': 'src/apps/cli/plan-task.ts',
    },
    outdir: folder,
    chunkNames: 'parts/[name]-[hash]',
    bundle: true,
    splitting: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
    sourcemap: true,
    logLevel: 'warning',
  })
}

/** The plan that `npm start` says: worked out once, and again when the model or the examples change. */
function planSample() {
  const plan = spawnSync(process.execPath, ['bin/marram.js', 'plan', ...SAMPLE], {
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1' },
  })
  if (plan.status !== 0) throw new Error(`The sample cannot be planned: ${plan.stderr}`)
  writeFileSync('dist/sample-plan.txt', plan.stdout)
}

async function buildScreen() {
  if (!existsSync('src/apps/web/index.html')) return
  const { build } = await import('vite')
  await build({
    ...(existsSync('vite.config.ts')
      ? { configFile: 'vite.config.ts' }
      : { configFile: false, root: 'src/apps/web' }),
    build: { outDir: join(ROOT, 'dist/web'), emptyOutDir: true, chunkSizeWarningLimit: 4000 },
    logLevel: 'warn',
  })
}

function fingerprintOf(paths) {
  const hash = createHash('sha256')
  for (const path of paths.flatMap(filesUnder).sort())
    hash.update(path).update('\0').update(readFileSync(path)).update('\0')
  return hash.digest('hex')
}

function filesUnder(path) {
  if (statSync(path).isDirectory())
    return readdirSync(path, { withFileTypes: true, recursive: true })
      .filter((entry) => entry.isFile() && !/\.test\.tsx?$/.test(entry.name))
      .map((entry) => join(entry.parentPath, entry.name))
  return [path]
}

// Alone: builds what is out of date. With a folder: only the command line, into that folder, for a test run.
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  if (process.argv[2] === undefined) await buildWhenChanged()
  else await buildCommandLine(process.argv[2])
}

// A round of the example course for many players as `marram plan` does it: wall time with one thread and with two, peak
// memory, and how soon a plan in the middle of its work is stopped. Takes minutes, so it stands beside `npm run bench`:
// `npm run bench-batch -- [--players 40] [--json]`.
import { spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { stopFigures } from './stop-figures.ts'

/** One figure of a batch: wall time, memory, or a speed-up, which is a ratio of two wall times of the same run. */
export interface BatchFigure {
  readonly name: string
  readonly unit: 'ms' | 'MB' | '×'
  readonly median: number
  readonly ratio: number | null
  readonly against: string | null
}

const ROOT = fileURLToPath(new URL('..', import.meta.url))
const COURSE = join(ROOT, 'examples/sandrel-ness.course.geojson')
/** Without draws and flips: the solve and the plan alone, as for a page of rounds in a hurry. */
const PACE = ['--no-flips', '--draws', '0']
/** Enough that both threads have many holes, few enough for a coffee. */
const PLAYERS = 2

/** Plans every hole for so many invented players, from scratch to near 36, with one thread and with two. */
export async function batchFigures(players: number = PLAYERS): Promise<BatchFigure[]> {
  const folder = mkdtempSync(join(tmpdir(), 'marram-bench-'))
  try {
    const built = spawnSync(process.execPath, ['tools/build.mjs', join(ROOT, 'dist/bench')], { cwd: ROOT })
    if (built.status !== 0) throw new Error(`the bundle was not built: ${built.stderr}`)
    const files = Array.from({ length: players }, (_, index) => invented(folder, index, players))
    const one = await planned(files, 1)
    const two = await planned(files, 2)
    const what = `${one.plans / players} holes × ${players} players`
    const [alone, both] = [`${what}, 1 thread`, `${what}, 2 threads`]
    return [
      figure(alone, 'ms', one.milliseconds),
      { ...figure(both, 'ms', two.milliseconds), ratio: two.milliseconds / one.milliseconds, against: alone },
      figure('speed-up of 2 threads over 1', '×', one.milliseconds / two.milliseconds),
      figure(`peak memory, ${alone}`, 'MB', one.megabytes),
      figure(`peak memory, ${both}`, 'MB', two.megabytes),
      ...(await stopFigures()).flatMap(({ name, middle, percentile95 }) => [
        figure(name, 'ms', middle),
        figure(`${name}, 95th percentile`, 'ms', percentile95),
      ]),
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true })
    rmSync(join(ROOT, 'dist/bench'), { recursive: true, force: true })
  }
}

function figure(name: string, unit: BatchFigure['unit'], median: number): BatchFigure {
  return { name, unit, median, ratio: null, against: null }
}

/** Says at the very end, and only once for all threads, how much memory the process had at most, in kilobytes. */
const SAY_PEAK = `data:text/javascript,${encodeURIComponent(
  `import { isMainThread } from 'node:worker_threads'
   if (isMainThread) process.on('exit', () => console.error('peak', process.resourceUsage().maxRSS))`,
)}`

/** One run of the command line as a person would start it. */
async function planned(
  files: readonly string[],
  workers: number,
): Promise<{ readonly milliseconds: number; readonly megabytes: number; readonly plans: number }> {
  const players = files.flatMap((file) => ['--player', file])
  const words = [
    'plan',
    COURSE,
    ...players,
    '--hole',
    'all',
    ...PACE,
    '--workers',
    String(workers),
    '--json-lines',
  ]
  const started = performance.now()
  const child = spawn(process.execPath, ['--import', SAY_PEAK, join(ROOT, 'bin/marram.js'), ...words], {
    env: { ...process.env, MARRAM_BUNDLE: join(ROOT, 'dist/bench/marram.js') },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let [plans, said] = [0, '']
  child.stdout.on('data', (text: Buffer) => {
    for (const byte of text) if (byte === NEW_LINE) plans += 1
  })
  child.stderr.on('data', (text: Buffer) => {
    said += text.toString()
  })
  const status = await new Promise((resolve) => child.on('close', resolve))
  const milliseconds = performance.now() - started
  const kilobytes = Number(/^peak (\d+)$/m.exec(said)?.[1])
  if (status !== 0 || !(kilobytes > 0)) throw new Error(`the round was not planned: ${said}`)
  return { milliseconds, megabytes: kilobytes / 1024, plans }
}

const NEW_LINE = 10

/** A player of whom only name and index are known, in a file; indices spread evenly from 0 to 36. */
function invented(folder: string, index: number, players: number): string {
  const path = join(folder, `${index}.player.json`)
  const name = `Player ${index + 1}`
  const handicapIndex = Math.round((360 * index) / players) / 10
  writeFileSync(
    path,
    JSON.stringify({ schema: 'player/1', name, hand: index % 8 === 0 ? 'left' : 'right', handicapIndex }),
  )
  return path
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const place = process.argv.indexOf('--players')
  const figures = await batchFigures(place < 0 ? PLAYERS : Number(process.argv[place + 1]))
  if (process.argv.includes('--json')) console.log(JSON.stringify(figures, null, 2))
  else
    for (const { name, unit, median } of figures)
      console.log(`${name.padEnd(52)} ${median.toFixed(unit === '×' ? 2 : 0).padStart(9)} ${unit}`)
}

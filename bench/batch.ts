// A round of the example course for many players as `marram plan` does it: wall time with one thread and with two, peak
// memory, and how soon a plan in the middle of its work is stopped. Takes minutes, so it stands beside `npm run bench`:
// `npm run bench-batch -- [--players 40] [--json]`.
import { spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { askHole, planQuestion } from '../src/apps/cli/ask-hole.ts'
import { loadCourse } from '../src/apps/cli/load-course.ts'
import { loadPlayer } from '../src/apps/cli/load-player.ts'
import { parseQuestion } from '../src/apps/cli/parse-question.ts'
import { planPool } from '../src/apps/cli/plan-pool.ts'
import { REFERENCE_DAY } from '../src/golf/course/day.ts'
import type { PlanQuestion } from '../src/golf/strategy/plan-hole.ts'
import { stopsInBrowser } from './stop-in-browser.ts'

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
const PLAYER = join(ROOT, 'examples/aldous-brack.player.json')
/** Without draws and flips: the solve and the plan alone, as for a page of rounds in a hurry. */
const PACE = ['--no-flips', '--draws', '0']
/** Enough that both threads have many holes, few enough for a coffee. */
const PLAYERS = 2
/** Moments of a plan at which it is stopped, milliseconds after it was begun. */
const STOP_AFTER = [50, 100, 150, 200, 250, 300, 400, 500, 600]

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
      ...(await stopFigures()),
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true })
    rmSync(join(ROOT, 'dist/bench'), { recursive: true, force: true })
  }
}

/** From the signal until the plan has stopped, in a thread of Node and in a worker of Chromium: middle and longest. */
export async function stopFigures(): Promise<BatchFigure[]> {
  const { course } = await loadCourse(COURSE)
  const question = parseQuestion({ player: [PLAYER], hole: '7', draws: '0', flips: false })
  const asked = askHole(course, '7', REFERENCE_DAY, question)
  const task = planQuestion(asked, course, loadPlayer(PLAYER), question, 'yards')
  const browser = await stopsInBrowser(task, STOP_AFTER)
  if (browser === null) console.error('stopping in a browser is left out: there is no Chromium')
  const times = { 'a thread': await stopsInThread(task), 'a browser': browser?.milliseconds ?? [] }
  return Object.entries(times).flatMap(([where, stops]) =>
    stops.length === 0
      ? []
      : [
          figure(`stopping a plan in ${where}`, 'ms', stops[Math.floor(stops.length / 2)] as number),
          figure(`stopping a plan in ${where}, longest of ${stops.length}`, 'ms', stops.at(-1) as number),
        ],
  )
}

/** How soon the thread of a plan has ended, milliseconds, in order of size. */
async function stopsInThread(task: PlanQuestion): Promise<number[]> {
  // A hole without a green is answered at once: so the thread has started before a plan is begun.
  const first = { ...task, hole: { ...task.hole, green: null } }
  const pool = planPool(1)
  const times: number[] = []
  for (const after of STOP_AFTER) {
    for await (const _settled of pool.run([first]));
    const stop = new AbortController()
    let from = 0
    setTimeout(() => {
      from = performance.now()
      stop.abort()
    }, after)
    try {
      for await (const _settled of pool.run([task], { signal: stop.signal }))
        throw new Error('the plan was done before it was stopped')
    } catch (error) {
      if (!stop.signal.aborted) throw error
    }
    times.push(performance.now() - from)
  }
  await pool.close()
  return times.sort((a, b) => a - b)
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

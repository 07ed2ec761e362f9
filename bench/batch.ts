// A round of the example course for many players as `marram plan` does it: wall time with one thread and with two, peak
// memory, and how soon a plan in the middle of its work is stopped. Takes minutes, so it stands beside `npm run bench`:
// `npm run bench-batch -- [--players 40] [--hole REF] [--json]`; for fewer players than 40 it says what 40 would take by what
// each further player took, and calls that extrapolated.
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { inventedPlayer } from './invented-player.ts'
import { stopFigures } from './stop-figures.ts'
import { buildBundle, timedRun } from './timed-run.ts'

/** One figure of a batch: wall time, memory, or a speed-up, which is a ratio of two wall times of the same run. */
export interface BatchFigure {
  readonly name: string
  readonly unit: 'ms' | 'MB' | '×'
  readonly median: number
  readonly ratio: number | null
  readonly against: string | null
}

const ROOT = fileURLToPath(new URL('..', import.meta.url))
const BUNDLE = join(ROOT, 'dist/bench')
const COURSE = join(ROOT, 'examples/sandrel-ness.course.geojson')
/** Without draws and flips: the solve and the plan alone, as for a page of rounds in a hurry. */
const PACE = ['--no-flips', '--draws', '0']
/** Enough that both threads have many holes, few enough for a coffee. */
const PLAYERS = 2
/** A batch of the size that a club asks for. */
const MANY_PLAYERS = 40

/** Plans every hole, or one, for so many invented players, from scratch to near 36, with one thread and with two. */
export async function batchFigures(players: number = PLAYERS, hole: string = 'all'): Promise<BatchFigure[]> {
  const folder = mkdtempSync(join(tmpdir(), 'marram-bench-'))
  try {
    buildBundle(BUNDLE)
    const files = Array.from({ length: players }, (_, index) => inventedPlayer(folder, index, players))
    const one = await planned(files, hole, 1)
    const two = await planned(files, hole, 2)
    const nameOf = (count: number): string => `holes × players: ${one.plans / players} × ${count}`
    const [alone, both] = [`${nameOf(players)}, 1 thread`, `${nameOf(players)}, 2 threads`]
    return [
      figure(alone, 'ms', one.milliseconds),
      { ...figure(both, 'ms', two.milliseconds), ratio: two.milliseconds / one.milliseconds, against: alone },
      figure('speed-up of 2 threads over 1', '×', one.milliseconds / two.milliseconds),
      figure(`peak memory, ${alone}`, 'MB', one.megabytes),
      figure(`peak memory, ${both}`, 'MB', two.megabytes),
      ...(players > 1 ? await growth() : []),
      ...(await stopFigures()).flatMap(({ name, middle, percentile95 }) => [
        figure(name, 'ms', middle),
        figure(`${name}, 95th percentile`, 'ms', percentile95),
      ]),
    ]

    /** Half of the players beside all of them: what each further one takes, and so what many would. */
    async function growth(): Promise<BatchFigure[]> {
      const count = Math.floor(players / 2)
      const { milliseconds } = await planned(files.slice(0, count), hole, 2)
      const few = `${nameOf(count)}, 2 threads`
      const each = (two.milliseconds - milliseconds) / (players - count)
      const many = two.milliseconds + (MANY_PLAYERS - players) * each
      return [
        figure(few, 'ms', milliseconds),
        { ...figure('each further player, 2 threads', 'ms', each), ratio: each / milliseconds, against: few },
        ...(players < MANY_PLAYERS
          ? [figure(`${nameOf(MANY_PLAYERS)}, 2 threads, extrapolated`, 'ms', many)]
          : []),
      ]
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
    rmSync(BUNDLE, { recursive: true, force: true })
  }
}

function figure(name: string, unit: BatchFigure['unit'], median: number): BatchFigure {
  return { name, unit, median, ratio: null, against: null }
}

/** One round planned as a person would start it. */
async function planned(
  files: readonly string[],
  hole: string,
  workers: number,
): Promise<{ readonly milliseconds: number; readonly megabytes: number; readonly plans: number }> {
  const players = files.flatMap((file) => ['--player', file])
  const asked = ['plan', COURSE, ...players, '--hole', hole, ...PACE]
  const { lines, ...run } = await timedRun([...asked, '--workers', String(workers), '--json-lines'], BUNDLE)
  return { ...run, plans: lines }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values } = parseArgs({
    options: { players: { type: 'string' }, hole: { type: 'string' }, json: { type: 'boolean' } },
  })
  const figures = await batchFigures(values.players ? Number(values.players) : PLAYERS, values.hole)
  if (values.json) console.log(JSON.stringify(figures, null, 2))
  else
    for (const { name, unit, median } of figures)
      console.log(`${name.padEnd(52)} ${median.toFixed(unit === '×' ? 2 : 0).padStart(9)} ${unit}`)
}

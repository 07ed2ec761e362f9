// Peak resident memory: of one plan by the command line as it is built, and of a round of many players solved one after
// another in one process, hole by hole. `npm run bench-memory -- [--players 3] [--json]`; takes some ten minutes.
import { spawnSync } from 'node:child_process'
import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { completePlayer } from '../src/golf/player/complete-player.ts'
import { parsePlayer } from '../src/golf/player/parse-player.ts'
import { holeModel } from '../src/golf/strategy/hole-model.ts'
import { keptGround } from '../src/golf/strategy/kept-ground.ts'
import { solveHole } from '../src/golf/strategy/solve-hole.ts'
import { exampleHole, windyDay } from './example.ts'

/** Most memory that a process held at any time. */
interface MemoryFigure {
  readonly name: string
  readonly megabytes: number
}

const ROOT = fileURLToPath(new URL('..', import.meta.url))
/** Gorse along it, and woods, which have the largest tables. */
const PLANNED = ['7', '12']
const PLAYERS = 3
const HOLES = 18
/** Cells and strikes of the round: coarse, since what is asked is whether memory grows from hole to hole and player to player. */
const ROUND = { cellMetres: 6, quadrature: { good: 12, mishit: 4 } } as const
const KILOBYTES = 1024
/** Says at the very end, and only once for all threads, how much memory the process had at most, in kilobytes. */
const SAY_PEAK = `data:text/javascript,${encodeURIComponent(
  `import { isMainThread } from 'node:worker_threads'
   if (isMainThread) process.on('exit', () => console.error('peak', process.resourceUsage().maxRSS))`,
)}`

const { values: asked } = parseArgs({
  options: { players: { type: 'string' }, json: { type: 'boolean' }, solve: { type: 'string' } },
})
// This file is also the process whose memory is measured.
if (asked.solve !== undefined) solveRound(Number(asked.solve))
else print([...planFigures(), ...roundFigures(Number(asked.players ?? PLAYERS))])

function planFigures(): MemoryFigure[] {
  const bundle = join(ROOT, 'dist/bench-memory')
  try {
    run([join(ROOT, 'tools/build.mjs'), bundle])
    return PLANNED.map((hole) => {
      const words = [
        'plan',
        'examples/sandrel-ness.course.geojson',
        '--hole',
        hole,
        '--no-flips',
        '--draws',
        '0',
      ]
      const said = run(
        ['--import', SAY_PEAK, 'bin/marram.js', ...words, '--player', 'examples/aldous-brack.player.json'],
        { MARRAM_BUNDLE: join(bundle, 'marram.js') },
      )
      return { name: `plan of hole ${hole} without draws and flips`, megabytes: peakOf(said) }
    })
  } finally {
    rmSync(bundle, { recursive: true, force: true })
  }
}

/** The same round for one player and for many: what the many need more is what is kept from one to the next. */
function roundFigures(players: number): MemoryFigure[] {
  return [1, players].map((count) => {
    const said = run(['--import', 'tsx', '--import', SAY_PEAK, 'bench/memory.ts', '--solve', String(count)])
    return {
      name: `${HOLES} holes × ${count} players, cells of ${ROUND.cellMetres} m`,
      megabytes: peakOf(said),
    }
  })
}

function solveRound(players: number): void {
  const groundOf = keptGround()
  for (let hole = 1; hole <= HOLES; hole++)
    for (let index = 0; index < players; index++) {
      const handicapIndex = Math.round((360 * index) / players) / 10
      const hand = index % 8 === 0 ? 'left' : 'right'
      const player = { schema: 'player/1', name: `Player ${index + 1}`, hand, handicapIndex }
      const ground = groundOf(exampleHole(String(hole)), ROUND.cellMetres)
      const model = holeModel(ground, completePlayer(parsePlayer(JSON.stringify(player), 'bench')), windyDay)
      if (!solveHole(model, ROUND.quadrature).solution.converged) throw new Error('a hole was not solved')
    }
}

/** What a process said, on the side of errors. Throws when it failed. */
function run(words: readonly string[], environment: Readonly<Record<string, string>> = {}): string {
  const { status, stderr } = spawnSync(process.execPath, words, {
    cwd: ROOT,
    env: { ...process.env, ...environment },
    encoding: 'utf8',
    stdio: ['ignore', 'ignore', 'pipe'],
  })
  if (status !== 0) throw new Error(`${words.join(' ')} failed: ${stderr}`)
  return stderr
}

function peakOf(said: string): number {
  const kilobytes = Number(/^peak (\d+)$/m.exec(said)?.[1])
  if (!(kilobytes > 0)) throw new Error(`no peak was told: ${said}`)
  return kilobytes / KILOBYTES
}

function print(figures: readonly MemoryFigure[]): void {
  if (asked.json) console.log(JSON.stringify(figures, null, 2))
  else
    for (const { name, megabytes } of figures)
      console.log(`${name.padEnd(48)} ${megabytes.toFixed(0).padStart(5)} MB`)
}

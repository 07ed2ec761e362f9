import { type ChildProcess, type ChildProcessByStdio, spawn } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Readable } from 'node:stream'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import Database from 'libsql'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { openStore } from '#outside/store/open-store.ts'

// The promise: a save that was answered is on disk, whatever happens to the program afterwards. Twenty times the
// server is killed with signal 9 while several saves are under way, started again on the same store, and asked.

const ROUNDS = 20
const repository = fileURLToPath(new URL('../..', import.meta.url))
const storeFolder = mkdtempSync(join(tmpdir(), 'marram-kill-'))
// Inside the repository, because the bundle finds its packages from where it lies.
const bundleFolder = mkdtempSync(join(repository, 'node_modules/.marram-kill-'))
const storePath = join(storeFolder, 'store.db')
const bundle = join(bundleFolder, 'server.mjs')

beforeAll(async () => {
  await build({
    entryPoints: [join(repository, 'src/apps/server/main.ts')],
    outfile: bundle,
    bundle: true,
    // All in one file but the native driver: it starts in half the time, and this test starts it often.
    external: ['libsql'],
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'error',
  })
})

let child: ChildProcess | null = null
afterEach(() => {
  child?.kill('SIGKILL')
})
afterAll(() => {
  for (const folder of [storeFolder, bundleFolder]) rmSync(folder, { recursive: true, force: true })
})

/** Starts the server on any free port and returns its address once it answers. */
async function startChild(): Promise<string> {
  const started = spawnChild(storePath)
  const [line] = (await once(started.stdout, 'data')) as [Buffer]
  return line.toString().trim()
}

function spawnChild(store: string): ChildProcessByStdio<null, Readable, null> {
  const started = spawn(process.execPath, [bundle, '--port', '0', '--store', store, '--web', storeFolder], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  child = started
  return started
}

async function killChild(): Promise<void> {
  if (child === null) return
  const ended = once(child, 'exit')
  child.kill('SIGKILL')
  await ended
  child = null
}

/** Everything sent for one document, and what was answered. */
interface History {
  /** Text by revision, for each save that was answered. */
  readonly answered: Map<number, string>
  /** Texts that were sent and not answered. */
  readonly unanswered: Set<string>
  answers: number
}

const random = seededGenerator(20261125)
let serial = 0

/** A plan of 1 to about 60 KB that exists once. */
function newPlan(id: string): string {
  serial += 1
  const note = String(serial)
    .padStart(8, '0')
    .repeat(1 + Math.floor(random() * 8000))
  return JSON.stringify({
    schema: 'plan/1',
    course: 'Killed course',
    hole: { ref: id, par: 4, length_m: 300 },
    player: 'Nobody',
    value: { strokes: 5 },
    verdict: 'close',
    options: [{ club: '5-wood', strokes: 5, cost: 0 }],
    sentence: `Save ${serial}: ${note}`,
  })
}

/** Saves one document again and again until the server is gone. */
async function keepSaving(
  address: string,
  id: string,
  history: History,
  isConditional: boolean,
): Promise<void> {
  for (;;) {
    const text = newPlan(id)
    history.unanswered.add(text)
    const last = Math.max(0, ...history.answered.keys())
    const condition: Record<string, string> =
      last === 0 ? { 'if-none-match': '*' } : { 'if-match': `"${last}"` }
    try {
      const answer = await fetch(`${address}api/plans/${id}`, {
        method: 'PUT',
        body: text,
        headers: { 'content-type': 'application/json', ...(isConditional ? condition : {}) },
      })
      if (!answer.ok) throw new Error(`save of ${id} was refused: ${answer.status} ${await answer.text()}`)
      const { revision } = (await answer.json()) as { revision: number }
      history.unanswered.delete(text)
      history.answered.set(revision, text)
      history.answers += 1
    } catch (error) {
      // Node's fetch says TypeError when the other side is gone; anything else is a fault of the server.
      if (error instanceof TypeError) return
      throw error
    }
  }
}

function answersOf(histories: ReadonlyMap<string, History>): number {
  return [...histories.values()].reduce((sum, { answers }) => sum + answers, 0)
}

function pause(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds))
}

/** Asks for the document and compares it with its history; then that is the new beginning. */
async function verify(address: string, id: string, history: History): Promise<void> {
  const response = await fetch(`${address}api/plans/${id}`)
  const last = Math.max(0, ...history.answered.keys())
  if (response.status === 404) {
    expect(last).toBe(0)
  } else {
    const text = await response.text()
    const revision = Number(JSON.parse(response.headers.get('etag') ?? '""'))
    expect(revision).toBeGreaterThanOrEqual(last)
    if (revision === last) expect(text === history.answered.get(last)).toBe(true)
    else expect(history.unanswered.has(text)).toBe(true)
    history.answered.clear()
    history.answered.set(revision, text)
  }
  history.unanswered.clear()
}

describe('a server killed in the middle of saving', () => {
  it(`has every save that it answered, ${ROUNDS} times over`, async () => {
    const singles = ['first', 'second', 'third']
    const ids = [...singles, 'crowded']
    const histories = new Map<string, History>(
      ids.map((id) => [id, { answered: new Map(), unanswered: new Set(), answers: 0 }]),
    )
    const historyOf = (id: string): History => histories.get(id)!
    let cutShort = 0

    let address = await startChild()
    for (let round = 0; round < ROUNDS; round += 1) {
      const saves = [
        ...singles.map((id) => keepSaving(address, id, historyOf(id), true)),
        // Three at once on one document, none waiting for the other's revision.
        ...[1, 2, 3].map(() => keepSaving(address, 'crowded', historyOf('crowded'), false)),
      ]
      // After some answers and a moment more, so that a slow machine does as many saves as a fast one.
      const enough = answersOf(histories) + 5 + Math.floor(random() * 20)
      const tooEarly = Promise.race(saves).then(() => {
        throw new Error('a save found no server before it was killed')
      })
      while (answersOf(histories) < enough) await Promise.race([pause(1), tooEarly])
      await pause(random() * 30)
      for (const { unanswered } of histories.values()) cutShort += unanswered.size
      await killChild()
      await Promise.all(saves)

      address = await startChild()
      for (const id of ids) await verify(address, id, historyOf(id))
    }
    await killChild()

    const connection = new Database(storePath)
    expect(connection.pragma('integrity_check')).toEqual([{ integrity_check: 'ok' }])
    connection.close()
    // Without these the test would prove nothing: saves were answered, and each kill met saves under way.
    expect(answersOf(histories)).toBeGreaterThanOrEqual(5 * ROUNDS)
    expect(cutShort).toBeGreaterThan(ROUNDS * ids.length)
  })

  it('starts again after being killed while it made its store', async () => {
    for (let round = 0; round < 6; round += 1) {
      const path = join(storeFolder, `new-${round}.db`)
      const started = spawnChild(path)
      while (!existsSync(path) && started.exitCode === null) await pause(1)
      await pause(random() * 20)
      expect(started.exitCode).toBeNull()
      await killChild()
      const store = await openStore(path)
      expect(await store.days.put('may', 'May', '{}')).toBe(1)
      await store.close()
    }
  })
})

import { spawn, spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('..', import.meta.url))

/** Builds the command line into a folder of its own, so that a source saved in the middle of a run changes nothing. */
export function buildBundle(folder: string): void {
  const built = spawnSync(process.execPath, ['tools/build.mjs', folder], { cwd: ROOT })
  if (built.status !== 0) throw new Error(`the bundle was not built: ${built.stderr}`)
}

/** Says at the very end, and only once for all threads, how much memory the process had at most, in kilobytes, and its processor time in microseconds. */
const SAY_USE = `data:text/javascript,${encodeURIComponent(
  `import { isMainThread } from 'node:worker_threads'
   if (isMainThread)
     process.on('exit', () => {
       const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage()
       console.error('used', maxRSS, userCPUTime + systemCPUTime)
     })`,
)}`

/** What one run of the command line took: wall time, processor time of all its threads, peak memory; and how many lines it printed. */
export interface TimedRun {
  readonly milliseconds: number
  readonly processorMilliseconds: number
  readonly megabytes: number
  readonly lines: number
}

/** One run of the command line in that folder as a person would start it. */
export async function timedRun(words: readonly string[], folder: string): Promise<TimedRun> {
  const started = performance.now()
  const child = spawn(process.execPath, ['--import', SAY_USE, join(ROOT, 'bin/marram.js'), ...words], {
    env: { ...process.env, MARRAM_BUNDLE: join(folder, 'marram.js') },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let [lines, said] = [0, '']
  child.stdout.on('data', (text: Buffer) => {
    for (const byte of text) if (byte === NEW_LINE) lines += 1
  })
  child.stderr.on('data', (text: Buffer) => {
    said += text.toString()
  })
  const status = await new Promise((resolve) => child.on('close', resolve))
  const milliseconds = performance.now() - started
  const [kilobytes = 0, microseconds = 0] = (/^used (\d+) (\d+)$/m.exec(said) ?? []).slice(1).map(Number)
  if (status !== 0 || kilobytes === 0) throw new Error(`marram ${words[0]} did not end well: ${said}`)
  return {
    milliseconds,
    processorMilliseconds: microseconds / 1000,
    megabytes: kilobytes / 1024,
    lines,
  }
}

const NEW_LINE = 10

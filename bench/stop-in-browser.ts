import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { chromium } from 'playwright-core'
import type { PlanQuestion } from '../src/golf/strategy/plan-hole.ts'

/** Where Debian's package puts the browser; `CHROMIUM` names another place. */
const BROWSER = process.env.CHROMIUM ?? '/usr/bin/chromium'
const ROOT = fileURLToPath(new URL('..', import.meta.url))
const ADDRESS = 'https://bench.invalid'

const WORKER = "import '#apps/web/planning/plan-worker.ts'"
const PAGE = `
import { workerLane } from '#outside/workers/worker-lane.ts'
let spawned = 0
const lane = workerLane(() => {
  spawned += 1
  return new Worker('${ADDRESS}/worker.js', { type: 'module' })
})
globalThis.stopPlan = async (question, first, stopAfter) => {
  await lane.run(first, new AbortController().signal)
  const stop = new AbortController()
  let from = 0
  setTimeout(() => {
    from = performance.now()
    stop.abort()
  }, stopAfter)
  try {
    await lane.run(question, stop.signal)
  } catch (error) {
    if (stop.signal.aborted) return { milliseconds: performance.now() - from, spawned }
    throw error
  }
  throw new Error('the plan was done before it was stopped')
}`

/**
 * How soon a plan in a worker of headless Chromium is stopped, milliseconds, each time so long after it was begun, in order
 * of size; and how many workers it took: one, when all stopped by themselves. `null` where there is no Chromium.
 */
export async function stopsInBrowser(
  question: PlanQuestion,
  stopAfter: readonly number[],
): Promise<{ readonly milliseconds: readonly number[]; readonly workers: number } | null> {
  if (!existsSync(BROWSER)) return null
  const profile = mkdtempSync(join(tmpdir(), 'marram-bench-browser-'))
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: BROWSER,
    headless: true,
    args: [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--no-first-run',
      '--disable-background-networking',
    ],
  })
  try {
    const served: Record<string, readonly [type: string, body: string]> = {
      '/': ['text/html', '<!doctype html><title>bench</title><script type="module" src="/page.js"></script>'],
      '/page.js': ['text/javascript', await bundled(PAGE)],
      '/worker.js': ['text/javascript', await bundled(WORKER)],
    }
    await context.route(`${ADDRESS}/**`, (route) => {
      const [contentType, body] = served[new URL(route.request().url()).pathname] ?? ['text/plain', '']
      return route.fulfill({ body, headers: { ...HEADERS, 'content-type': contentType } })
    })
    const page = await context.newPage()
    await page.goto(`${ADDRESS}/`)
    await page.waitForFunction('"stopPlan" in globalThis')
    const asked = { kind: 'plan', club: null, isFirst: false, ...question }
    // A hole without a green is answered at once: so the worker has started before a plan is begun.
    const first = { ...asked, hole: { ...question.hole, green: null } }
    const stops: { readonly milliseconds: number; readonly spawned: number }[] = []
    for (const after of stopAfter)
      stops.push(
        await page.evaluate(`stopPlan(${JSON.stringify(asked)}, ${JSON.stringify(first)}, ${after})`),
      )
    return {
      milliseconds: stops.map(({ milliseconds }) => milliseconds).sort((a, b) => a - b),
      workers: stops.at(-1)?.spawned ?? 0,
    }
  } finally {
    await context.close()
    rmSync(profile, { recursive: true, force: true })
  }
}

/** As the server of the hole desk sends them: only so may a page share memory with its workers. */
const HEADERS = {
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-embedder-policy': 'require-corp',
}

async function bundled(contents: string): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: ROOT, loader: 'ts' },
    bundle: true,
    format: 'esm',
    write: false,
  })
  return outputFiles[0]?.text ?? ''
}

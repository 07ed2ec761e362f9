import type { PlanQuestion } from '../src/golf/strategy/plan-hole.ts'
import { BUNDLED_ADDRESS, bundledPage } from '../tools/bundled-page.ts'
import { hasBrowser, openBrowser } from '../tools/open-browser.ts'

const WORKER = "import '#apps/web/planning/plan-worker.ts'"
const PAGE = `
import { workerLane } from '#outside/workers/worker-lane.ts'
let spawned = 0
const lane = workerLane(() => {
  spawned += 1
  return new Worker('${BUNDLED_ADDRESS}/worker.js', { type: 'module' })
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
  if (!hasBrowser()) return null
  const { context, close } = await openBrowser()
  try {
    const page = await bundledPage(context, { page: PAGE, worker: WORKER, ready: 'stopPlan' })
    const { courseName, hole, player, day } = question
    const asked = {
      kind: 'plan',
      ...{ courseName, hole, player, day, units: 'yards', ball: null, club: null, format: null, near: null },
      isFirst: false,
      hasFlips: false,
    }
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
    await close()
  }
}

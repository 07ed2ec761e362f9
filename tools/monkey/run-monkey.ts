import type { Page } from 'playwright-core'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import type { ServedDesk } from '../served-desk.ts'
import { actByChance, type Hands } from './acts.ts'
import { watchDocuments } from './documents.ts'
import { watchExceptions } from './exceptions.ts'
import { type Heap, type HeapMeter, heapMeter } from './heap.ts'
import { reloadAndCompare } from './reload.ts'

/** How a run goes. */
export interface MonkeyOptions {
  readonly seed: number
  /** It ends when this is true of what was done so far. */
  readonly isOver: (acts: number) => boolean
  /** Acts between two reloads, on average. */
  readonly actsPerReload: number
  /** Seconds between two looks at the memory, each of which waits for a plan; `null` = it is not looked at. */
  readonly secondsPerLook: number | null
  readonly tell: (words: string) => void
}

/** What a run came to. */
export interface MonkeyReport {
  readonly acts: number
  readonly reloads: number
  readonly documents: number
  readonly exceptions: readonly string[]
  readonly lost: readonly string[]
  /** Megabytes that page and workers held at most before they were loaded again, beyond what the same desk then needs; of workers only where they were at rest both times. */
  readonly growth: number
}

/** Clicks, drags and types by chance, and says what went wrong. The same seed does the same as far as the page is as quick. */
export async function runMonkey(desk: ServedDesk, options: MonkeyOptions): Promise<MonkeyReport> {
  const { page, address } = desk
  const random = seededGenerator(options.seed)
  const { context } = desk.browser
  const hands: Hands = { page, context, address, random }
  const exceptions = watchExceptions(page)
  page.on('dialog', (dialog) => void dialog.dismiss().catch(() => {}))
  await page.addInitScript('window.print = () => {}')
  await page.goto(address)
  await page.locator('main:not([aria-busy=true])').waitFor()
  const documents = watchDocuments(page, address)
  const memory = await memoryWatch(page, address, await heapMeter(context, page), options)
  const lost: string[] = []
  const recent: string[] = []
  let [acts, reloads] = [0, 0]
  let isOver = false
  while (!isOver) {
    const known = exceptions.all.length
    recent.push(await actByChance(hands))
    acts += 1
    await nextTurn(page)
    await exceptions.look()
    if (exceptions.all.length > known) {
      for (const words of exceptions.all.slice(known))
        options.tell(`EXCEPTION ${words}\n  after: ${recent.slice(-8).join(' / ')}`)
      // A page with a defect stands still: it is loaded again, and the run goes on.
      await page.goto(`${address}#/desk`)
      await page.reload()
    }
    isOver = options.isOver(acts)
    if (random() < 1 / options.actsPerReload || isOver) {
      reloads += 1
      await memory.look(`act ${acts}, before loading again`)
      const missing = await reloadAndCompare(page)
      for (const words of missing) options.tell(`LOST ${words}\n  after: ${recent.slice(-8).join(' / ')}`)
      lost.push(...missing)
      await memory.lookAgain()
    }
    await memory.lookInTime(`act ${acts}`)
    if (recent.length > 20) recent.shift()
  }
  await context.setOffline(false)
  await page.evaluate(`dispatchEvent(new Event('online'))`)
  const missing = await documents.lost()
  for (const words of missing) options.tell(`LOST ${words}`)
  return {
    acts,
    reloads,
    documents: documents.count(),
    exceptions: exceptions.all,
    lost: [...lost, ...missing],
    growth: memory.growth(),
  }
}

/** Lets the page take in what was done. What was done may have led to another page, which takes the question with it. */
async function nextTurn(page: Page): Promise<void> {
  await page
    .evaluate(`new Promise((done) => requestAnimationFrame(() => setTimeout(done)))`)
    .catch(async (error: Error) => {
      if (!error.message.includes('Execution context was destroyed')) throw error
      await page.waitForLoadState()
    })
}

/**
 * Follows the memory. It is looked at on the desk with its plan worked out; afterwards the page is again where it was. What
 * a desk needs differs from hole to hole by more than it may grow, so growth is what goes when the same desk is loaded anew.
 */
async function memoryWatch(page: Page, address: string, meter: HeapMeter, options: MonkeyOptions) {
  const began = Date.now()
  let last: Heap = { page: 0, workers: 0, nodes: 0, listeners: 0 }
  let lookedAt = 0
  let isAtRest = false
  let growth = 0
  const look = async (when: string): Promise<void> => {
    if (options.secondsPerLook === null) return
    const place = new URL(page.url()).hash
    await page.goto(`${address}#/desk`)
    isAtRest = await page
      .locator('.state:empty')
      .waitFor({ state: 'attached', timeout: REST_MILLISECONDS })
      .then(
        () => true,
        () => false,
      )
    last = await meter.measure()
    await page.goto(address + place)
    lookedAt = Date.now()
    const minutes = ((lookedAt - began) / 60_000).toFixed(1)
    options.tell(
      `${minutes} min, ${when}: ${last.page.toFixed(1)} MB page, ${last.workers.toFixed(1)} MB workers, ${last.nodes} nodes, ${last.listeners} listeners${isAtRest ? '' : ', still at work'}`,
    )
  }
  await look('the start')
  return {
    look,
    /** The page was loaded again after the last look. */
    async lookAgain() {
      const [before, wasAtRest] = [last, isAtRest]
      await look('loaded again')
      // A worker in the middle of a plan holds what it will let go: only rest is held against rest.
      const workers = wasAtRest && isAtRest ? before.workers - last.workers : 0
      growth = Math.max(growth, before.page - last.page + workers)
    },
    async lookInTime(when: string) {
      if (Date.now() - lookedAt > (options.secondsPerLook ?? 0) * 1000) await look(when)
    },
    growth: () => growth,
  }
}

/** A desk in trouble never has its plan: it is measured as it is after this. */
const REST_MILLISECONDS = 90_000

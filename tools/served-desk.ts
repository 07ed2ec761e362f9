import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'
import { build } from 'vite'
import type { MapSource } from '#apps/server/map-tiles.ts'
import { type RunningServer, startServer } from '#apps/server/start-server.ts'
import { type OpenBrowser, openBrowser } from './open-browser.ts'

const ROOT = fileURLToPath(new URL('..', import.meta.url))
const AXE = readFileSync(join(ROOT, 'node_modules/axe-core/axe.min.js'), 'utf8')
/** Waits are long because the machine may be busy; nothing measures time. */
export const PATIENCE = 90_000

/** Names the environment variable with the folder of pages that were built already; a desk gets a copy of its own. */
export const BUILT_PAGES = 'MARRAM_BUILT_PAGES'

/** The desk as it is built now, served with the examples from a store of its own, and a browser to open it in. */
export interface ServedDesk {
  readonly address: string
  /** Where the built pages lie. */
  readonly folder: string
  readonly browser: OpenBrowser
  /** A page that notes its errors in `troubles`, from which a test takes those that it brings about. */
  readonly page: Page
  readonly troubles: string[]
  /** Stops the server and leaves the browser; starts it again at the same address with the same store. */
  stopServer(): Promise<void>
  startServer(): Promise<void>
  close(): Promise<void>
}

/** `map`: a map to trace over, as the server is started with one. */
export async function serveDesk(map?: MapSource): Promise<ServedDesk> {
  const folder = mkdtempSync(join(tmpdir(), 'marram-desk-'))
  const built = process.env[BUILT_PAGES]
  if (built === undefined) await buildPages(join(folder, 'web'))
  else cpSync(built, join(folder, 'web'), { recursive: true })
  const start = (port: number): Promise<RunningServer> =>
    startServer({
      port,
      storePath: join(folder, 'store.db'),
      webRoot: join(folder, 'web'),
      examplesFolder: join(ROOT, 'examples'),
      ...(map === undefined ? {} : { map }),
    })
  let server = await start(0)
  const { address, port } = server
  const browser = await openBrowser()
  const page = await browser.context.newPage()
  page.setDefaultTimeout(PATIENCE)
  const troubles: string[] = []
  page.on('pageerror', (error) => troubles.push(error.message))
  page.on('console', (message) => message.type() === 'error' && troubles.push(message.text()))
  return {
    address,
    folder: join(folder, 'web'),
    browser,
    page,
    troubles,
    stopServer: () => server.close(),
    async startServer() {
      server = await start(port)
    },
    async close() {
      await browser.close()
      await server.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

/** Builds the pages as `npm start` does: a test run calls itself by another name, for which React builds a slower self. */
export async function buildPages(outDir: string): Promise<void> {
  const { NODE_ENV } = process.env
  process.env.NODE_ENV = 'production'
  try {
    await build({
      configFile: join(ROOT, 'vite.config.ts'),
      build: { outDir, emptyOutDir: true },
      logLevel: 'error',
    })
  } finally {
    if (NODE_ENV === undefined) delete process.env.NODE_ENV
    else process.env.NODE_ENV = NODE_ENV
  }
}

/** Opens a hole of the desk and waits for its plan. */
export async function openHole({ page, address }: ServedDesk, ref: string): Promise<void> {
  await page.goto(address)
  const hole = page.getByLabel('Hole', { exact: true })
  await hole.or(page.getByRole('alert')).first().waitFor()
  if ((await hole.count()) > 0) await hole.selectOption(ref)
  await planned(page)
}

/** Waits until the plan at hand is of what is on the desk. Throws with what the desk says when it is in trouble. */
export async function planned(page: Page): Promise<void> {
  const answered = page.locator('.sentence:not(.waiting) .plan-sentence:not(:empty)')
  const trouble = page.getByRole('alert')
  await answered.or(trouble).first().waitFor()
  if ((await trouble.count()) > 0) throw new Error(`The desk says: ${await trouble.first().textContent()}`)
}

/** What axe finds, contrast at 7:1 included, as lines that say where; the contrast in each light the page can be read in. */
export async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE)
  return page.evaluate(`(async () => {
    const found = async (name, options) => {
      const { violations } = await axe.run(document, { resultTypes: ['violations'], ...options })
      return violations.map((v) => name + v.id + ': ' + v.nodes.map((n) => n.target.join(' ')).join(', '))
    }
    const faults = await found('', { rules: { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } } })
    const { dataset } = document.documentElement
    const asFound = dataset.theme
    for (const theme of ['day', 'night', 'sun'].filter((each) => each !== asFound)) {
      dataset.theme = theme
      faults.push(...await found(theme + ' ', { runOnly: ['color-contrast', 'color-contrast-enhanced'] }))
    }
    dataset.theme = asFound
    return faults
  })()`)
}

/** What there is to hit under 48 px, and how large it is. */
export async function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate(
    `[...document.querySelectorAll('a, button, select, input, [role=slider]')]
      .filter((e) => e.checkVisibility())
      .map((e) => [e.getAttribute('aria-label') ?? e.textContent.slice(0, 20), e.getBoundingClientRect()])
      .filter(([, box]) => box.width < 48 || box.height < 48)
      .map(([name, box]) => name + ' ' + box.width + ' × ' + box.height)`,
  )
}

/** What makes the page scroll sideways: its width and the first things that lie beyond its side; none where it does not. */
export async function beyondTheSide(page: Page): Promise<string[]> {
  return page.evaluate(`(() => {
    const { clientWidth, scrollWidth } = document.documentElement
    if (scrollWidth <= clientWidth) return []
    const beyond = [...document.querySelectorAll('body :not(svg *, .chart *)')]
      .filter((each) => each.getBoundingClientRect().right > clientWidth + 1)
    return [scrollWidth + ' px', ...beyond.slice(0, 8).map((each) => each.outerHTML.slice(0, 80))]
  })()`)
}

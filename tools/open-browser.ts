import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type BrowserContext, chromium } from 'playwright-core'

/** Where Debian's package puts the browser; `CHROMIUM` names another place. */
const BROWSER = process.env.CHROMIUM ?? '/usr/bin/chromium'

/** A browser with a fresh profile, and how to be rid of both. */
export interface OpenBrowser {
  readonly context: BrowserContext
  close(): Promise<void>
}

/** Whether there is a browser to open on this machine. */
export function hasBrowser(): boolean {
  return existsSync(BROWSER)
}

/** Opens Chromium without a window. Throws with advice when it is not installed. */
export async function openBrowser(): Promise<OpenBrowser> {
  if (!hasBrowser())
    throw new Error(
      `The browser tests need Chromium at ${BROWSER}. On Debian: apt-get install chromium. Elsewhere, set CHROMIUM to its path.`,
    )
  const profile = mkdtempSync(join(tmpdir(), 'marram-browser-'))
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: BROWSER,
    headless: true,
    viewport: { width: 1280, height: 900 },
    args: [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  })
  return {
    context,
    async close() {
      await context.close()
      rmSync(profile, { recursive: true, force: true })
    },
  }
}

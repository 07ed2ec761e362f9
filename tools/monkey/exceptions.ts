import type { Page } from 'playwright-core'

/** Collects what a page should never say: exceptions, errors on its console, a defect in place of the desk. */
export function watchExceptions(page: Page): { readonly all: readonly string[]; look(): Promise<void> } {
  const all: string[] = []
  page.on('pageerror', (error) => all.push(`exception: ${error.stack ?? error.message}`))
  page.on('crash', () => all.push('the page crashed'))
  page.on('console', (message) => {
    // A request that is not answered is written there by the browser itself; the page tells it in its own words.
    if (message.type() === 'error' && !/Failed to load resource|net::ERR_/.test(message.text()))
      all.push(`console: ${message.text()}`)
  })
  return {
    all,
    /** A defect that the page has caught is one all the same: it has no code. */
    async look() {
      const said = (await page.evaluate(
        `[...document.querySelectorAll('.trouble')].filter((e) => e.querySelector('.trouble-code')?.textContent === '' )
          .map((e) => e.textContent)`,
      )) as string[]
      for (const words of said) if (!EXPECTED.test(words) && !all.includes(words)) all.push(words)
    },
  }
}

/** What is asked of a person has no code. */
const EXPECTED = /has no name yet/

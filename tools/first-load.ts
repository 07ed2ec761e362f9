import type { Page } from 'playwright-core'

/** What a page has loaded since it was opened, packed as the server sent it, kB of 1000 bytes. */
export interface FirstLoad {
  /** The page, its scripts, styles and fonts. */
  readonly page: number
  /** The scripts of its workers, which come when the page is there. */
  readonly workers: number
  /** Courses, players and days. */
  readonly documents: number
  /** Of the page and its workers. */
  readonly files: readonly string[]
}

/** Sums what the browser counted, bodies only; what it had kept from another time counts nothing. */
export async function firstLoad(page: Page): Promise<FirstLoad> {
  const loaded = (await page.evaluate(
    `['navigation', 'resource'].flatMap((type) => performance.getEntriesByType(type))
      .map((entry) => [new URL(entry.name).pathname, entry.encodedBodySize])`,
  )) as [string, number][]
  const isDocument = (path: string): boolean => path.startsWith('/api/')
  const isWorker = (path: string): boolean => /-worker/.test(path)
  const seen = new Set<string>()
  // A built file that is asked for again comes out of the browser's own cache, though its size is told again.
  const sent = loaded.filter(([path]) => isDocument(path) || (!seen.has(path) && seen.add(path)))
  const size = (of: (path: string) => boolean): number =>
    sent.reduce((sum, [path, bytes]) => sum + (of(path) ? bytes : 0), 0) / 1000
  return {
    page: size((path) => !isDocument(path) && !isWorker(path)),
    workers: size((path) => isWorker(path)),
    documents: size(isDocument),
    files: sent.map(([path]) => path).filter((path) => !isDocument(path)),
  }
}

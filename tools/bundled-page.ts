import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import type { BrowserContext, Page } from 'playwright-core'

/** Where a bundled page stands: no machine answers there, the browser is handed what is bundled. */
export const BUNDLED_ADDRESS = 'https://bundled.invalid'

/** As the server of the hole desk sends them: only so may a page share memory with its workers. */
const HEADERS = {
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-embedder-policy': 'require-corp',
}
const ROOT = fileURLToPath(new URL('..', import.meta.url))

/**
 * A page that runs one module of the sources, and beside it `/worker.js`, another one, for its workers; there once the
 * page's module has set `ready` on its `globalThis`.
 */
export async function bundledPage(
  context: BrowserContext,
  {
    page: pageModule,
    worker,
    ready,
  }: { readonly page: string; readonly worker: string; readonly ready: string },
): Promise<Page> {
  const served: Record<string, readonly [type: string, body: string]> = {
    '/': ['text/html', '<!doctype html><title>bundled</title><script type="module" src="/page.js"></script>'],
    '/page.js': ['text/javascript', await bundled(pageModule)],
    '/worker.js': ['text/javascript', await bundled(worker)],
  }
  await context.route(`${BUNDLED_ADDRESS}/**`, (route) => {
    const [contentType, body] = served[new URL(route.request().url()).pathname] ?? ['text/plain', '']
    return route.fulfill({ body, headers: { ...HEADERS, 'content-type': contentType } })
  })
  const page = await context.newPage()
  await page.goto(`${BUNDLED_ADDRESS}/`)
  await page.waitForFunction(`${JSON.stringify(ready)} in globalThis`)
  return page
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

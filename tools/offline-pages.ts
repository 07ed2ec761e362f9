import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import type { Plugin } from 'vite'

const WORKER = fileURLToPath(new URL('../src/apps/web/offline/service-worker.ts', import.meta.url))

/** After the build of the pages: writes the service worker that keeps them, with their list, as `service-worker.js`. */
export function offlinePages(): Plugin {
  let folder = ''
  return {
    name: 'offline-pages',
    apply: 'build',
    configResolved(config) {
      folder = config.build.outDir
    },
    async closeBundle() {
      await build({
        entryPoints: [WORKER],
        outfile: join(folder, 'service-worker.js'),
        bundle: true,
        minify: true,
        format: 'iife',
        target: 'es2023',
        define: {
          OFFLINE_PAGES: JSON.stringify(pagesIn(folder)),
          'process.env.NODE_ENV': '"production"',
        },
      })
    },
  }
}

/** Every built file; those named by their content's hash need no other mark. */
function pagesIn(folder: string): { url: string; revision: string | null }[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name !== 'service-worker.js')
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .sort()
    .map((path) => ({
      url: `/${path}`,
      revision: path.startsWith('assets/')
        ? null
        : createHash('sha256')
            .update(readFileSync(join(folder, path)))
            .digest('hex')
            .slice(0, 16),
    }))
}

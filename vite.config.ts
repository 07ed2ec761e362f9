import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'
import { offlinePages } from './tools/offline-pages.ts'
import { packedPages } from './tools/packed-pages.ts'
import { roundPage } from './tools/round-page.ts'

/** The hole desk: built from `src/apps/web` into `dist/web`, workers as modules, every file on the own server. */
export default defineConfig({
  root: fileURLToPath(new URL('src/apps/web', import.meta.url)),
  plugins: [react(), roundPage(), offlinePages(), packedPages()],
  worker: { format: 'es' },
  build: {
    outDir: fileURLToPath(new URL('dist/web', import.meta.url)),
    emptyOutDir: true,
    target: 'es2023',
    // Everything inlined would need a looser content policy.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // Packing the pages takes its seconds on purpose; a person who starts the desk need not read of it.
    rolldownOptions: {
      checks: { pluginTimings: false },
      output: { codeSplitting: { groups: [{ name: 'desk', test: /apps\/web\/page\/open-page\.tsx$/ }] } },
    },
  },
})

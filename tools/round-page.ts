import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { build, type Plugin } from 'vite'

const PAGES = fileURLToPath(new URL('../src/apps/web', import.meta.url))

/**
 * With the build of the desk: builds the page of the round into the same folder, by itself, so that it shares no script with
 * the desk and nothing of the planner is loaded while a round counts.
 */
export function roundPage(): Plugin {
  let folder = ''
  return {
    name: 'round-page',
    apply: 'build',
    configResolved(config) {
      folder = config.build.outDir
    },
    // Before the list of the pages for the time without a server is made, and before they are packed.
    writeBundle: {
      sequential: true,
      order: 'post',
      async handler() {
        await build({
          configFile: false,
          root: PAGES,
          publicDir: false,
          plugins: [react()],
          worker: { format: 'es' },
          logLevel: 'error',
          build: {
            outDir: folder,
            emptyOutDir: false,
            target: 'es2023',
            assetsInlineLimit: 0,
            modulePreload: { polyfill: false },
            rolldownOptions: {
              input: `${PAGES}/round.html`,
              checks: { pluginTimings: false },
              output: { codeSplitting: { groups: [{ name: 'round', test: /round\/round-main\.tsx$/ }] } },
            },
          },
        })
      },
    },
  }
}

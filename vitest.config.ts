import { register } from 'tsx/esm/api'
import { defineConfig } from 'vitest/config'
import { LongestFirst } from './test/longest-first.ts'

// What is set up once a run is TypeScript too.
register()

export default defineConfig({
  test: {
    setupFiles: ['test/seeded-properties.ts'],
    testTimeout: 600_000,
    hookTimeout: 600_000,
    // What a page shows comes when a busy machine has time for it: nothing measures how soon.
    expect: { poll: { timeout: 60_000 } },
    maxWorkers: 2,
    sequence: { sequencer: LongestFirst },
    // No test keeps anything in a module for another, so modules are loaded once a worker and not once a file: a fifth of
    // the whole run.
    isolate: false,
    // Modules are Node's own, as in what is shipped: in Vitest's, every use of an imported name is a call, which makes the
    // solver two to three times slower.
    execArgv: ['--import', 'tsx'],
    experimental: { viteModuleRunner: false, nodeLoader: false },
    projects: [
      { extends: true, test: { name: 'rooms', include: ['src/**/*.test.ts'] } },
      {
        extends: true,
        test: {
          name: 'whole',
          include: ['test/**/*.test.ts'],
          exclude: ['test/e2e/**'],
          globalSetup: 'test/acceptance/build-command-line-once.ts',
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['test/e2e/**/*.test.ts'],
          globalSetup: ['test/e2e/build-pages-once.ts', 'test/acceptance/build-command-line-once.ts'],
        },
      },
    ],
  },
})

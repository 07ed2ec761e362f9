import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    setupFiles: ['test/seeded-properties.ts'],
    testTimeout: 600_000,
    hookTimeout: 600_000,
    // What a page shows comes when a busy machine has time for it: nothing measures how soon.
    expect: { poll: { timeout: 60_000 } },
    maxWorkers: 2,
    projects: [
      // Rooms hold no state between tests, so their modules are loaded once a worker and not once a file: a fifth of the whole run.
      { extends: true, test: { name: 'rooms', include: ['src/**/*.test.ts'], isolate: false } },
      { extends: true, test: { name: 'whole', include: ['test/**/*.test.ts'], exclude: ['test/e2e/**'] } },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['test/e2e/**/*.test.ts'],
          globalSetup: 'test/e2e/build-pages-once.ts',
        },
      },
    ],
  },
})

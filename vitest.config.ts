import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'test/**/*.test.ts'],
    setupFiles: ['test/seeded-properties.ts'],
    testTimeout: 600_000,
    hookTimeout: 600_000,
    // What a page shows comes when a busy machine has time for it: nothing measures how soon.
    expect: { poll: { timeout: 60_000 } },
    maxWorkers: 2,
  },
})

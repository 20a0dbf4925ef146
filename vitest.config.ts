import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/e2e/**', 'tests/perf/**', 'node_modules/**'],
    environment: 'node',
    pool: 'forks',
    // Files share the modules of their worker: importing them anew for every file took a fifth of the time.
    isolate: false,
    maxWorkers: 2,
    testTimeout: 120_000,
    hookTimeout: 240_000,
    allowOnly: false,
    passWithNoTests: false,
    coverage: { provider: 'v8', include: ['lib/**/*.ts'], reporter: ['text-summary'] },
  },
});

import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/e2e/**', 'tests/perf/**', 'node_modules/**'],
    environment: 'node',
    pool: 'forks',
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 120_000,
    allowOnly: false,
    passWithNoTests: false,
    coverage: { provider: 'v8', include: ['lib/**/*.ts'], reporter: ['text-summary'] },
  },
});

import { defineConfig } from 'vitest/config';

/** Three suites: `unit` (with the property tests), `outside` (numbers not made by us), `browser` (the built app). */
export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['tests/{unit,properties}/**/*.test.{ts,tsx}'],
          setupFiles: 'tests/helpers/fixed-seed.ts',
          testTimeout: 30_000,
        },
      },
      {
        extends: true,
        test: { name: 'outside', include: ['tests/outside/**/*.test.ts'], testTimeout: 60_000 },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});

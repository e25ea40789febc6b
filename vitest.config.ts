import { defineConfig } from 'vitest/config';

const cliTests = ['packages/cli/test/**/*.test.ts', 'test/**/*.test.ts'];

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'core',
          include: ['packages/*/test/**/*.test.{ts,tsx}', 'tools/**/*.test.ts'],
          exclude: ['**/node_modules/**', ...cliTests],
          testTimeout: 60_000,
        },
      },
      {
        // these run the built command line
        test: {
          name: 'cli',
          include: cliTests,
          testTimeout: 60_000,
          globalSetup: 'tools/setup/vitest-build.mjs',
        },
      },
    ],
  },
});

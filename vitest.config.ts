import { defineConfig } from 'vitest/config';

const cliTests = ['packages/cli/test/**/*.test.ts', 'test/**/*.test.ts'];
const appTests = ['test/app/**/*.test.ts'];

export default defineConfig({
  test: {
    // every core: the half that waits for a browser or a command leaves it to the other
    maxWorkers: '100%',
    projects: [
      {
        test: {
          name: 'core',
          // plain functions, which leave nothing behind for the next file
          isolate: false,
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
          exclude: ['**/node_modules/**', ...appTests],
          testTimeout: 60_000,
          globalSetup: 'tools/setup/vitest-build.mjs',
          // they expect English, whatever the machine speaks
          env: { LC_ALL: 'C.UTF-8' },
        },
      },
      {
        // these open the built app in Chromium
        test: {
          name: 'app',
          isolate: false,
          include: appTests,
          testTimeout: 60_000,
          globalSetup: 'tools/setup/vitest-build-app.mjs',
        },
      },
    ],
  },
});

import { defineConfig } from 'vitest/config';

const cliTests = ['packages/cli/test/**/*.test.ts', 'test/**/*.test.ts'];
const appTests = ['test/app/**/*.test.ts'];

/** Node reads the files itself: by way of Vite's modules the engine takes three times as long. */
const readByNode = {
  execArgv: ['--import', 'tsx'],
  experimental: { viteModuleRunner: false, nodeLoader: false },
};

export default defineConfig({
  test: {
    // every core: the half that waits for a browser or a command leaves it to the other
    maxWorkers: '100%',
    projects: [
      {
        test: {
          name: 'core',
          ...readByNode,
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
          ...readByNode,
          // warm code and what was read once serve the next file too
          isolate: false,
          include: cliTests,
          exclude: ['**/node_modules/**', ...appTests],
          testTimeout: 60_000,
          globalSetup: 'tools/setup/vitest-build.mjs',
          setupFiles: 'tools/setup/vitest-words.ts',
          // they expect English, whatever the machine speaks
          env: { LC_ALL: 'C.UTF-8' },
        },
      },
      {
        // these open the built app in Chromium
        test: {
          name: 'app',
          ...readByNode,
          isolate: false,
          include: appTests,
          testTimeout: 60_000,
          globalSetup: 'tools/setup/vitest-build-app.mjs',
        },
      },
    ],
  },
});

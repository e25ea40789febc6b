import type { Plugin } from 'vite';

/** Leaves out of what is sent to a phone what only the command line says; test/command-line-words.test.ts holds the app to it. */
export function withoutCommandLine(): Plugin {
  return {
    name: 'without-command-line',
    apply: 'build',
    transform: {
      filter: { id: /words\/src\/[\w-]+\/command-line\// },
      handler(code) {
        const name = /export const (\w+) =/.exec(code)?.[1];
        if (!name) this.error('no messages found to leave out');
        return { code: `export const ${name} = {};`, map: null };
      },
    },
  };
}

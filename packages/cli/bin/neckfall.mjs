#!/usr/bin/env node
import { existsSync } from 'node:fs';

const program = new URL('../dist/neckfall.mjs', import.meta.url);
if (existsSync(program)) {
  await import(program.href);
} else {
  process.stderr.write('Neckfall is not built yet: run `npm run build` in its folder, then this again.\n');
  process.exitCode = 1;
}

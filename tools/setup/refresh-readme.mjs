// node tools/setup/refresh-readme.mjs: runs the examples of the pages that show some and writes down what they print now.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { refreshed } from './readme-examples.mjs';
import { build, root } from './steps.mjs';

await build();
for (const name of ['README.md', 'docs/weather-files.md']) {
  const page = join(root, name);
  writeFileSync(page, refreshed(readFileSync(page, 'utf8')));
}

// node tools/setup/refresh-readme.mjs: runs the examples of README.md and writes down what they print now.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { refreshed } from './readme-examples.mjs';
import { build, root } from './steps.mjs';

await build();
const readme = join(root, 'README.md');
writeFileSync(readme, refreshed(readFileSync(readme, 'utf8')));

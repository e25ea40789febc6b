/** Writes docs/learning.md and docs/learning.svg: `npm run twins [-- --out FOLDER]`. About five minutes. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { demoSeason } from './demo.ts';
import { learningFigure } from './figure.ts';
import { learningPage } from './page.ts';
import { settings } from './places.ts';
import { allowed, plantsAlone, studyOf } from './study.ts';

const { values } = parseArgs({ options: { out: { type: 'string' } } });
const folder = values.out ?? fileURLToPath(new URL('../../docs', import.meta.url));
const each = 20;
const demo = demoSeason();
const studied = settings().map((setting, at) => ({
  setting,
  allowed: studyOf(setting, at, each, allowed),
  plantsAlone: studyOf(setting, at, each, plantsAlone),
}));
const page = learningPage(studied, demo);
writeFileSync(join(folder, 'learning.md'), page);
writeFileSync(join(folder, 'learning.svg'), learningFigure(demo));
process.stdout.write(page);

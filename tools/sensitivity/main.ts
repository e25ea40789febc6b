/** Writes docs/sensitivity.md and docs/sensitivity.svg: `npm run sensitivity [-- --out FOLDER]`. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { sensitivityFigure } from './figure.ts';
import { sensitivityPage } from './page.ts';
import { places } from './places.ts';
import { study } from './study.ts';

const { values } = parseArgs({ options: { out: { type: 'string' } } });
const folder = values.out ?? fileURLToPath(new URL('../../docs', import.meta.url));
const studies = places.map(study);
writeFileSync(join(folder, 'sensitivity.md'), sensitivityPage(studies));
writeFileSync(join(folder, 'sensitivity.svg'), sensitivityFigure(studies));

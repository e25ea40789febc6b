/** Writes docs/parameters.md from the tables of the engine: npx tsx tools/docs/parameters.ts */
import { writeFileSync } from 'node:fs';
import { parametersPage } from './parameters-page.ts';

writeFileSync(new URL('../../docs/parameters.md', import.meta.url), parametersPage());

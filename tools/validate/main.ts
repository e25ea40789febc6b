/**
 * Scores the model on published crops: `npm run validate -- [--data FOLDER] [--out FILE]`.
 * Without a data folder the committed fixture is scored.
 */
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { defaultPlantValues } from '../../packages/engine/src/index.ts';
import { unseenValues } from '../calibrate/fold-values.ts';
import { readCalendarRows } from '../score/calendar-rows.ts';
import { nullMisses } from '../score/null-model.ts';
import { figuresOf, intervalsOf, scoreRows } from '../score/score.ts';
import { timingRows } from '../score/timing-rows.ts';
import { cropChecks } from './crop-checks.ts';
import { leadChecks } from './lead-checks.ts';
import { numberPages } from './number-pages.ts';
import { report } from './report.ts';
import { storePages } from './store-pages.ts';

const { values } = parseArgs({ options: { data: { type: 'string' }, out: { type: 'string' } } });
const fixture = fileURLToPath(new URL('../score/fixtures/calendars.json', import.meta.url));
const given =
  values.data === undefined
    ? null
    : ([join(values.data, 'calendars.json'), join(values.data, 'data', 'calendars.json')].find(existsSync) ??
      join(values.data, 'calendars.json'));
const shared = given !== null && existsSync(given);
if (given !== null && !shared)
  process.stderr.write(`No ${given}: the committed fixture is scored instead.\n`);

const rows = readCalendarRows(shared ? given : fixture);
const fit = scoreRows(rows, () => defaultPlantValues);
const unseen = scoreRows(rows, (row) => unseenValues(row.latitudeDeg, row.longitudeDeg));
const page = report({
  from: shared
    ? `the ${rows.length} rows of the project's data folder`
    : `the ${rows.length} rows of the committed fixture`,
  fit: { scored: fit, figures: figuresOf(fit) },
  unseen: { scored: unseen, figures: figuresOf(unseen), intervals: intervalsOf(unseen) },
  nothing: nullMisses(timingRows(rows)),
  crops: cropChecks(defaultPlantValues),
  leads: leadChecks(rows),
  numbers: numberPages(rows),
  store: storePages(),
});
process.stdout.write(page);
writeFileSync(values.out ?? fileURLToPath(new URL('../../docs/validation.md', import.meta.url)), page);

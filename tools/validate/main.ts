/**
 * Scores the model on published crops: `npm run validate -- [--data FOLDER] [--out FILE]`.
 * Without a data folder the committed fixture is scored.
 */
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { defaultPlantValues } from '../../packages/engine/src/index.ts';
import { readCalendarRows } from '../score/calendar-rows.ts';
import { bandCoverage } from '../score/coverage.ts';
import { hardTests } from '../score/hard-tests.ts';
import { nullMisses } from '../score/null-model.ts';
import { predictLifting } from '../score/predict.ts';
import { scoreSite } from '../score/sites.ts';
import { missOf } from '../score/timing.ts';
import { timingRows, verdictRows } from '../score/timing-rows.ts';
import { verdictPairs } from '../score/verdicts.ts';
import { report } from './report.ts';

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
const timed = timingRows(rows);
const page = report({
  from: shared
    ? `the ${rows.length} rows of the project's data folder`
    : `the ${rows.length} rows of the committed fixture`,
  misses: timed.map((row) =>
    missOf(row, row.harvestWindow!, predictLifting(scoreSite(row, defaultPlantValues), row)),
  ),
  nullMisses: nullMisses(timed),
  coverage: bandCoverage(timed),
  pairs: verdictPairs(verdictRows(rows)),
  hardTests: hardTests(),
});
process.stdout.write(page);
writeFileSync(values.out ?? fileURLToPath(new URL('../../docs/validation.md', import.meta.url)), page);

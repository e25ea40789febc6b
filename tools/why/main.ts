/** Writes docs/why.md: `npx tsx tools/why/main.ts [--each N] [--seed N]`. About two minutes. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { readCalendarRows } from '../score/calendar-rows.ts';
import { whyPage } from './page.ts';
import { studyPlaces } from './places.ts';
import { calendarFailures, failuresOfTrials } from './published.ts';
import { statedCauses } from './stated-causes.ts';
import { studyOf } from './study.ts';

const { values } = parseArgs({
  options: { each: { type: 'string', default: '3' }, seed: { type: 'string', default: '21' } },
});
const asked = studyPlaces().flatMap((place, at) =>
  studyOf(place, 100 * Number(values.seed) + at, Number(values.each)),
);
const fixture = fileURLToPath(new URL('../score/fixtures/calendars.json', import.meta.url));
const calendars = calendarFailures(readCalendarRows(fixture), statedCauses);
const page = whyPage(asked, calendars, failuresOfTrials());
writeFileSync(fileURLToPath(new URL('../../docs/why.md', import.meta.url)), page);
process.stdout.write(page);

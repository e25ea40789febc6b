/** One fold of the cross-validation, as a process of its own: prints the fitted numbers as JSON. */
import { readCalendarRows } from '../score/calendar-rows.ts';
import { fitPlant } from './fit-plant.ts';
import { foldEntry } from './fold-values.ts';
import { foldOf } from './folds.ts';
import { startValues } from './start-values.ts';

const [path, fold, generations, seed] = process.argv.slice(2);
const left = Number(fold);
const rows = readCalendarRows(path).filter((row) => foldOf(row.latitudeDeg, row.longitudeDeg) !== left);
const { values } = fitPlant(rows, startValues, {
  generations: Number(generations),
  seed: Number(seed),
  places: ({ lat, lon }) => foldOf(lat, lon) !== left,
});
process.stdout.write(JSON.stringify(foldEntry(values)));

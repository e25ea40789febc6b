import { noCorrections, type WeatherFormatReader } from '../found.ts';
import { cellsOf } from './cells.ts';
import { dateColumnsOf } from './date-columns.ts';
import { sampleOf } from './delimiter.ts';
import { findTable } from './find-table.ts';
import { meaningOf } from './meaning.ts';
import { anyTable } from './profile.ts';
import { readTable } from './read-table.ts';

/** So much of a file shows whether it is a table. */
const headLength = 60_000;
const sampledRows = 50;

/** A table of whatever columns, told by their names and by what stands in them: tried last. */
export const anyTableReader: WeatherFormatReader = {
  format: 'own-table',
  knows: (text) => {
    const lines = text.slice(0, headLength).split(/\r\n|\n|\r/);
    // the last is cut off
    if (text.length > headLength) lines.pop();
    const found = findTable(lines);
    if (!found.ok) return found.issue.code === 'too-many-columns';
    const { names, from, delimiter } = found.value;
    if (names.some((name) => meaningOf(name) !== null)) return true;
    const sample = sampleOf(lines.slice(from), sampledRows).map((line) => cellsOf(line, delimiter));
    return dateColumnsOf(names, sample, noCorrections) !== null;
  },
  read: (file, corrections, place) => readTable(file, corrections, place, anyTable),
};

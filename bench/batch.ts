import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { peakMB, run } from './processes.ts';
import type { Row } from './timing.ts';

const starts = ['direct-seed', 'raised-seedlings', 'bought-transplants', 'sets'];
const classes = ['short', 'intermediate', 'long'];
/** The twelve ways of a class and a start, a row each, make the plans of one place. */
const plansOfPlace = 12;

/** Rows over land from France to the Ukraine; `places` of them, the rows of each together. */
function table(rows: number, places: number): string {
  const lines = ['id,latitude,longitude,class,start,date'];
  for (let row = 0; row < rows; row++) {
    const place = Math.floor((row * places) / rows);
    const latitude = 45.5 + ((place * 0.618) % 1) * 5.5;
    const longitude = 15 + ((place * 0.414) % 1) * 15;
    const way = row % plansOfPlace;
    const [start, kind] = [starts[way % starts.length], classes[way % classes.length]];
    lines.push(
      `r${row},${latitude.toFixed(3)},${longitude.toFixed(3)},${kind},${start},03-${10 + (row % 20)}`,
    );
  }
  return `${lines.join('\n')}\n`;
}

/** Batches of the built command line: time a row from start to end of the process, and peak memory. */
export function batchRows(program: string): Row[] {
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-batch-'));
  const path = join(folder, 'rows.csv');
  const common = ['--batch', path, '--today', '2027-02-01', '--out', '/dev/null'];
  const msOf = (args: string[], rows: number) => {
    const from = performance.now();
    run([program, ...args]);
    return (performance.now() - from) / rows;
  };
  try {
    const batch = (command: string, rows: number, places: number) => {
      writeFileSync(path, table(rows, places));
      return msOf([command, ...common], rows);
    };
    const alone = (command: string[]) => msOf([...command, '--json', '--out', '/dev/null'], 1);
    const season = ['season', '--at', '47,20', '--class', 'long', '--start', 'sets', '--date', '03-25'];
    const together = batch('season', 3000, 3000 / plansOfPlace);
    const apart = batch('season', 800, 800);
    const peak = peakMB([program, 'season', ...common]);
    writeFileSync(path, table(40, 40).replace(/,(?:class|short|intermediate|long),.*$/gm, ''));
    return [
      { what: 'season --batch, 12 rows a place, a row', value: together, unit: 'ms', limit: 2 },
      { what: 'season --batch, a place a row, a row', value: apart, unit: 'ms', limit: 2 },
      { what: 'season --batch, peak memory', value: peak, unit: 'MB', limit: 200 },
      { what: 'season, naive: a process a row', value: alone(season), unit: 'ms', limit: null },
      { what: 'where --batch, a row', value: msOf(['where', ...common], 40), unit: 'ms', limit: null },
      {
        what: 'where, naive: a process a row',
        value: alone(['where', '--at', '47,20']),
        unit: 'ms',
        limit: null,
      },
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/**
 * Builds the fitted climatology.
 *
 *     npx tsx tools/climate/build.ts --stations TABLE.csv.gz [--out FILE] [--report docs/climate.md] [--groups 10]
 *
 * `--report` also leaves stations out, fits again without them and writes the errors; `--groups` says how many of the
 * ten groups are left out in turn (about 6 s each, three ways of leaving out).
 */
import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { gzipSync } from 'node:zlib';
import { fitClimate } from './fit.ts';
import { leaveOut, leaveOutGroups } from './leave-out.ts';
import { climateReport } from './report.ts';
import { readStations } from './stations.ts';

const usage =
  'usage: npx tsx tools/climate/build.ts --stations TABLE [--out FILE] [--report FILE] [--groups 1…10]';

function main(): void {
  const { values } = parseArgs({
    options: {
      stations: { type: 'string' },
      out: {
        type: 'string',
        default: fileURLToPath(new URL('../../packages/data/assets/climate.bin', import.meta.url)),
      },
      report: { type: 'string' },
      groups: { type: 'string', default: String(leaveOutGroups) },
    },
  });
  if (!values.stations) throw new Error(`--stations is missing: the table of monthly normals\n${usage}`);
  const groups = Number(values.groups);
  if (!(Number.isInteger(groups) && groups >= 1 && groups <= leaveOutGroups)) {
    throw new Error(
      `--groups ${values.groups}: expected a whole number from 1 to ${leaveOutGroups}\n${usage}`,
    );
  }

  const stations = readStations(values.stations);
  const fit = fitClimate(stations);
  const zipped = gzipSync(fit.file, { level: 9 });
  writeWhole(values.out, zipped);
  console.error(`${values.out}: ${zipped.length} bytes from ${stations.count} stations`);
  if (!values.report) return;

  const ways = [null, 1, 5].map((blockDeg) => {
    console.error(`leaving out ${blockDeg === null ? 'single stations' : `blocks of ${blockDeg}°`} …`);
    return leaveOut(stations, blockDeg, groups);
  });
  writeWhole(values.report, climateReport({ stations, fit, zippedBytes: zipped.length, ways }));
  console.error(values.report);
}

function writeWhole(path: string, content: Uint8Array | string): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(`${path}.part`, content);
  renameSync(`${path}.part`, path);
}

try {
  main();
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = 2;
}

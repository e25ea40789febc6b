/*
 * Compares generated weather with daily records and writes the tables into docs/weather-years.md.
 *
 *   npx tsx tools/weather/compare-records.ts VEGA_WEATHER.csv WEATHER_SAMPLES_FOLDER docs/weather-years.md
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { mean } from '../../packages/engine/src/math/index.ts';
import { compareFrost } from './compare-frost.ts';
import { compareStatistics } from './compare-statistics.ts';
import { readSamples, readVega } from './read-stations.ts';

const [vegaPath, samplesPath, documentPath] = process.argv.slice(2);
if (!vegaPath || !samplesPath || !documentPath) {
  console.error('expected: VEGA_WEATHER.csv WEATHER_SAMPLES_FOLDER DOCUMENT.md');
  process.exit(2);
}

const seed = 7;
const stations = [...readVega(vegaPath), ...readSamples(samplesPath)];
const named = (name: string) => stations.find((station) => station.name === name)!;
const spans = [
  { name: 'Seattle', years: [2012, 2015], replicates: 200 },
  { name: 'New York', years: [2012, 2015], replicates: 200 },
  { name: 'Melbourne', years: [2014, 2021], replicates: 100 },
  { name: 'Adelaide', years: [1940, 1978], replicates: 40 },
] as const;

const out: string[] = [];
for (const { name, years, replicates } of spans) {
  const station = named(name);
  const rows = compareStatistics(station, years[0], years[1], replicates, seed);
  const z = rows.flatMap((row) => row.z);
  const beyond = (limit: number) => z.filter((value) => Math.abs(value) > limit).length;
  out.push(`### ${name} ${years[0]}–${years[1]} (${station.source})`, '');
  out.push('| figure | | Jan | Feb | Mar | Apr | May | Jun | Jul | Aug | Sep | Oct | Nov | Dec |');
  out.push(`| --- | --- |${' --: |'.repeat(12)}`);
  for (const { statistic, record, generated, z: scores } of rows) {
    const line = (label: string, values: number[], digits: number) => {
      const cells = values.map((value) => value.toFixed(digits));
      return `| ${label} | ${[...cells, ...new Array(12 - cells.length).fill('')].join(' | ')} |`;
    };
    const label = record.length === 1 ? `${statistic}, whole year` : statistic;
    out.push(line(`${label} | record`, record, 2), line('| generated', generated, 2), line('| z', scores, 1));
  }
  out.push(
    '',
    `|z| above 2 in ${beyond(2)} of ${z.length} figures, above 3 in ${beyond(3)}.`.replaceAll('|', '\\|'),
    '',
  );
  console.log(`${name}: |z| > 2 in ${beyond(2)} of ${z.length}, > 3 in ${beyond(3)}`);
}

out.push('### Frost', '');
out.push('| place, years, night below | figure | record | generated | 95 % interval | of | inside |');
out.push('| --- | --- | --: | --: | --: | --- | --- |');
const frostCases = [
  ['Seattle', 2012, 2015, 0],
  ['New York', 2012, 2015, 0],
  ['Adelaide', 1940, 1978, 2],
  ['Adelaide', 1940, 1978, 4],
  ['Melbourne', 2014, 2021, 4],
  ['Buenos Aires', 2005, 2021, 0],
  ['Buenos Aires', 2005, 2021, 2],
] as const;
const inside: number[] = [];
for (const [name, from, to, threshold] of frostCases) {
  for (const { figure, record, interval, intervalOf, isInside, generated } of compareFrost(
    named(name),
    from,
    to,
    threshold,
    seed,
  )) {
    const show = (value: number | null) =>
      value === null ? '–' : value.toFixed(figure.includes('°C') ? 1 : 0);
    if (interval !== null) inside.push(isInside ? 1 : 0);
    const range = interval === null ? '–' : `${show(interval[0])} … ${show(interval[1])}`;
    const verdict = interval === null ? '–' : isInside ? 'yes' : 'no';
    out.push(
      `| ${name} ${from}–${to}, ${threshold} °C | ${figure} | ${show(record)} | ${show(generated)} | ${range} | ${intervalOf} | ${verdict} |`,
    );
  }
}
out.push(
  '',
  `Inside the interval: ${inside.filter(Boolean).length} of ${inside.length} (${(100 * mean(inside)).toFixed(0)} %).`,
  '',
);
console.log(`frost: inside ${inside.filter(Boolean).length} of ${inside.length}`);

const [begin, end] = ['<!-- tables: written by tools/weather/compare-records.ts -->', '<!-- tables: end -->'];
const document = readFileSync(documentPath, 'utf8');
const [head, tail] = [document.indexOf(begin), document.indexOf(end)];
if (head < 0 || tail < head) {
  console.error(`${documentPath}: expected the lines "${begin}" and "${end}" around the tables`);
  process.exit(1);
}
writeFileSync(
  documentPath,
  `${document.slice(0, head + begin.length)}\n\n${out.join('\n')}\n${document.slice(tail)}`,
);

import { pathToFileURL } from 'node:url';
import { findTowns } from '../packages/data/src/index.ts';
import { loadGazetteer, readClimateNodes } from '../packages/data/src/node.ts';
import {
  climateAt,
  dayNumber,
  openSite,
  type Plan,
  planDefaults,
  restoreGarden,
  runnerOf,
  surveyPlace,
  tryStarts,
  waysOf,
  weatherYears,
} from '../packages/engine/src/index.ts';
import { atlasRows } from './atlas.ts';
import { greatGarden, makeGreatGarden } from './great-garden.ts';
import { growInCRows } from './grow-in-c.ts';
import { keepRows } from './keep.ts';
import { learnRows } from './learn.ts';
import { calibrationMs, medianMs, type Row } from './timing.ts';
import { weatherTableRows } from './weather-table.ts';
import { whichRows } from './which.ts';
import { whyRows } from './why.ts';

const [assetsFolder, folder, growInC] = process.argv.slice(2);
const assets = pathToFileURL(`${assetsFolder}/`);
const years = 30;
const rows: Row[] = [];
const put = (what: string, value: number, unit: string, limit: number | null = null) =>
  rows.push({ what, value, unit, limit });

/** Time of the first run of all, with nothing compiled yet. */
function firstMs<T>(work: () => T): [T, number] {
  const from = performance.now();
  const result = work();
  return [result, performance.now() - from];
}

const climatePath = `${assetsFolder}/climate.bin`;
const [nodes, climateFirst] = firstMs(() => readClimateNodes(climatePath));
put('climate, load, first', climateFirst, 'ms', 60);
const [gazetteer, townsFirst] = firstMs(() => loadGazetteer(assets));
put('towns, load, first', townsFirst, 'ms');

const calibration = calibrationMs();
put(
  'climate, load, warm',
  medianMs(10, () => readClimateNodes(climatePath)),
  'ms',
  60,
);
put(
  'climate of a point',
  medianMs(100, () => climateAt(nodes, 45.76, 4.84, 170)),
  'ms',
);
for (const typed of ['l', 'lo', 'london', 'springfield mo', 'sprngfield', 'quzzwyx']) {
  put(
    `towns, keystroke “${typed}”`,
    medianMs(30, () => findTowns(gazetteer, typed, 10)),
    'ms',
    5,
  );
}

const garden = makeGreatGarden(greatGarden);
put(
  'a garden of 20 years restored',
  medianMs(10, () => restoreGarden(garden)),
  'ms',
  150,
);

const climate = climateAt(nodes, 38.58, -121.49, 8);
put(
  `weather of ${years} years`,
  medianMs(40, () => weatherYears(climate, years, 1)),
  'ms',
  2.5,
);

rows.push(...weatherTableRows());

// An autumn sowing: the season whose length is nearest the 250 days of the limit.
const plan: Plan = {
  ...planDefaults,
  type: 'intermediate',
  start: 'direct-seed',
  startDay: dayNumber(2027, 10, 10),
};
const open = () => openSite({ climate, years, seed: 1 });
const site = open();
const runner = runnerOf(site, plan);
let seasonDays = 0;
for (let year = 0; year < years; year++) {
  const { fellOn } = runner.season(year);
  seasonDays += (fellOn || runner.crop.lastDay) / years;
}
const repeats = 20;
const seasonsMs = medianMs(40, () => {
  let grams = 0;
  for (let i = 0; i < repeats; i++)
    for (let year = 0; year < years; year++) grams += runner.season(year).bulbDryG;
  return grams;
});
put(
  `kernel, a season of 250 days (from ${seasonDays.toFixed(0)})`,
  (seasonsMs * 1000 * 250) / (years * repeats * seasonDays),
  'µs',
  12,
);
put(
  `when, ${years} years, place at hand`,
  medianMs(20, () => tryStarts(site, waysOf(site, plan, [plan.start]), {}, plan.startDay)),
  'ms',
  40,
);
put(
  `when, ${years} years, new place`,
  medianMs(20, () => {
    const fresh = open();
    return tryStarts(fresh, waysOf(fresh, plan, [plan.start]), {}, plan.startDay);
  }),
  'ms',
);
put(
  `where, ${years} years, new place`,
  medianMs(10, () => surveyPlace(open(), plan.startDay)),
  'ms',
);
rows.push(...growInCRows(climate, growInC || null, folder));
rows.push(
  ...whichRows(climate, years, plan.startDay),
  ...keepRows(climate, years, plan.startDay),
  ...learnRows(climate, years),
  ...whyRows(climate, years, plan.startDay),
  ...atlasRows(climate, plan.startDay),
);

process.stdout.write(JSON.stringify({ calibration, rows }));

/**
 * Fits the plant's parameters to published crops:
 * `npm run calibrate -- [--data FOLDER] [--generations N] [--seed N] [--stage NAME] [--write] [--folds]`.
 * Every fit starts from tools/calibrate/start-values.ts, so the same command gives the same values. `--stage` fits one
 * stage anew (growth or bolting) and holds all else as it is in use. Without a data folder the committed fixture
 * is fitted. Prints the fitted values; `--write` puts them into
 * packages/engine/src/plant/parameters.ts and keeps the record of the fit. `--folds` also fits the ten sets of the
 * cross-validation, as many at a time as there are processors, and writes tools/calibrate/fold-values.json.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { defaultPlantValues } from '../../packages/engine/src/index.ts';
import { readCalendarRows } from '../score/calendar-rows.ts';
import { fitFolds } from './fit-folds.ts';
import { fitPlant, stageKnobs, stageNames } from './fit-plant.ts';
import { readRecord, recordOf, recordPath, withStages } from './fit-record.ts';
import { foldPath } from './fold-values.ts';
import { knobValue, withKnobs } from './knobs.ts';
import { startValues } from './start-values.ts';
import { writeValues } from './write-values.ts';
import { writeWhole } from './write-whole.ts';

const { values: options } = parseArgs({
  options: {
    data: { type: 'string' },
    generations: { type: 'string', default: '250' },
    seed: { type: 'string', default: '7' },
    stage: { type: 'string' },
    write: { type: 'boolean', default: false },
    folds: { type: 'boolean', default: false },
  },
});
const generations = whole('--generations', options.generations, 1);
const seed = whole('--seed', options.seed, 0);
const fixture = fileURLToPath(new URL('../score/fixtures/calendars.json', import.meta.url));
const given =
  options.data === undefined
    ? fixture
    : [join(options.data, 'calendars.json'), join(options.data, 'data', 'calendars.json')].find(existsSync);
// Unlike a score, a fit to other rows than asked for must not end up in the parameters.
if (given === undefined)
  refuse(`--data ${options.data}: no calendars.json there; give a folder that has one`);

const only = options.stage === undefined ? null : stageNames.find((name) => name === options.stage);
if (only === undefined) refuse(`--stage ${options.stage}: not a stage; try ${stageNames.join(', ')}`);

const rows = readCalendarRows(given);
const from =
  only === null
    ? startValues
    : withKnobs(defaultPlantValues, stageKnobs[only], (knob) => knobValue(knob, startValues));
const fit = fitPlant(rows, from, { generations, seed, only });
const record = withStages(readRecord(), recordOf(fit, rows, { generations, seed }));

const figure = (value: number) => value.toFixed(3).padStart(9);
for (const { name, before, after, knobs } of record.stages) {
  console.log(`${name}: loss ${before.toFixed(4)} → ${after.toFixed(4)}`);
  console.log('    start    fitted       low      high  loss a tenth off');
  for (const knob of knobs) {
    const columns = [knob.start, knob.value, knob.low, knob.high, knob.sensitivity];
    console.log(`${columns.map(figure).join(' ')}  ${knob.name}`);
  }
}

if (options.write) {
  const path = fileURLToPath(new URL('../../packages/engine/src/plant/parameters.ts', import.meta.url));
  const text = writeValues(
    readFileSync(path, 'utf8'),
    fit.stages.flatMap((of) => of.knobs),
    fit.values,
  );
  writeWhole(path, text);
  writeWhole(recordPath, `${JSON.stringify(record, null, 2)}\n`);
  console.log('Written. Next: npx biome check --write packages/engine/src/plant, then the generated pages.');
}

if (options.folds) {
  writeWhole(foldPath, `${JSON.stringify(await fitFolds(given, generations, seed), null, 2)}\n`);
  console.log(`Written: ${foldPath}`);
}

function whole(name: string, text: string, least: number): number {
  const value = Number(text);
  if (!/^\d+$/.test(text) || value < least || !Number.isSafeInteger(value))
    refuse(`${name} ${text}: not a whole number of ${least} or more; try ${name} ${least + 9}`);
  return value;
}

function refuse(message: string): never {
  process.stderr.write(`${message}\n`);
  process.exit(2);
}

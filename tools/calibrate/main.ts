/**
 * Fits the plant's parameters to published crops:
 * `npm run calibrate -- [--data FOLDER] [--generations N] [--seed N] [--write]`.
 * Starts from the values in use and prints current and fitted ones; only `--write` changes
 * packages/engine/src/plant/parameters.ts. Without a data folder the committed fixture is fitted. The same
 * command gives the same values.
 *
 * The committed values came from several such runs of an earlier form, with settings changed by hand between
 * them: the prices in timing-loss.ts, which knobs were free and how far; bolting by a plainer random search, some
 * of its places given a little otherwise. One run does not reproduce them exactly.
 */
import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { defaultPlantValues } from '../../packages/engine/src/index.ts';
import { readCalendarRows } from '../score/calendar-rows.ts';
import { timingRows } from '../score/timing-rows.ts';
import { fitPlant } from './fit-plant.ts';
import { knobName, knobValue } from './knobs.ts';
import { timingLoss } from './timing-loss.ts';
import { writeValues } from './write-values.ts';

const { values: options } = parseArgs({
  options: {
    data: { type: 'string' },
    generations: { type: 'string', default: '60' },
    seed: { type: 'string', default: '7' },
    write: { type: 'boolean', default: false },
  },
});
const generations = whole('--generations', options.generations, 1);
const seed = whole('--seed', options.seed, 0);
const fixture = fileURLToPath(new URL('../score/fixtures/calendars.json', import.meta.url));
const given =
  options.data === undefined
    ? null
    : [join(options.data, 'calendars.json'), join(options.data, 'data', 'calendars.json')].find(existsSync);
// Unlike a score, a fit to other rows than asked for must not end up in the parameters.
if (given === undefined)
  refuse(`--data ${options.data}: no calendars.json there; give a folder that has one`);

const rows = readCalendarRows(given ?? fixture);
const { values, stages } = fitPlant(rows, defaultPlantValues, { generations, seed });

const figure = (value: number) => value.toFixed(3).padStart(9);
for (const { name, knobs, before, after } of stages) {
  console.log(`${name}: loss ${before.toFixed(4)} → ${after.toFixed(4)}`);
  console.log('  current    fitted       low      high');
  for (const knob of knobs) {
    const columns = [knobValue(knob, defaultPlantValues), knobValue(knob, values), knob.low, knob.high];
    console.log(`${columns.map(figure).join(' ')}  ${knobName(knob)}`);
  }
}
console.log(`timing with the fitted bolting: loss ${timingLoss(timingRows(rows), values).toFixed(4)}`);

if (options.write) {
  const path = fileURLToPath(new URL('../../packages/engine/src/plant/parameters.ts', import.meta.url));
  const text = writeValues(
    readFileSync(path, 'utf8'),
    stages.flatMap((of) => of.knobs),
    values,
  );
  writeFileSync(`${path}.new`, text);
  renameSync(`${path}.new`, path);
  console.log('Written. Next: npx biome check --write packages/engine/src/plant, then the generated pages.');
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

import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { speaker } from '@neckfall/words';
import fc from 'fast-check';
import { type Completed, completionsOf } from '../../src/completion/completions.ts';
import { program } from '../../src/program.ts';
import { hostileText } from './hostile.ts';

/** Values that options may well be given. */
const likely: Record<string, readonly string[]> = {
  '--at': ['45.76,4.84', '-33,-68.9', '52.08,-3.13,160', '"45,76;4,84"', '68.44,17.43,10'],
  '--today': ['2027-05-03', '2028-02-29', '1950-01-01', '2090-12-31'],
  '--date': ['03-25', '2027-10-01', '02-29', '2028-01-31'],
  '--plant-out': ['04-20', '2028-04-20'],
  '--cultivar': ['Walla Walla', 'walla wala', 'Sturon'],
  '--have': ['Sturon', 'Walla Walla, Sturon', ','],
  '--find': ['walla', 'red'],
  '--planting': ['a', 'By the wall', 'by the wal'],
  '--fed': ['10-4-8:200', '10-4:3', '0-0-0:0'],
  '--note': ['After rain.', ' '],
  '--noticed': ['01', '2027-01', '2026-12-24', '13'],
  '--year': ['2025', '2026', '1900'],
  '--region': ['44,4,46,5', 'luxembourg', '90,0,80,0', 'utopia'],
};
const numbers = ['0', '1', '2', '7', '12', '14.5', '16', '40', '100', '110', '3,5'];
const places = ['Lyon', 'Springfield, US', 'Quito', 'Lyno', 'Paris, XX', 'sao paulo', 'Nowhereville'];

/** A folder with what files an option may be pointed at. */
export function filesFor(folder: string): readonly string[] {
  const write = (name: string, content: string | Uint8Array) => {
    writeFileSync(join(folder, name), content);
    return join(folder, name);
  };
  mkdirSync(join(folder, 'folder'), { recursive: true });
  return [
    write('weather.csv', 'date,temp_min_c,temp_max_c\n2027-01-01,1,9\n2027-01-02,-3,4\n'),
    write('rows.csv', 'id,latitude,longitude\nna,91,0\n'),
    write('empty', ''),
    write('half.json', '{"schema": "neckfall/garden@1", "cultivars": [{"name": "a'),
    write('garden.json', '{"schema": "neckfall/garden@1", "cultivars": [], "places": []}'),
    write(
      'noise',
      Uint8Array.from({ length: 3000 }, (_, i) => (i * i * 31 + i) % 256),
    ),
    write(
      'planted.json',
      '{"schema": "neckfall/garden@1", "plantings": [{"id": "a", "name": "By the wall"}, {"name": "By the wall"}]}',
    ),
    join(folder, 'folder'),
    join(folder, 'missing', 'file'),
    join(folder, 'written.txt'),
    '/dev/null',
  ];
}

/**
 * Command lines: mostly whole ones with one thing or another wrong, so that every check is reached; every command and
 * option that the program has. `files` are all that options are pointed at.
 */
export function commandLines(files: readonly string[]): fc.Arbitrary<string[]> {
  const { commands } = completionsOf(program(speaker('metric')));
  const one = (name: string) =>
    lineOf(commands.find((command) => command.name === name)?.options ?? [], name, files);
  const named = commands.filter(({ name }) => name !== '');
  return fc.oneof(...named.map(({ name }) => ({ weight: weights[name] ?? 4, arbitrary: one(name) })), {
    weight: 8,
    arbitrary: fc.array(hostileText, { maxLength: 4 }),
  });
}

/** Answers that take longer are asked for less often. */
const weights: Record<string, number> = { season: 60, why: 6, where: 2, which: 1 };

const usuals: Record<string, string[][]> = {
  season: [
    ['--class', 'long'],
    ['--start', 'sets'],
    ['--date', '03-25'],
  ],
  why: [
    ['--seen', 'flowered'],
    ['--today', '2027-05-03'],
  ],
  record: [
    ['--planting', 'a'],
    ['--leaves', '5.5'],
  ],
};

function lineOf(
  options: readonly Completed[],
  command: string,
  files: readonly string[],
): fc.Arbitrary<string[]> {
  const place = fc.oneof(
    { weight: 5, arbitrary: fc.constantFrom(...places).map((name) => [name]) },
    { weight: 2, arbitrary: fc.constantFrom(...likely['--at']).map((at) => ['--at', at]) },
    { weight: 1, arbitrary: hostileText.map((text) => [text]) },
    { weight: 1, arbitrary: fc.constant([]) },
  );
  const usual = usuals[command] ?? [];
  const base = fc.subarray(usual, { minLength: Math.max(0, usual.length - 1) }).map((pairs) => pairs.flat());
  const some = fc.array(
    fc.constantFrom(...options).chain((option) => given(option, files)),
    { maxLength: 4 },
  );
  const firsts: Record<string, fc.Arbitrary<string[]>> = {
    record: fc.constantFrom(...files).map((file) => [file]),
    // left out it is the whole world, which takes minutes
    atlas: fc.constantFrom('45,4,45.5,5', 'Luxembourg').map((region) => ['--region', region]),
  };
  return fc
    .tuple(firsts[command] ?? place, base, some, fc.constantFrom('1', '2', '3'))
    .map(([where, plan, extra, years]) => [
      command,
      ...where,
      ...plan,
      ...extra.flat(),
      // few years, for speed; a later --years of the hostile kind wins
      ...(options.some(({ flag }) => flag === '--years') &&
      !extra.flat().some((word) => word.startsWith('--years'))
        ? ['--years', years]
        : []),
    ]);
}

function given({ flag, takes }: Completed, files: readonly string[]): fc.Arbitrary<string[]> {
  if (takes === 'nothing') return fc.constant([flag]);
  if (takes === 'file') return fc.constantFrom(...files).map((path) => [flag, path]);
  const words = takes === 'anything' ? (likely[flag] ?? numbers) : takes;
  const value = fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom(...words) },
    {
      weight: 2,
      arbitrary: flag === '--years' ? fc.constantFrom('0', '-1', '1e9', 'NaN', '1,5', '') : hostileText,
    },
  );
  return fc.tuple(value, fc.integer({ min: 0, max: 9 })).map(([text, way]) => {
    if (way === 0) return [flag];
    if (way === 1) return [flag.slice(0, -1), text];
    return way < 5 ? [`${flag}=${text}`] : [flag, text];
  });
}

import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { neckfall } from './run-neckfall.ts';

const garden = fileURLToPath(new URL('../../../docs/examples/pencarreg.neckfall.json', import.meta.url));
const today = ['--today', '2026-11-20', '--years', '2'];
const small = ['Leeds', '--seen', 'small'];
const sprouted = ['Leeds', '--seen', 'sprouted'];

test.each<[string, string[], number, string[]]>([
  ['nothing seen', ['Leeds'], 2, ['--seen', '--list']],
  ['nothing among commas', ['Leeds', '--seen', ' , '], 2, ['--seen', '--list']],
  ['a slip of the pen', ['Leeds', '--seen', 'flwered'], 2, ['flwered', 'Nearest: flowered', '--list']],
  ['a word in a phrase', ['Leeds', '--seen', 'maggots eating it all'], 2, ['Nearest: maggots', '--list']],
  ['nonsense', ['Leeds', '--seen', 'xyzzyq'], 2, ['xyzzyq', '--list']],
  ['one of several', ['Leeds', '--seen', 'small,xyzzyq'], 2, ['xyzzyq']],
  [
    'too many',
    ['Leeds', '--seen', 'small,flowered,split,soft,maggots,wilted,glassy,too-hot,sprouted'],
    2,
    ['9', '8'],
  ],
  ['no place', ['--seen', 'small'], 2, ['town']],
  ['a question that is none', [...small, '--said', 'wattering=often'], 2, ['wattering=often', 'watering?']],
  ['an answer that is none', [...small, '--said', 'watering=oftn'], 2, ['watering=oftn', 'often?']],
  ['half an answer', [...small, '--said', 'watering'], 2, ['watering=often']],
  ['the same said twice', [...small, '--said', 'watering=often', '--water', 'rain'], 2, ['--water:']],
  ['a planting of a town', [...small, '--planting', 'okoro'], 3, ['Leeds']],
  ['a planting of nothing', ['--seen', 'small', '--planting', 'okoro'], 2, ['--planting okoro', 'garden']],
  ['a garden without its planting', [garden, '--seen', 'small'], 2, ['--planting']],
  ['a planting that is none', [garden, '--seen', 'small', '--planting', 'okro'], 2, ['okoro']],
  ['a planting to come', [garden, '--seen', 'small', '--planting', 'okoro'], 2, ['2027-04-05', 'to come']],
  [
    'the year of a planting',
    [garden, '--seen', 'small', '--planting', 'okoro', '--year', '2027'],
    2,
    ['--year', '--planting okoro'],
  ],
  ['a store that is none', [...sprouted, '--store', 'attic'], 2, ['--store attic', 'cellar']],
  ['a store too hot', [...sprouted, '--store', '99,50'], 2, ['--store 99', '40']],
  ['a month that is none', [...sprouted, '--noticed', '13'], 2, ['--noticed 13', 'MM']],
  ['a day of seeing to come', [...sprouted, '--noticed', '2027-01'], 2, ['--noticed 2027-01', 'to come']],
  [
    'a day of seeing before the start',
    [...sprouted, '--date', '2026-04-05', '--noticed', '2026-02'],
    2,
    ['--noticed 2026-02', '2026-04-05'],
  ],
  ['a start to come', [...small, '--date', '2031-04-01'], 2, ['--date 2031-04-01', 'to come']],
  ['a start long ago', [...small, '--date', '1931-04-01'], 2, ['--date 1931-04-01', '2006']],
  ['a day that is none', [...small, '--date', '2026-02-30'], 2, ['no such day']],
  ['a month and day that are none', [...small, '--date', '13-45'], 2, ['no such day']],
  ['a year to come', [...small, '--year', '2027'], 2, ['--year 2027', '2026']],
  ['a start later this year', [...small, '--date', '12-24', '--year', '2026'], 2, ['2026-12-24', 'to come']],
  ['a year besides a day', [...small, '--year', '2026', '--date', '2026-04-01'], 2, ['--year']],
  ['a year that is none', [...small, '--year', 'last'], 2, ['--year last']],
  ['a table of causes', [...small, '--csv'], 2, ['--csv', '--list']],
  ['a set of seed', [...small, '--start', 'direct-seed', '--set-size', '20'], 2, ['--set-size']],
  ['a packet half read', [...small, '--packet-days', '100'], 2, ['--class']],
])('%s is refused in one line', (_, args, exit, named) => {
  const { code, stdout, stderr } = neckfall('why', ...args, ...today);
  expect({ code, stdout }, stderr).toEqual({ code: exit, stdout: '' });
  expect(stderr.trimEnd().split('\n')).toHaveLength(1);
  for (const words of named) expect(stderr).toContain(words);
});

import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { sheetNames } from '../../src/batch/sheet-names.ts';
import { neckfall, testDay } from '../run-neckfall.ts';
import { readSheetPdf } from './read-sheet-pdf.ts';

const work = mkdtempSync(join(tmpdir(), 'neckfall-many-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

function batch(rows: string, folder: string, ...args: string[]) {
  const file = join(work, `${folder}.csv`);
  writeFileSync(file, rows);
  const out = join(work, folder);
  const run = neckfall('handout', '--batch', file, '--out', out, '--today', testDay, '--years', '3', ...args);
  return { ...run, out };
}

/** Of every part of the world, some under names in scripts that we have no faces for. */
const places =
  `Leeds;Nairobi;Oslo;"Austin, US";Dunedin;Lyon;Madrid;Kraków;Łódź;São Paulo;Reykjavík;Đà Nẵng;Athens;Kyiv;Sapporo;Cairo;Delhi;Lagos;Quito;"La Paz, BO";Perth;Hobart;Cape Town;Addis Ababa;Accra;Dakar;Tunis;Istanbul;Tehran;Karachi;Dhaka;Bangkok;Manila;Seoul;Beijing;Ulaanbaatar;Novosibirsk;Helsinki;Tromsø;Dublin;Lisbon;Rome;Munich;Winnipeg;Mexico City;Bogotá;Buenos Aires;Santiago;Zagreb;Reno`.split(
    ';',
  );
const headings: Record<string, string> = {
  Athens: 'Κρεμμύδια',
  Kyiv: 'Цибуля',
  Sapporo: '玉ねぎ',
  Cairo: 'بصل',
};
const spanish = new Set(['Madrid', 'Mexico City', 'Bogotá', 'Buenos Aires', 'Santiago']);

describe('fifty places at once', () => {
  const rows = places.map(
    (place) =>
      `${place},${headings[place] ?? ''},${spanish.has(place) ? 'es' : ''},${place.includes('US') ? 'us' : ''}`,
  );
  const { code, stdout, stderr, out } = batch(`place,heading,lang,units\n${rows.join('\n')}\n`, 'fifty');
  const files = readdirSync(out);

  test('are fifty sheets but for those that a PDF has no letters for, which are told', () => {
    expect(places.length).toBe(50);
    expect(code).toBe(0);
    expect(stdout).toMatch(/^48 sheets in .*fifty, 96 files\.\n$/);
    expect(stderr).toMatch(/line 16: .*玉 ね ぎ.*\nline 17: .*\n2 rows gave no sheet, as told above\.\n$/);
    expect(files.length).toBe(96);
  });

  test('are of one page each, under the names of their places', async () => {
    for (const file of files.filter((name) => name.endsWith('.pdf'))) {
      const { pages, faces } = await readSheetPdf(readFileSync(join(out, file)));
      expect({ file, pages }).toEqual({ file, pages: 1 });
      expect(faces.every(({ isEmbedded }) => isEmbedded)).toBe(true);
    }
    expect(files).toEqual(
      expect.arrayContaining(['Łódź.pdf', 'Đà-Nẵng.html', 'Austin-US.pdf', 'La-Paz-BO.html']),
    );
  });
});

test('points with a name of their own, and words of their own in a row', () => {
  const { code, out } = batch(
    'id,latitude,longitude,elevation_m,name,heading,note,paper\nbank,52.08,-3.13,160,Pencarreg Bank,Our onions,"First line\nsecond, with a comma",letter\n',
    'points',
    '--as',
    'html',
  );
  expect(code).toBe(0);
  const html = readFileSync(join(out, 'bank.html'), 'utf8');
  expect(html).toMatch(/<h1 class="heading">Our onions<\/h1>/);
  expect(html).toContain('Pencarreg Bank: buy');
  expect(html).toContain('<p>First line</p><p>second, with a comma</p>');
  expect(html).toContain('size:letter');
});

test('a bad row is told by its id or its line, and the run goes on', () => {
  const { code, stdout, stderr, out } = batch(
    'id,place,latitude,longitude,lang,note\nok,Leeds,,,,\nbad,Nowhereville,,,,\n,,,,,\n,,52,,,\nxx,York,,,xx,\n,,,,,x\nlong,York,,,,"' +
      `${'word '.repeat(91)}"\n`,
    'bad',
    '--as',
    'pdf',
  );
  expect(code).toBe(0);
  expect(stdout).toContain('One sheet in');
  expect(stderr).toContain('bad: No town "Nowhereville"');
  expect(stderr).toContain('line 5: longitude is empty');
  expect(stderr).toContain('xx: lang xx: expected en or es');
  expect(stderr).toContain('line 7: the row names no place');
  expect(stderr).toContain('long: note: 91 words');
  expect(readdirSync(out)).toEqual(['ok.pdf']);
});

test('where every row is bad, nothing is made and the exit code is 3', () => {
  const { code, stderr, out } = batch('place\nNowhereville\nOz\n', 'none');
  expect(code).toBe(3);
  expect(stderr).toMatch(/none of its 2 rows was answered/);
  expect(existsSync(out)).toBe(false);
});

test('a file that is no sheet of ours stays as it is; one of ours is made anew', () => {
  mkdirSync(join(work, 'there'));
  writeFileSync(join(work, 'there', 'york.pdf'), 'thesis');
  writeFileSync(join(work, 'there', 'leeds.html'), '<meta name="generator" content="Neckfall">old');
  const { code, stderr, out } = batch('id,place\nyork,York\nleeds,Leeds\n', 'there');
  expect(code).toBe(0);
  expect(stderr).toContain('york.pdf is there already and is no sheet of ours');
  expect(readFileSync(join(out, 'york.pdf'), 'utf8')).toBe('thesis');
  expect(readFileSync(join(out, 'leeds.html'), 'utf8')).toContain('<article class="sheet"');
  expect(readdirSync(out).sort()).toEqual(['leeds.html', 'leeds.pdf', 'york.pdf']);
});

test('a table without places, and a folder that is a file, are refused', () => {
  expect(batch('id,heading\n1,x\n', 'no-places').stderr).toMatch(/no column names the places/);
  writeFileSync(join(work, 'file'), '');
  const { code, stderr } = batch('place\nLeeds\n', 'file');
  expect({ code, is: stderr.includes('is a file: with --batch, name a folder') }).toEqual({
    code: 3,
    is: true,
  });
});

describe('names of files', () => {
  test.each([
    ['../../etc/passwd', 'etc-passwd'],
    ['C:\\temp\\x', 'C-temp-x'],
    ['São Paulo', 'São-Paulo'],
    ['玉ねぎ', '玉ねぎ'],
    ['...', 'sheet'],
    ['con', 'sheet-con'],
    ['COM1', 'sheet-COM1'],
    ['x'.repeat(300), 'x'.repeat(60)],
  ])('%s becomes %s', (called, name) => expect(sheetNames()(called)).toBe(name));

  test('the second of a name gets a number, whatever its case', () => {
    const nameOf = sheetNames();
    expect(['Leeds', 'leeds', 'LEEDS', 'leeds-2'].map(nameOf)).toEqual([
      'Leeds',
      'leeds-2',
      'LEEDS-3',
      'leeds-2-2',
    ]);
  });
});

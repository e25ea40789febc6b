import { spawnSync } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { neckfall } from '../run-neckfall.ts';
import { folder, madeSheet } from './made-sheets.ts';
import { readSheetPdf } from './read-sheet-pdf.ts';
import { longHeading, longNote } from './words.ts';

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const squeezed = (text: string) => text.replace(/\s/g, '');
const own = ['--heading', longHeading, '--note', longNote];
const sheets: [string, number, number, string[]][] = [
  ['A4, in British English', 595.28, 841.89, ['Leeds', ...own]],
  ['Letter, with US units', 612, 792, ['Austin, US', '--units', 'us', ...own]],
  ['A4, in Spanish', 595.28, 841.89, ['Lyon', '--lang', 'es', ...own]],
  ['Letter, on the equator', 612, 792, ['Quito', '--paper', 'letter']],
  ['A4, where none does well', 595.28, 841.89, ['Tromsø']],
];

describe.each(sheets)('a sheet as a PDF: %s', (name, width, height, args) => {
  const bytes = madeSheet(`${squeezed(name)}.pdf`, ...args);
  const { stdout } = neckfall('handout', ...args, '--json', '--today', '2027-05-03', '--years', '3');

  test('is one page of its paper, and nothing on it leaves the page', async () => {
    const read = await readSheetPdf(bytes);
    expect(read.pages).toBe(1);
    expect([read.width, read.height]).toEqual([expect.closeTo(width, 1), expect.closeTo(height, 1)]);
    for (const { text, x, y, width: wide, size } of read.words) {
      expect({ text, isIn: x > 25 && x + wide < width - 25 && y > 25 && y + size < height - 20 }).toEqual({
        text,
        isIn: true,
      });
    }
  });

  test('says in its order what the document says, in words that can be searched', async () => {
    const { text } = await readSheetPdf(bytes);
    const lines = args.includes('es') ? null : JSON.parse(stdout);
    const said = squeezed(text);
    if (args.includes('--heading'))
      for (const part of longNote.split('\n')) expect(said).toContain(squeezed(part));
    // documents are metric and English; what is not in numbers of the other system is the same
    if (lines === null || args.includes('us')) return;
    let from = 0;
    for (const line of [lines.heading, lines.verdict, ...lines.buy, ...lines.signs, ...lines.cautions]) {
      const at = said.indexOf(squeezed(line), from);
      expect({ line, at: at >= from }).toEqual({ line, at: true });
      from = at;
    }
  });

  test('has faces of its own, cut down and embedded, with what their letters mean', async () => {
    const { faces } = await readSheetPdf(bytes);
    expect(faces.length).toBeGreaterThanOrEqual(3);
    for (const { name: face, isEmbedded } of faces) {
      expect(face).toMatch(/^[A-Z]{6}\+(Alegreya|GardenSans)/);
      expect(isEmbedded).toBe(true);
    }
  });

  test('has no words that lie over each other', async () => {
    const { words } = await readSheetPdf(bytes);
    for (const [at, a] of words.entries()) {
      for (const b of words.slice(at + 1)) {
        const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
        const along = Math.min(a.y + 0.6 * a.size, b.y + 0.6 * b.size) - Math.max(a.y, b.y);
        expect({ a: a.text, b: b.text, isOver: across > 1 && along > 0.5 }).toEqual({
          a: a.text,
          b: b.text,
          isOver: false,
        });
      }
    }
  });

  test('names its title, its language and the day, and nothing of the machine', async () => {
    const { info, tree } = await readSheetPdf(bytes);
    expect(info.Language).toBe(args.includes('es') ? 'es' : args.includes('us') ? 'en-US' : 'en-GB');
    expect(info).toMatchObject({
      Creator: 'Neckfall',
      Producer: 'Neckfall',
      CreationDate: 'D:20270503000000Z',
    });
    const roles = JSON.stringify(tree);
    for (const role of ['H1', 'H2', 'P', 'Figure', 'L', 'LI']) expect(roles).toContain(`"role":"${role}"`);
    expect(roles).toContain('"alt":');
  });
});

test('the same question gives the same bytes', () => {
  expect(madeSheet('a.pdf', 'Leeds').equals(madeSheet('b.pdf', 'Leeds'))).toBe(true);
});

test('names of towns and notes in Greek, Cyrillic and Vietnamese have their letters', async () => {
  const heading = 'Цибуля, κρεμμύδια, hành tây ở Đà Nẵng';
  const { text, faces } = await readSheetPdf(madeSheet('letters.pdf', 'Da Nang', '--heading', heading));
  expect(squeezed(text)).toContain(squeezed(heading));
  expect(faces.every(({ isEmbedded }) => isEmbedded)).toBe(true);
});

test('letters that our faces lack are refused by name, and HTML takes them', () => {
  const args = ['handout', 'Sapporo', '--heading', '玉ねぎ', '--today', '2027-05-03', '--years', '3'];
  const refused = neckfall(...args, '--out', join(folder, 'sapporo.pdf'));
  expect(refused.code).toBe(2);
  expect(refused.stderr).toMatch(/lack 玉 ね ぎ\. Write this sheet as HTML/);
  expect(neckfall(...args, '--out', join(folder, 'sapporo.html')).code).toBe(0);
});

const hasPoppler = spawnSync('pdffonts', ['-v']).status === 0 && spawnSync('pdftotext', ['-v']).status === 0;

test.skipIf(!hasPoppler)('poppler finds the faces embedded, cut down and with a table of letters', () => {
  const file = join(folder, 'poppler.pdf');
  writeFileSync(file, madeSheet('leeds.pdf', 'Leeds'));
  const rows = spawnSync('pdffonts', [file], { encoding: 'utf8' }).stdout.trim().split('\n').slice(2);
  expect(rows.length).toBeGreaterThanOrEqual(3);
  for (const row of rows) expect(row).toMatch(/TrueType +Identity-H +yes yes yes/);
  const text = spawnSync('pdftotext', [file, '-'], { encoding: 'utf8' }).stdout;
  expect(squeezed(text)).toContain(squeezed('Treated seed and sets are not food, nor are young plants'));
});

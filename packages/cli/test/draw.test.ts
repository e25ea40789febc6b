import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { afterAll, describe, expect, test } from 'vitest';
import { neckfallQuick, testDay } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-draw-'));
afterAll(() => rmSync(folder, { recursive: true }));

const crop = ['--class', 'long', '--start', 'sets', '--date', '2027-03-25'];
const starts = crop.slice(0, 4);

/** A picture as a file. */
function drawn(name: string, ...args: string[]): Buffer {
  const out = join(folder, name);
  expect(neckfallQuick('draw', 'Lyon', ...args, '--out', out)).toMatchObject({ code: 0, stdout: '' });
  return readFileSync(out);
}

describe('neckfall draw', () => {
  test.each([
    ['year', []],
    ['year', crop],
    ['bulbs', crop],
    ['starts', starts],
  ])('draws the %s with its source (%j)', (picture, args) => {
    const svg = drawn('a.svg', '--picture', picture, ...args).toString();
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    expect(svg).not.toMatch(/var\(|undefined|NaN/);
    expect(svg).toMatch(/<metadata>Neckfall .* · Lyon, France, 45\.75° N, 4\.85° E · 3 years of weather/);
    expect(svg).toContain('made 3 May 2027</metadata>');
  });

  test('prints the drawing without a file', () => {
    const { code, stdout } = neckfallQuick('draw', 'Lyon');
    expect(code).toBe(0);
    expect(stdout).toBe(drawn('b.svg').toString());
  });

  test('makes an image twice as wide and high, the same each time', () => {
    const svg = drawn('c.svg', ...['--picture', 'bulbs'], ...crop).toString();
    const png = drawn('c.png', ...['--picture', 'bulbs'], ...crop);
    // PNG (ISO/IEC 15948): its mark, then width and height as four bytes each
    expect([...png.subarray(0, 8)]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
    const height = Number(/ height="([\d.]+)"/.exec(svg)?.[1]);
    expect(png.readUInt32BE(16)).toBe(1920);
    expect(Math.abs(png.readUInt32BE(20) - 2 * height)).toBeLessThanOrEqual(1);
    expect(png.equals(drawn('d.png', ...['--picture', 'bulbs'], ...crop))).toBe(true);
  });

  test('makes a page with the numbers, in the language and units asked for', () => {
    const page = drawn('e.html', '--units', 'us').toString();
    expect(page).toContain('<html lang="en-US">');
    expect(page.match(/<tr>/g)).toHaveLength(13);
    expect(page).toContain('°F');
    expect(drawn('f.html', '--lang', 'es').toString()).toContain('<html lang="es">');
  });

  test('draws the bulbs of season, and the onset of its year', () => {
    const season = JSON.parse(neckfallQuick('season', 'Lyon', ...crop, '--json').stdout);
    const { p10, p50, p90 } = season.bulbDiameterMm;
    const svg = drawn('g.svg', ...['--picture', 'bulbs'], ...crop).toString();
    for (const across of [p10, p50, p90]) expect(svg).toContain(`${Math.round(across)}\u00a0mm across`);
    const year = JSON.parse(neckfallQuick('draw', 'Lyon', ...crop, '--json').stdout);
    const marks = Object.fromEntries(year.crop.marks.map((mark: { kind: string }) => [mark.kind, mark]));
    expect(marks.bulbs).toMatchObject({
      date: season.onset.p50,
      from: season.onset.p10,
      to: season.onset.p90,
    });
    expect(marks.tops.date).toBe(season.neckFall.p50);
  });

  test.each([[[]], [crop], [['--class', 'long', '--start', 'sets', '--date', '10-01']]])(
    'tells a year line by its published schema (%j)',
    (args) => {
      const schema = JSON.parse(
        readFileSync(new URL('../schemas/year-line@1.json', import.meta.url), 'utf8'),
      );
      const validate = new Ajv({ strict: true, allErrors: true }).compile(schema);
      const document = JSON.parse(neckfallQuick('draw', 'Lyon', ...args, '--json').stdout);
      validate(document);
      expect(validate.errors).toBeNull();
      expect(document.made).toBe(testDay);
      for (const days of ['rainMm', 'frostShare', 'highC'])
        expect(document[days]).toHaveLength(document.sunUpH.length);
    },
  );

  test.each([
    [
      ['--out', join(folder, 'x.pdf')],
      'x.pdf: expected the name of a file that ends in .svg, .png or .html.',
    ],
    [['--picture', 'map'], '--picture map: expected year, bulbs or starts.'],
    [['--picture', 'bulbs', '--json', ...crop], '`neckfall season --json` has the numbers'],
    [['--picture', 'bulbs'], '--class is missing'],
    [['--picture', 'starts', '--class', 'long'], '--start is missing'],
    [['--class', 'long', '--start', 'sets'], '--date is missing'],
  ])('refuses %j in a line', (args, line) => {
    const { code, stdout, stderr } = neckfallQuick('draw', 'Lyon', ...args);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toContain(line);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
  });
});

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { neckfall } from './command-line.ts';
import { type App, axe, hasChromium, openApp, openFolds, ready } from './open-app.ts';
import { type Taken, taken } from './taken.ts';

const lyon = 'at=45.748,4.847&name=Lyon&today=2027-05-03';
const bank =
  '#/season?at=52.08,-3.13&name=Pencarreg+Bank&class=long&start=raised-seedlings&date=2027-02-20&today=2027-06-20';

const madeUp = '#/latitudes?latitude=52&date=2027-05-20&today=2027-05-03';

type Part = [part: string, name: string, opener?: string];

/** Pages with the parts of them that hold a picture, and what its files are called. */
const pictures: [hash: string, ...Part[]][] = [
  [`#/where?${lyon}`, ['.seen', 'neckfall-lyon-year']],
  [
    bank,
    ['.the-year', 'neckfall-pencarreg-bank-2027-02-20-year'],
    ['.cut', 'neckfall-pencarreg-bank-2027-02-20-bulbs'],
  ],
  [
    `#/when?${lyon}&class=long&start=sets`,
    ['main', 'neckfall-lyon-year', 'Keep the year'],
    ['main', 'neckfall-lyon-starts', 'Keep the starts'],
  ],
  [`#/which?${lyon}`, ['main', 'neckfall-lyon-kinds']],
  [`#/keep?${lyon}&people=2`, ['main', 'neckfall-lyon-store']],
  [`#/questions?${lyon}&shows=sets-flower`, ['main', 'neckfall-lyon-bulbs']],
  [`#/questions?${lyon}&shows=too-late`, ['main', 'neckfall-lyon-starts']],
  [`#/together?${lyon}&class=long&starts=sets~2027-03-25`, ['main', 'neckfall-sets-planted-25-march-starts']],
  [
    madeUp,
    ['.walk-ridge', 'neckfall-52-north-days'],
    ['[aria-labelledby="bulbs"]', 'neckfall-52-north-bulbs'],
    ['[aria-labelledby="line"]', 'neckfall-through-the-latitudes-best'],
  ],
];

/** What a picture's title and its source line name. */
const placesOf = (hash: string, name: string): [inTitle: string, inSource: string] => {
  if (name.endsWith('-best'))
    return ['Through the latitudes', 'from the equator to 70° north, as warm as usual, places made up'];
  if (hash === madeUp) return ['52° north', '52° north, as warm as usual, a place made up'];
  if (hash.includes('/together')) return ['Side by side: ', 'Lyon'];
  return hash.includes('Lyon') ? ['Lyon', 'Lyon'] : ['Pencarreg Bank', 'Pencarreg Bank'];
};

describe.skipIf(!hasChromium)('a picture taken along', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  test.each(pictures)('of %s: three files that stand alone', async (hash, ...parts) => {
    const page = await app.page(hash);
    await openFolds(page);
    for (const [part, name, opener] of parts)
      await standsAlone(page, hash, name, await taken(page, part, opener));
    expect(await axe(page)).toEqual([]);
    await page.close();
  });

  async function standsAlone(page: Page, hash: string, name: string, { names, svg, png, html }: Taken) {
    expect(names).toEqual(['.svg', '.png', '.html'].map((ending) => name + ending));
    const read = await page.evaluate((text) => {
      const found = new DOMParser().parseFromString(text, 'image/svg+xml');
      const textOf = (tag: string) => found.querySelector(tag)?.textContent ?? '';
      const isFaulty = found.querySelector('parsererror') !== null;
      const width = found.documentElement.getAttribute('width');
      return { isFaulty, title: textOf('title'), desc: textOf('desc'), source: textOf('metadata'), width };
    }, svg);
    expect(read.isFaulty).toBe(false);
    expect(read.desc.length).toBeGreaterThan(20);
    const [inTitle, inSource] = placesOf(hash, name);
    expect(read.title).toContain(inTitle);
    expect(read.source).toMatch(
      new RegExp(
        `^Neckfall [\\d.]+ · ${inSource}.* 30 years of weather.*CHELSA.*CRU.*GeoNames.*made .* 2027$`,
      ),
    );
    // PNG (ISO/IEC 15948): its mark, then the width as four bytes
    expect(png.subarray(1, 4).toString()).toBe('PNG');
    expect(png.readUInt32BE(16)).toBe(2 * Number(read.width));
    for (const text of [svg, html])
      expect(/var\(|https?:\/\/(?!www\.w3\.org\/2000\/svg)|<script|\bon\w+="/.exec(text)?.[0]).toBe(
        undefined,
      );
    expect(html).toContain('<table>');
    expect(html).toContain(read.source.replaceAll('&', '&amp;'));
  }

  test('is the one that the command line draws', async () => {
    const page = await app.page(`#/season?${lyon}&class=long&start=sets&date=2027-03-25`);
    const { svg } = await taken(page, '.cut');
    const drawn = await neckfall(
      ...['draw', 'Lyon', '--picture', 'bulbs', '--class', 'long', '--start', 'sets'],
      ...['--date', '2027-03-25', '--today', '2027-05-03'],
    );
    // each has its own head, and no two machines take the same sines to the last digit
    const alike = (text: string) => {
      const [, picture] = /<g transform="translate\(0 \d+\)">(.*)<\/g><path d="M6 /s.exec(text)!;
      const [source] = /<metadata>[^<]*/.exec(text)!;
      return source + picture.replace(/\d+\.\d{5,}/g, (long) => Number(long).toFixed(3));
    };
    expect(alike(svg)).toBe(alike(drawn));
    await page.close();
  });

  test('as a page it needs nobody, and anybody can read it', async () => {
    const page = await app.page(`#/where?${lyon}`);
    const { html } = await taken(page, '.seen');
    const still = await (await app.context()).newPage();
    const asked: string[] = [];
    still.on('request', (request) => asked.push(request.url()));
    await still.setContent(html);
    expect(asked.filter((url) => !url.startsWith('about:'))).toEqual([]);
    expect(await still.getByRole('img').getAttribute('aria-label')).toContain('longest day');
    expect(await still.locator('tbody tr').count()).toBe(12);
    expect(await axe(still)).toEqual([]);
    await still.context().close();
    await page.close();
  });

  test('is light whatever the page is, and is offered again in another language', async () => {
    const page = await app.page(`#/where?${lyon}`, { dark: true, locale: 'es' });
    await ready(page);
    const { svg } = await taken(page, '.seen', 'Guardar esta imagen');
    expect(svg).toContain('fill="#fbf7ee"');
    expect(svg).toContain('30 años de tiempo');
    await page.close();
    app.expectClean();
  });
});

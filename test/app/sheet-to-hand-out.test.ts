import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { longHeading, longNote } from '../../packages/cli/test/handout/words.ts';
import { neckfall } from './command-line.ts';
import { download } from './download.ts';
import { type App, axe, hasChromium, openApp } from './open-app.ts';
import { readPdf } from './pdf-text.ts';

const squeezed = (text: string | null) => (text ?? '').replace(/\s/g, '');
const day = '2027-05-03';
const own = `heading=${encodeURIComponent(longHeading)}&note=${encodeURIComponent(longNote)}`;
const leeds = `#/sheet?at=53.7965,-1.5478&name=Leeds&today=${day}`;

describe.skipIf(!hasChromium)('a sheet to hand out', () => {
  let app: App;
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-sheet-'));
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(async () => {
    rmSync(folder, { recursive: true });
    app.expectClean();
    await app.close();
  });

  test('says what the command line says, and prints on one page of its paper, alone', async () => {
    const told = JSON.parse(await neckfall('handout', 'Leeds', '--json', '--today', day));
    const page = await app.page(`${leeds}&${own}`);
    const sheet = page.locator('.sheet-paper .sheet');
    await sheet.waitFor();
    const said = squeezed(await sheet.textContent());
    for (const line of [told.verdict, ...told.buy, ...told.signs, ...told.cautions])
      expect(said).toContain(squeezed(line));
    for (const paper of ['a4', 'letter']) {
      await page.getByLabel('Paper').selectOption(paper);
      await page.waitForFunction((wanted) => location.hash.includes(`paper=${wanted}`), paper);
      const { pages, text } = readPdf(await page.pdf({ preferCSSPageSize: true }));
      expect({ paper, pages }).toEqual({ paper, pages: 1 });
      expect(text).toContain(squeezed(told.cautions[0]));
      for (const part of longNote.split('\n')) expect(text).toContain(squeezed(part));
      expect(text).not.toContain(squeezed('What you say on it'));
    }
    await page.close();
  });

  test('keeps heading and note in the link, counts their words, and holds on to the last that fit', async () => {
    const page = await app.page(leeds);
    await page.locator('.sheet-paper .sheet').waitFor();
    await page.getByLabel('Heading').fill('Evening class');
    expect(await page.locator('.own-heading .hint').textContent()).toContain('2 words of at most 14');
    expect(page.url()).toContain('heading=Evening+class');
    await page.locator('.sheet-paper h2', { hasText: 'Evening class' }).waitFor();
    await page.getByLabel('Heading').fill('onion '.repeat(15).trim());
    await page.getByRole('alert').filter({ hasText: '15 words' }).waitFor();
    expect(await page.locator('.sheet-paper h2').first().textContent()).toBe('Evening class');
    await page.close();
  });

  test.each([320, 360])('on a phone of %s px it is there to scale and to be read', async (width) => {
    const page = await app.page(`${leeds}&${own}`, { width });
    await page.locator('.sheet-read .sheet').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    const whole = await page.locator('.sheet-page').boundingBox();
    expect((whole?.height ?? 0) / (whole?.width ?? 1)).toBeCloseTo(841.89 / 595.28, 1);
    expect(await axe(page)).toEqual([]);
    await page.close();
  });

  test('is kept as one file that stands alone, prints on one page and can be read on a phone', async () => {
    const page = await app.page(`${leeds}&${own}`);
    await page.locator('.sheet-paper .sheet').waitFor();
    const { name, bytes } = await download(page, 'Keep as one HTML file');
    expect(name).toBe('neckfall-onions-leeds.html');
    await page.close();
    await expectOnePage(bytes);
  });

  test.each([
    ['Leeds', []],
    ['Llanfairpwllgwyngyll', []],
    ['Austin, US', ['--units', 'us']],
    ['Lyon', ['--lang', 'es']],
    ['Tromsø', []],
  ])('from the command line, %s: one page of either paper, nothing asked of anybody', async (town, args) => {
    for (const paper of ['a4', 'letter']) {
      const out = join(folder, `${paper}.html`);
      const words = ['--heading', longHeading, '--note', longNote, '--paper', paper];
      await neckfall('handout', town, ...args, ...words, '--today', day, '--years', '3', '--out', out);
      await expectOnePage(out);
    }
  });

  async function expectOnePage(file: string | Buffer): Promise<void> {
    const path = typeof file === 'string' ? file : join(folder, 'kept.html');
    if (typeof file !== 'string') writeFileSync(path, file);
    const page = await app.browser.newPage();
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url().slice(0, 40)));
    await page.goto(pathToFileURL(path).href);
    const { pages, text } = readPdf(await page.pdf({ preferCSSPageSize: true }));
    expect(pages).toBe(1);
    const said = await page
      .locator('.sheet')
      .evaluate((sheet) => [...sheet.querySelectorAll('p, li')].map((one) => one.textContent));
    for (const line of said) expect(text).toContain(squeezed(line));
    expect(asked.filter((url) => !/^(file|data):/.test(url))).toEqual([]);
    expect(await page.locator('script').count()).toBe(0);
    expect(await axe(page)).toEqual([]);
    await page.setViewportSize({ width: 320, height: 700 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    await page.close();
  }
});

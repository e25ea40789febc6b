import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { download } from './download.ts';
import { type App, hasChromium, openApp, ready, textOf } from './open-app.ts';

const today = 'today=2027-05-03';
const newZealand = `#/map?view=new-zealand&${today}`;

/** The grid of which all is painted, degrees. */
const wholeDeg = (page: Page) =>
  page.locator('.atlas-canvas').evaluate((canvas) => Number((canvas as HTMLElement).dataset.whole));

/** Waits until all of a grid is there. */
const untilWhole = (page: Page, stepDeg: number) =>
  page.waitForFunction((step) => {
    const { whole, waiting } = document.querySelector<HTMLElement>('.atlas-canvas')?.dataset ?? {};
    return whole !== undefined && whole !== '' && Number(whole) <= step && waiting === undefined;
  }, stepDeg);

/** Dots of the canvas by their colour, the commonest first. */
const dots = (page: Page) =>
  page.locator('.atlas-canvas').evaluate((element) => {
    const canvas = element as HTMLCanvasElement;
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
    const seen = new Map<string, number>();
    for (let at = 0; at < data.length; at += 4) {
      if (data[at + 3] < 255) continue;
      const colour = data.slice(at, at + 3).join();
      seen.set(colour, (seen.get(colour) ?? 0) + 1);
    }
    return [...seen].sort(([, a], [, b]) => b - a);
  });

describe.skipIf(!hasChromium)('the map', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  test('stands with its coarsest points, fills in finer, and says how far it is', async () => {
    const page = await app.page(newZealand);
    expect(await page.locator('h1.answer').textContent()).toMatch(/onions|point/);
    expect(await wholeDeg(page)).toBeGreaterThanOrEqual(1);
    const before = await dots(page);
    await untilWhole(page, 2);
    expect((await dots(page)).length).toBeGreaterThan(before.length);
    await page.locator('.atlas-progress', { hasText: /every [\d.]+°/ }).waitFor();
    expect(await textOf(page)).toMatch(/New Zealand: \d+ points?, one every/);
  });

  test('stops and goes on by its button, and asks nothing anew for something else to show', async () => {
    const page = await app.page(newZealand);
    await page.getByRole('button', { name: 'Stop here' }).click();
    await page.getByRole('button', { name: 'Go on, finer' }).waitFor();
    const at = await wholeDeg(page);
    const kinds = await dots(page);
    await page.getByLabel('Bulb size').check();
    await page.waitForFunction(() => location.hash.includes('shows=size'));
    await ready(page);
    await page.waitForFunction(
      ([first]) => {
        const canvas = document.querySelector<HTMLCanvasElement>('.atlas-canvas')!;
        const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
        let count = 0;
        for (let i = 0; i < data.length; i += 4) if (data.slice(i, i + 3).join() === first[0]) count++;
        return count !== first[1];
      },
      kinds as [string, number][],
    );
    expect(await wholeDeg(page)).toBe(at);
    await page.getByRole('button', { name: 'Go on, finer' }).click();
    await untilWhole(page, at / 2);
    await page.close();
  });

  test('says of a point what Where says there', async () => {
    const page = await app.page(`#/map?view=europe~45.76,4.84&${today}`);
    const said = await page.locator('.atlas-said').textContent();
    const where = await app.at(`#/where?at=45.76,4.84&${today}`);
    expect(await where.locator('h1.answer').textContent()).toBe(said);
    const href = await page.locator('.atlas-point .onward a').first().getAttribute('href');
    expect(href).toContain('#/where?at=45.76,4.84');
    await page.close();
  });

  test.each([
    ['north', '#/map?view=europe~60,10', 'ArrowUp', /^61|^60\.5/],
    ['south', '#/map?view=new-zealand~-43,172', 'ArrowDown', /^-4[345]/],
  ])('is worked by the arrow keys on the %s half of the Earth', async (_, hash, key, expected) => {
    const page = await app.page(`${hash}&${today}`);
    await page.locator('.atlas-canvas').focus();
    await page.keyboard.press(key);
    await page.waitForFunction((old) => !location.hash.includes(old), hash.split('~')[1]);
    const at = new URL(page.url()).hash.split('~')[1];
    expect(at).toMatch(expected);
    await ready(page);
    expect(await page.locator('#atlas-point').textContent()).not.toBe('');
    await page.close();
  });

  test('takes a tap, and tells water from land', async () => {
    const page = await app.page(newZealand);
    const canvas = page.locator('.atlas-canvas');
    const { width, height } = (await canvas.boundingBox())!;
    await canvas.click({ position: { x: width / 2, y: height * 0.95 } });
    await page.locator('#atlas-point', { hasText: 'lies in water' }).waitFor();
    await page.close();
  });

  test('gives its points as a table and itself as a picture that stands alone', async () => {
    const page = await app.page(newZealand);
    await untilWhole(page, 2);
    const csv = await download(page, 'Keep its points as CSV');
    expect(csv.name).toMatch(/^neckfall-.*new-zealand.*\.csv$/);
    const [head, ...rows] = csv.bytes.toString().trim().split('\r\n');
    expect(head).toContain('latitude,longitude,class,type,start');
    for (const row of rows) expect(row).toMatch(/^-\d+(\.\d+)?,1[67]\d/);
    const svg = (await download(page, 'Keep the map as SVG')).bytes.toString();
    expect(svg).toMatch(/^<svg [\s\S]*<title>Map of New Zealand/);
    expect(svg).not.toContain('var(');
    await page.close();
  });

  test('is there at once at a second visit, without a network', async () => {
    const own = await openApp();
    const context = await own.context({ offline: true });
    const page = await own.page(newZealand, { context });
    await untilWhole(page, 4);
    await page.getByRole('button', { name: 'Stop here' }).click();
    const first = await wholeDeg(page);
    await page.getByText('Ready to work without a network').waitFor();
    own.cut();
    const again = await own.page(newZealand, { context });
    await untilWhole(again, first);
    expect(await again.locator('h1.answer').textContent()).toMatch(/onions/);
    await own.close();
  });

  test('leaves nothing wrong behind', () => app.expectClean());
});

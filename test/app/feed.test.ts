import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { neckfall } from './command-line.ts';
import { openFile } from './kept-garden.ts';
import { type App, axe, hasChromium, openApp, ready } from './open-app.ts';
import { garden, season } from './seen-garden.ts';

const plain = (text: string | null) => (text ?? '').replace(/\s+/g, ' ').trim();
const fold = (page: Page) => page.locator('section.feed');
const product = (page: Page) => page.getByLabel('What you feed with');

/** Unfolds the feed of a crop, which is worked out only then. */
async function openFeed(page: Page): Promise<Page> {
  await fold(page).locator('summary').click();
  await page.locator('.feed-lead').waitFor();
  await ready(page);
  return page;
}

describe.skipIf(!hasChromium)('feed on the Season page', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  const lyon = '#/season?at=45.748,4.847&name=Lyon&today=2027-05-03';
  test.each([
    ['sets', 'class=long&start=sets&date=2028-03-20', '--class long --start sets --date 2028-03-20'],
    [
      'seed on sand',
      'class=long&start=direct-seed&date=2028-03-25&soil=sand',
      '--class long --start direct-seed --date 2028-03-25 --soil sand',
    ],
    [
      'seedlings of trays',
      'class=intermediate&start=raised-seedlings&date=2028-02-10&plant-out=2028-04-12',
      '--class intermediate --start raised-seedlings --date 2028-02-10 --plant-out 2028-04-12',
    ],
  ])('says of %s what the command line says', async (_, hash, options) => {
    const page = await openFeed(await app.at(`${lyon}&${hash}`));
    const said = plain(await neckfall('feed', 'Lyon', ...options.split(' '), '--today', '2027-05-03'));
    const lead = plain(await page.locator('.feed-lead').textContent());
    expect(said).toContain(lead.replace(/^Lyon/, ''));
    const rows = await fold(page).locator('tbody tr').all();
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows)
      expect(said).toContain(plain((await row.locator('th, td').allTextContents()).join(' ')));
    const told = await fold(page)
      .locator('.feed-plan > p:not(.feed-lead), li:not(:last-child)')
      .allTextContents();
    expect(told.length).toBeGreaterThan(6);
    for (const words of told) expect(said).toContain(plain(words));
  });

  test('weighs the product that is named, and refuses what is none', async () => {
    const page = await openFeed(await app.at(`${lyon}&class=long&start=sets&date=2028-03-20`));
    await product(page).fill('46 - 0 - 0');
    await product(page).press('Tab');
    await page.locator('.feed-lead', { hasText: '46-0-0' }).waitFor();
    await product(page).fill('Blood meal');
    await product(page).press('Tab');
    await page.locator('.feed-lead', { hasText: 'blood meal' }).waitFor();
    await product(page).fill('0-20-20');
    await product(page).press('Tab');
    await page.getByRole('alert').filter({ hasText: '0-20-20' }).waitFor();
    expect(await page.locator('.feed-lead').textContent()).toContain('blood meal');
  });

  test('goes by the bed of a garden, takes off what was fed, and keeps the product in the bed', async () => {
    const bed = { id: 'b', name: 'Upper terrace', placeId: 'bank', fertility: 'poor', feedProduct: '10-4-8' };
    const held = {
      ...garden,
      beds: [bed],
      plantings: garden.plantings.map((planting) => ({ ...planting, bedId: 'b', plantDistanceCm: 10 })),
      observations: [{ id: 'o', plantingId: 'bed', date: '2027-04-20', fedProduct: '10-4-8', fedG: 200 }],
    };
    const context = await app.context({});
    const first = await app.page(season('2027-05-10', null), { context });
    await openFile(first, held);
    await first.close();
    const page = await openFeed(await app.page(season('2027-05-10'), { context }));
    const text = plain(await fold(page).textContent());
    // 250 plants at 300 by 100 mm, and 200 g of 10 % on them
    expect(text).toContain('comes to 2.7 g/m² of nitrogen');
    expect(text).toContain('A poor soil gives about 1 g/m²');
    expect(text).toContain('Kept with the bed “Upper terrace”');
    expect(await product(page).inputValue()).toBe('10-4-8');
    await product(page).fill('7-7-7');
    await product(page).press('Tab');
    await page.locator('.feed-lead', { hasText: '7-7-7' }).waitFor();
    await page.reload();
    await openFeed(page);
    expect(await product(page).inputValue()).toBe('7-7-7');
    await context.close();
  });

  test.each([{ width: 320 }, { dark: true }])('can be read and used by everyone: %o', async (look) => {
    const page = await openFeed(await app.at(`${lyon}&class=long&start=sets&date=2028-03-20`, look));
    expect(await axe(page)).toEqual([]);
    const [wide, seen] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
    expect(wide).toBeLessThanOrEqual(seen);
  });
});

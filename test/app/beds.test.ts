import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { garden, heading, kept, openFile, press, told, whole } from './kept-garden.ts';
import { type App, axe, hasChromium, openApp, openDetails, openFolds, ready, textOf } from './open-app.ts';

const place = 'at=52.08,-3.13&name=Pencarreg+Bank';
const crop = `#/season?${place}&class=long&start=sets&date=2027-03-20&today=2027-03-25`;
const bedOf = (more: object) => ({ id: 'long', name: 'The long bed', placeId: 'bank', ...more });
const item = (page: Page, name: string) => page.locator('li', { hasText: name });
const plain = async (page: Page, selector: string) =>
  ((await page.locator(selector).textContent()) ?? '').replace(/\s+/g, ' ').trim();

describe.skipIf(!hasChromium)('beds', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  async function pageWith(held: object | null, hash: string, options = {}): Promise<Page> {
    const context = await app.context(options);
    if (held !== null) {
      const first = await app.page(kept, { context });
      await openFile(first, held);
      await first.close();
    }
    return app.page(hash, { context });
  }
  const close = (page: Page) => page.context().close();

  test('a bed is made on a first visit, changed, removed and taken back', async () => {
    const page = await pageWith(null, kept);
    await press(page, 'Add a bed at Pencarreg Bank');
    await press(page, 'Keep this bed');
    await told(page, 'Give the bed a name first.');
    await page.getByLabel('What you call it').fill('The long bed');
    await page.getByLabel('Length, metres').fill('6');
    await page.getByLabel('Width, metres').fill('1,2');
    await page.getByText('Its ground, water and past').click();
    await page.getByLabel('Soil', { exact: true }).selectOption('clay');
    await page.getByLabel('Years of onions').fill('last year');
    await page.getByLabel('pH of the soil').fill('6.5');
    await told(page, '“last year” won’t do: give years');
    await press(page, 'Keep this bed');
    // what was refused is not kept as it was
    const years = page.getByLabel('Years of onions');
    expect(await years.evaluate((field) => field === document.activeElement)).toBe(true);
    expect(await item(page, 'The long bed').count()).toBe(0);
    await page.getByLabel('Years of onions').fill('2024, 2022');
    await page.getByLabel('Water comes by').selectOption('hose');
    await page.getByLabel('What it gives in all, litres an hour').fill('600');
    await press(page, 'Keep this bed');
    await item(page, 'The long bed').waitFor();
    expect(await plain(page, '.garden li')).toContain(
      '6 m by 1.2 m, clay and onions, garlic or leeks last in 2024.',
    );
    const { beds, places } = (await whole(page)) as unknown as { beds: object[]; places: object[] };
    expect(places).toHaveLength(1);
    expect(beds).toMatchObject([
      {
        name: 'The long bed',
        lengthM: 6,
        widthM: 1.2,
        soil: 'clay',
        alliumYears: [2022, 2024],
        flowLPerH: 600,
        soilPh: 6.5,
      },
    ]);

    await press(page, 'Change bed “The long bed”');
    await page.getByLabel('What you call it').fill('By the wall');
    await page.keyboard.press('Enter');
    await item(page, 'By the wall').waitFor();
    expect(await item(page, 'By the wall').textContent()).toContain('clay');
    await press(page, 'Remove bed “By the wall”');
    await item(page, 'By the wall').waitFor({ state: 'detached' });
    await press(page, 'Take back: bed “By the wall” removed');
    await item(page, 'By the wall').waitFor();
    await press(page, 'Take back: bed “By the wall” changed');
    await item(page, 'The long bed').waitFor();
    await close(page);
  });

  test('a bed refused for want of a name is kept at once when it has one', async () => {
    const page = await pageWith(null, kept);
    await press(page, 'Add a bed at Pencarreg Bank');
    await press(page, 'Keep this bed');
    await told(page, 'Give the bed a name first.');
    await page.getByLabel('What you call it').fill('By the gate');
    await press(page, 'Keep this bed');
    await item(page, 'By the gate').waitFor({ timeout: 10_000 });
    await close(page);
  });

  test('a crop is laid in a bed: its soil changes the season, and a later change of the bed holds', async () => {
    const bed = bedOf({ soil: 'sand', water: 'rain', lengthM: 3, widthM: 1, alliumYears: [2026] });
    const page = await pageWith({ ...garden, beds: [bed] }, crop);
    const before = await textOf(page);
    expect(before).not.toContain('Lies in');
    await openDetails(page);
    await page.getByLabel('Bed', { exact: true }).selectOption({ label: 'The long bed' });
    await told(page, 'Lies in “The long bed”: sand and fed by rain alone.');
    await ready(page);
    expect(page.url()).toContain('water=rain&soil=sand');
    expect(await textOf(page)).toMatch(
      /stood in “The long bed” the year before \(2026\)\. Keep them off it for 3 years/,
    );
    const inSand = await plain(page, 'h1');
    expect(before).not.toContain(inSand);

    await openFolds(page);
    await page.getByRole('button', { name: 'Keep it on this device' }).click();
    await page.waitForFunction(() => location.hash.includes('planting='));
    const link = page.url();
    await page
      .getByRole('contentinfo')
      .getByRole('link', { name: /^Kept on this device/ })
      .click();
    await told(page, 'In it: “');
    const saved = (await whole(page)) as unknown as { plantings: Record<string, unknown>[] };
    expect(saved.plantings.at(-1)).toMatchObject({ bedId: 'long', placeId: 'bank', soil: null, water: null });

    await press(page, 'Change bed “The long bed”');
    await page.getByText('Its ground, water and past').click();
    await page.getByLabel('Soil', { exact: true }).selectOption('silt-loam');
    await press(page, 'Keep this bed');
    const { name } = saved.plantings.at(-1) ?? {};
    await page
      .getByRole('link', { name: String(name), exact: true })
      .last()
      .click();
    await page.waitForFunction(() => location.hash.startsWith('#/season'));
    await ready(page);
    expect(page.url()).toContain('soil=silt-loam');
    expect(page.url()).not.toBe(link);
    await told(page, 'Kept on this device as');
    await close(page);
  });

  test('a crop whose bed is removed goes on in the same soil, in no bed', async () => {
    const planting = { ...garden.plantings[1], bedId: 'long' };
    const page = await pageWith(
      { ...garden, beds: [bedOf({ soil: 'clay', whiteRot: true })], plantings: [planting] },
      kept,
    );
    await told(page, 'white rot seen');
    await page.getByRole('link', { name: 'By the wall' }).click();
    await ready(page);
    expect(await textOf(page)).toContain('Grow no onions, garlic or leeks there again');
    await page.goBack();
    await press(page, 'Remove bed “The long bed”');
    await page.getByRole('link', { name: 'By the wall' }).click();
    await ready(page);
    const text = await textOf(page);
    expect(text).not.toContain('white rot');
    expect(text).not.toContain('Lies in');
    expect(page.url()).toContain('soil=clay');
    await close(page);
  });

  test('what a spacing takes and gives follows the typing, and is what the season then says', async () => {
    const bed = bedOf({ lengthM: 3, widthM: 0.9 });
    const page = await pageWith({ ...garden, beds: [bed] }, crop);
    await page.locator('details.plan summary').click();
    const box = page.locator('.spacing-told');
    const across = async () => /Bulbs come to (\d+) mm/.exec((await box.textContent()) ?? '')?.[1];
    await expect.poll(across).toBeTruthy();
    const usual = Number(await across());
    expect(await box.textContent()).toMatch(/100 plants take 10 m of row, on 2\.5 m²/);
    expect(await box.textContent()).toMatch(/That is 100 sets: \d+.\d+ g/);

    // while it is typed, before the field is left
    await page.getByLabel('In the row').fill('20');
    await expect.poll(async () => Number(await across())).toBeGreaterThan(usual);
    expect(page.url()).not.toContain('plant-cm');
    const wide = await across();
    await page.getByLabel('In the row').press('Tab');
    await ready(page);
    expect(page.url()).toContain('plant-cm=20');
    expect(await across()).toBe(wide);
    await openFolds(page);
    expect(await page.locator('.expect tbody').textContent()).toContain(`${wide} mm`);
    // what a wider one was said to do is what it does
    const wider = /Wider, at (\d+) cm in the row, they come to (\d+) mm/.exec(
      (await box.textContent()) ?? '',
    )!;
    await page.getByLabel('In the row').fill(wider[1]);
    await expect.poll(across).toBe(wider[2]);

    await page.getByLabel('In the row').fill('30');
    await page.getByLabel('Between rows').fill('30');
    await page.getByLabel('Plants together').fill('4');
    await page.getByLabel('Plants together').press('Tab');
    await ready(page);
    expect(page.url()).toContain('row-cm=30&plant-cm=30&clump=4');
    await expect.poll(() => box.textContent()).toMatch(/in 25 places, on 2\.3 m²/);
    await page.getByLabel('Bed', { exact: true }).selectOption({ label: 'The long bed' });
    await page.getByRole('button', { name: 'Fill it: 120 plants' }).click();
    await ready(page);
    expect(page.url()).toContain('plants=120');
    await close(page);
  });

  test('of seed it tells how many to sow, by its age, and of clumps by the cell', async () => {
    const page = await app.page(
      crop.replace('sets', 'raised-seedlings').replace('date=2027-03-20', 'date=2027-02-10'),
    );
    await page.locator('details.plan summary').click();
    const box = page.locator('.spacing-told');
    const seeds = async () =>
      (/Sow (\d+)–(\d+) seeds/.exec((await box.textContent()) ?? '') ?? []).slice(1).map(Number);
    await expect.poll(seeds).toHaveLength(2);
    const [, unsaid] = await seeds();
    await page.getByLabel('The seed').selectOption('two-years');
    await expect.poll(async () => (await seeds())[1]).toBeGreaterThan(unsaid);
    await page.getByLabel('Plants together').fill('4');
    await expect.poll(() => box.textContent()).toMatch(/Sow \d+–\d+ seeds in each of 25 cells/);
    await page.context().close();
  });

  test.each([
    ['on a phone, light', 360, false],
    ['on a desk, dark', 1280, true],
  ])(
    '%s: all of it by keyboard, nothing for axe to find, nothing beside the page',
    async (_, width, dark) => {
      const long = bedOf({
        id: 'c',
        name: 'Thelongestbedofall'.repeat(4),
        alliumYears: [2026],
        soil: 'clay',
      });
      const page = await pageWith({ ...garden, beds: [bedOf({}), long] }, kept, { width, dark });
      await heading(page).waitFor();
      const make = page.getByRole('button', { name: 'Add a bed at Pencarreg Bank' });
      await make.focus();
      await page.keyboard.press('Enter');
      expect(
        await page.getByLabel('What you call it').evaluate((field) => field === document.activeElement),
      ).toBe(true);
      await page.keyboard.type('By the gate');
      await openDetails(page);
      expect(await axe(page)).toEqual([]);
      const over = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(await over()).toBe(0);
      await page.getByLabel('What you call it').press('Enter');
      await item(page, 'By the gate').waitFor();
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Beds');

      await page.goto(`${app.url}${crop}`);
      await ready(page);
      await openDetails(page);
      await page.getByLabel('Bed', { exact: true }).selectOption({ label: long.name });
      await page.locator('.spacing-told', { hasText: 'Bulbs come to' }).waitFor();
      await ready(page);
      expect(await axe(page)).toEqual([]);
      for (const at of [width, 320]) {
        await page.setViewportSize({ width: at, height: 700 });
        expect(await over()).toBe(0);
      }
      await close(page);
      app.expectClean();
    },
  );
});

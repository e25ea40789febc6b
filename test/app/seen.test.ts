import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { neckfall } from './command-line.ts';
import { kept, openFile, press, told, whole } from './kept-garden.ts';
import { type App, axe, hasChromium, openApp, openFolds, ready } from './open-app.ts';

const place = 'at=52.08,-3.13&name=Pencarreg+Bank';
const plan = `${place}&class=long&start=raised-seedlings&date=2027-02-20&plants=250&row-cm=30`;
const season = (day: string, planting: string | null = 'bed') =>
  `#/season?${plan}${planting === null ? '' : `&planting=${planting}`}&today=${day}`;

/** An invented garden with one crop under way. */
const garden = {
  schema: 'neckfall/garden@1',
  places: [{ id: 'bank', name: 'Pencarreg Bank', latitudeDeg: 52.08, longitudeDeg: -3.13 }],
  cultivars: [],
  plantings: [
    {
      id: 'bed',
      name: 'The long bed',
      placeId: 'bank',
      class: 'long',
      start: 'raised-seedlings',
      startDate: '2027-02-20',
      rowDistanceCm: 30,
      plants: 250,
    },
  ],
  observations: [] as object[],
};
const counted = (date: string, leavesGreen: number, more: object = {}) => ({
  id: `on-${date}`,
  plantingId: 'bed',
  date,
  leavesGreen,
  lookedAt: 5,
  ...more,
});

const asked = (page: Page) => page.locator('.thumbs input');
const noteIt = (page: Page) => page.locator('.quick .note-it');
const entries = (page: Page) => page.locator('.saw li');
const lead = async (page: Page) => ((await page.locator('.today').textContent()) ?? '').replace(/\s+/g, ' ');

describe.skipIf(!hasChromium)('what was seen of a crop', () => {
  let app: App;
  let context: BrowserContext;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  /** A window of its own that keeps this garden, at a day of the season. */
  async function withGarden(
    day: string,
    observations: object[] = [],
    options: { width?: number; locale?: string; offline?: boolean } = {},
  ): Promise<Page> {
    context = await app.context(options);
    const first = await app.page(kept, { context });
    await openFile(first, { ...garden, observations });
    await first.close();
    return app.page(season(day), { context, ...options });
  }

  test('is counted in two taps, said, listed, and kept in the garden', async () => {
    const page = await withGarden('2027-05-20', [counted('2027-05-10', 3)], { width: 360 });
    await page.getByRole('button', { name: '+1: How many green leaves?' }).click();
    await noteIt(page).click();
    await told(page, 'Noted: 20 May 2027, 5 plants: 4 green leaves.');
    await ready(page);
    expect(await entries(page).allTextContents()).toEqual([
      expect.stringContaining('20 May 2027, 5 plants: 4 green leaves.'),
      expect.stringContaining('10 May 2027, 5 plants: 3 green leaves.'),
    ]);
    // the button that was pressed keeps the focus
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('note-it');
    await page.reload();
    await ready(page);
    expect(await entries(page).count()).toBe(2);
    expect(await asked(page).inputValue()).toBe('4');
    await context.close();
  });

  test('its buttons are large enough for a thumb', async () => {
    const page = await withGarden('2027-05-20', [], { width: 360 });
    for (const button of await page.locator('.quick button').all()) {
      const box = await button.boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
    }
    await context.close();
  });

  test('keeps a plan first that is not kept yet, and says so', async () => {
    context = await app.context();
    const page = await app.page(season('2027-05-20', null), { context });
    await asked(page).fill('4.5');
    await noteIt(page).click();
    await told(page, 'Your crop is now kept as “northern long-day, sown in trays”');
    await ready(page);
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('note-it');
    const saved = (await whole(page)) as unknown as typeof garden;
    expect(saved.plantings).toHaveLength(1);
    expect(saved.observations).toMatchObject([
      { plantingId: saved.plantings[0].id, date: '2027-05-20', leavesGreen: 4.5, lookedAt: 5 },
    ]);
    await context.close();
  });

  test('is noted of an earlier day and of other plants, which the next count takes up', async () => {
    const page = await withGarden('2027-05-20');
    await page.locator('.noted-when summary').click();
    await page.getByLabel('Day', { exact: true }).fill('2027-05-16');
    await page.getByLabel('On how many plants').fill('8');
    await asked(page).fill('4');
    await noteIt(page).click();
    await told(page, 'Noted: 16 May 2027, 8 plants: 4 green leaves.');
    await ready(page);
    expect(await page.locator('.noted-when summary').textContent()).toContain('on 8 plants');
    await context.close();
  });

  test('what can’t be a number of leaves is refused in words, and nothing is noted', async () => {
    const page = await withGarden('2027-05-20');
    for (const bad of ['many', '31', '-1']) {
      await asked(page).fill(bad);
      await noteIt(page).click();
      await page.getByRole('alert').getByText(bad).waitFor();
    }
    expect(await entries(page).count()).toBe(0);
    await context.close();
  });

  test('what is odd is asked about: noted where it is so, left where it is not', async () => {
    const page = await withGarden('2027-05-20', [counted('2027-05-10', 7)]);
    await asked(page).fill('2');
    await noteIt(page).click();
    const doubt = page.getByRole('group', { name: /2 green leaves now, 7 on 10 May 2027/ });
    await doubt.waitFor();
    expect(await axe(page)).toEqual([]);
    await page.getByRole('button', { name: 'Change it', exact: true }).click();
    await doubt.waitFor({ state: 'detached' });
    expect(await entries(page).count()).toBe(1);
    expect(await page.evaluate(() => document.activeElement?.closest('.thumbs') !== null)).toBe(true);
    await noteIt(page).click();
    await page.getByRole('button', { name: 'Yes, note it' }).click();
    await told(page, 'Noted: 20 May 2027, 5 plants: 2 green leaves.');
    await context.close();
  });

  test('anything else is noted too, each in the reader’s units', async () => {
    const page = await withGarden('2027-05-20', [], { locale: 'en-US' });
    await page.locator('.noting-more summary').first().click();
    await page.getByLabel('Watered, gallons').fill('10');
    await page.getByLabel('What was it?').selectOption({ label: 'Fed' });
    await page.getByLabel('Fed with, N-P-K').fill('10-5-8');
    await page.getByLabel('Feed given, ounces').fill('4');
    await page.getByLabel('Note', { exact: true }).fill('Slugs by the hedge');
    await page.locator('.entry .note-it').click();
    await told(page, 'Noted: May 20, 2027: watered with 10 gal and fed with 4 oz of 10-5-8.');
    await ready(page);
    expect(await entries(page).first().textContent()).toContain('Slugs by the hedge');
    const { observations } = (await whole(page)) as unknown as typeof garden;
    expect(observations).toMatchObject([
      { wateredLitres: 37.9, fedProduct: '10-5-8', fedG: 113.4, note: 'Slugs by the hedge' },
    ]);
    await context.close();
  });

  test('an empty entry is none', async () => {
    const page = await withGarden('2027-05-20');
    await page.locator('.noting-more summary').first().click();
    await page.locator('.entry .note-it').click();
    await told(page, 'There is nothing to note yet');
    expect(await entries(page).count()).toBe(0);
    await context.close();
  });

  test('asks as the season goes: leaves, bulbs, tops, weight', async () => {
    const page = await withGarden('2027-05-20');
    const question = () => page.locator('.quick label, .quick .asked').first().textContent();
    expect(await question()).toBe('How many green leaves?');
    for (const [day, words] of [
      ['2027-08-01', 'How wide are the bulbs, mm?'],
      ['2027-08-22', 'Of 10 plants, how many have their tops over?'],
      ['2027-10-10', 'What did they weigh?'],
    ]) {
      await page.goto(app.url + season(day));
      await ready(page);
      expect(await question()).toBe(words);
    }
    for (const day of ['2027-01-10', '2028-12-01']) {
      await page.goto(app.url + season(day));
      await ready(page);
      expect(await page.locator('.noting').count()).toBe(0);
    }
    await context.close();
  });

  test('is changed in its place, removed, and brought back', async () => {
    const page = await withGarden('2027-05-20', [
      counted('2027-05-01', 2.5, { by: 'Bram Okoro' }),
      counted('2027-05-10', 3),
    ]);
    await page.getByRole('button', { name: /^Change: 1 May 2027/ }).click();
    await page.getByLabel('Green leaves on a plant').fill('3');
    await page.getByRole('button', { name: 'Keep the change' }).click();
    await told(page, 'Changed: 1 May 2027, 5 plants: 3 green leaves.');
    await ready(page);
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toMatch(
      /^Change: 1 May/,
    );
    // what others wrote beside it stays
    expect(((await whole(page)) as unknown as typeof garden).observations).toMatchObject([
      { leavesGreen: 3, by: 'Bram Okoro' },
      { leavesGreen: 3 },
    ]);
    await page.getByRole('button', { name: /^Remove: 10 May 2027/ }).click();
    await told(page, 'Removed: 10 May 2027');
    expect(await entries(page).count()).toBe(1);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('saw');
    await page.getByRole('button', { name: 'Take it back' }).click();
    await ready(page);
    expect(await entries(page).count()).toBe(2);
    await press(page, /^Take back: what was seen of “The long bed” changed/);
    await page.locator('.saw').getByText('2.5 green leaves').waitFor();
    await context.close();
  });

  test('folds away what is older than the last six', async () => {
    const many = Array.from({ length: 9 }, (_, at) => counted(`2027-05-0${at + 1}`, 2 + at / 4));
    const page = await withGarden('2027-05-20', many);
    expect(await page.locator('.saw > ul > li').count()).toBe(6);
    await page.getByText('Earlier (3)').click();
    expect(await page.locator('.saw details li').count()).toBe(3);
    await context.close();
  });

  test('is there at once in another tab, and counts there too', async () => {
    const one = await withGarden('2027-05-20');
    const other = await app.page(season('2027-05-20'), { context });
    const before = await lead(other);
    await asked(one).fill('7');
    await noteIt(one).click();
    await other.locator('.saw').getByText('7 green leaves').waitFor();
    await ready(other);
    await ready(one);
    expect(await lead(other)).not.toBe(before);
    expect(await lead(other)).toBe(await lead(one));
    await context.close();
  });

  test('narrows the days on which tops go over, and stands on the year line', async () => {
    const page = await withGarden('2027-08-28', [counted('2027-05-20', 4)]);
    const width = () =>
      page.locator('.the-year svg path[stroke-width="7"][stroke-linecap="round"]').evaluateAll((paths) => {
        const spans = (paths as SVGPathElement[]).map((path) => path.getBBox().width);
        return spans.at(-1) ?? 0;
      });
    const before = await width();
    await asked(page).fill('4');
    await noteIt(page).click();
    await page.locator('.saw').getByText('tops over on 4 plants in 10').waitFor();
    await ready(page);
    expect(await width()).toBeLessThan(before * 0.6);
    expect(await page.locator('.the-year figure').getAttribute('aria-label')).toContain(
      'Green leaves counted, 20 May: 4 leaves.',
    );
    await context.close();
  });

  test('tells how the crop stands, what was learnt of it, and what the answer rests on', async () => {
    const page = await withGarden('2027-06-08', [counted('2027-05-14', 4.5), counted('2027-05-27', 5.5)]);
    expect(await lead(page)).toMatch(
      /On 27 May there should have been \S+ green leaves.*you counted 5.5: about \d+ days ahead/,
    );
    await asked(page).fill('6.5');
    await noteIt(page).click();
    await told(page, 'Noted:');
    await ready(page);
    expect(await lead(page)).toMatch(
      /You should see \S+ green leaves.* now; you have 6.5: about \d+ days ahead/,
    );
    expect(await page.locator('.learnt').textContent()).toMatch(/Your leaves come \d+% faster than is usual/);
    await openFolds(page);
    expect(await page.locator('.how').textContent()).toMatch(/rests on about \d+ that fit/);
    await context.close();
  });

  test('comes to what the command line says of the same garden file', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'neckfall-seen-'));
    const file = join(folder, 'bank.neckfall.json');
    const days = 100;
    const weather = {
      id: 'w',
      placeId: 'bank',
      firstDate: '2027-03-01',
      tempMinC: Array.from({ length: days }, (_, at) => 5 + at / 20),
      tempMaxC: Array.from({ length: days }, (_, at) => 13 + at / 15),
      rainMm: Array.from({ length: days }, (_, at) => (at % 3 === 0 ? 6 : null)),
      solarMJ: Array.from({ length: days }, () => null),
      forecastFrom: null,
      sources: [],
    };
    const observations = [
      counted('2027-05-14', 4.5),
      counted('2027-06-08', 7, { lookedAt: 8 }),
      counted('2027-05-27', 5.5),
    ];
    const whole = { ...garden, observations, weather: [weather] };
    writeFileSync(file, JSON.stringify(whole));
    const said = (await neckfall('season', file, '--planting', 'bed', '--today', '2027-06-08')).replace(
      /\s+/g,
      ' ',
    );
    rmSync(folder, { recursive: true });
    context = await app.context();
    const first = await app.page(kept, { context });
    await openFile(first, whole);
    const page = await app.page(season('2027-06-08'), { context });
    const heading = ((await page.locator('h1').textContent()) ?? '').replace(/\s+/g, ' ');
    expect(said).toContain(heading.slice(heading.indexOf(':') + 1).trim());
    for (const sentence of ((await page.locator('.learnt').textContent()) ?? '').split(/(?<=\.) /)) {
      expect(said).toContain(sentence);
    }
    const rows = await page.locator('.expect tbody tr').all();
    expect(rows.length).toBeGreaterThan(3);
    for (const row of rows) {
      const cells = await row.locator('th, td').allTextContents();
      expect(said).toContain(cells.join(' ').replace(/\s+/g, ' '));
    }
    await context.close();
  });

  test('is where the next season starts from, if one likes', async () => {
    const next = {
      ...garden.plantings[0],
      id: 'next',
      name: 'The bed by the hedge',
      startDate: '2028-02-20',
    };
    context = await app.context();
    const first = await app.page(kept, { context });
    const observations = [counted('2027-05-14', 4.5), counted('2027-05-27', 5.5), counted('2027-06-08', 7)];
    await openFile(first, { ...garden, plantings: [...garden.plantings, next], observations });
    await first.close();
    const ahead = season('2028-01-10', 'next').replace('date=2027', 'date=2028');
    const page = await app.page(ahead, { context });
    const usual = await lead(page);
    await page.getByRole('button', { name: 'Start from what you learnt in 2027' }).click();
    await told(page, 'This starts from what “The long bed” showed you in 2027.');
    await ready(page);
    const learnt = await lead(page);
    expect(learnt).not.toBe(usual);
    expect(((await whole(page)) as unknown as typeof garden).plantings[1]).toMatchObject({
      learntFrom: 'bed',
    });
    // When takes it up alike
    const when = await app.page(ahead.replace('#/season', '#/when'), { context });
    await told(when, 'This starts from what “The long bed” showed you in 2027.');
    const fall = async (at: Page) => ((await at.textContent('h1, .season-from')) ?? '').length;
    expect(await fall(when)).toBeGreaterThan(0);
    const tops = when.locator('.season-from tr', { hasText: 'Tops go over' }).locator('td').first();
    const inSeason = page.locator('.expect tr', { hasText: 'Tops go over' }).locator('td').first();
    expect(await tops.textContent()).toBe(await inSeason.textContent());
    await page.getByRole('button', { name: 'Start from what is usual' }).click();
    await page.getByRole('button', { name: 'Start from what you learnt in 2027' }).waitFor();
    await ready(page);
    expect(await lead(page)).toBe(usual);
    await context.close();
  });

  test('meets the weather that was kept of its place, and starts to come do not', async () => {
    const days = 120;
    const constant = (value: number) => Array.from({ length: days }, () => value);
    // a spring far warmer than any
    const weather = [
      {
        id: 'w',
        placeId: 'bank',
        firstDate: '2027-02-20',
        tempMinC: constant(14),
        tempMaxC: constant(26),
        rainMm: constant(2),
        solarMJ: constant(18),
        forecastFrom: null,
        sources: [],
      },
    ];
    context = await app.context();
    const first = await app.page(kept, { context });
    const bare = await app.page(season('2027-06-19', null), { context });
    const usual = await lead(bare);
    const toCome = season('2027-06-19', null).replace('date=2027-02-20', 'date=2028-02-20');
    const ahead = await app.page(toCome, { context });
    const usualAhead = await lead(ahead);
    await openFile(first, { ...garden, weather });
    await bare.waitForFunction(
      (before) => document.querySelector('.today')?.textContent?.replace(/\s+/g, ' ') !== before,
      usual,
    );
    await ready(bare);
    expect(await lead(bare)).not.toBe(usual);
    await ahead.reload();
    await ready(ahead);
    expect(await lead(ahead)).toBe(usualAhead);
    await context.close();
  });

  test('has a photo, which stays on the device: small by the entry, large when pressed', async () => {
    const page = await withGarden('2027-05-20');
    await page.locator('.noting-more summary').first().click();
    await page.getByLabel('What was it?').selectOption({ label: 'Something else, in a note' });
    await page.getByLabel('Note', { exact: true }).fill('Slugs by the hedge');
    await page.getByLabel('Photo').setInputFiles({
      name: 'bed.jpg',
      mimeType: 'image/jpeg',
      buffer: await page.screenshot({ type: 'jpeg' }),
    });
    await page.locator('.entry .note-it').click();
    await told(page, 'Noted: 20 May 2027: a note.');
    const small = page.getByRole('button', { name: 'Photo of 20 May 2027: a note.' });
    await small.click();
    const large = page.getByRole('dialog', { name: 'Photo of 20 May 2027: a note.' });
    await large.waitFor();
    expect(await axe(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await large.waitFor({ state: 'hidden' });
    await page.reload();
    await small.waitFor();
    expect(JSON.stringify(await whole(page))).not.toMatch(/photo|blob|base64/);
    await small.click();
    await page.getByRole('button', { name: 'Remove the photo' }).click();
    await small.waitFor({ state: 'detached' });
    expect(await entries(page).count()).toBe(1);
    await context.close();
  });

  test('is worked out while the old answer stands, without a jump', async () => {
    const page = await withGarden('2027-05-20', [counted('2027-05-10', 3)]);
    const top = () => page.locator('.noting').evaluate((noting) => noting.getBoundingClientRect().top);
    const before = await top();
    await noteIt(page).click();
    await told(page, 'Noted:');
    expect(await page.locator('h1.answer').count()).toBe(1);
    expect(Math.abs((await top()) - before)).toBeLessThan(1);
    await context.close();
  });

  test('is noted without a network', async () => {
    const own = await openApp();
    const page = await own.page(season('2027-05-20', null), { offline: true });
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.waitForFunction(async () => (await caches.keys()).length > 0);
    await page.reload();
    await ready(page);
    own.cut();
    await asked(page).fill('4');
    await noteIt(page).click();
    await told(page, 'Noted: 20 May 2027');
    await page.reload();
    await ready(page);
    expect(await entries(page).count()).toBe(1);
    await own.close();
  });

  test('stands on the printed sheet, without its controls', async () => {
    const page = await withGarden('2027-05-20', [counted('2027-05-10', 3, { note: 'Slugs by the hedge' })]);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.saw li').first().isVisible()).toBe(true);
    expect(await page.locator('.saw li').first().textContent()).toMatch(
      /3 green leaves\..*Slugs by the hedge/,
    );
    expect(await page.locator('.noting').isVisible()).toBe(false);
    expect(await page.locator('.saw button').first().isVisible()).toBe(false);
    await page.emulateMedia({ media: null });
    await context.close();
  });

  test.each([360, 1280])('nothing for axe to find at %d px, all open', async (width) => {
    for (const dark of [false, true]) {
      const page = await withGarden('2027-05-20', [counted('2027-05-10', 3)], { width });
      await page.emulateMedia({ colorScheme: dark ? 'dark' : 'light' });
      await page.locator('.noted-when summary').click();
      await page.locator('.noting-more summary').first().click();
      await page.getByRole('button', { name: /^Change: 10 May/ }).click();
      await asked(page).fill('4');
      await noteIt(page).click();
      await told(page, 'Noted:');
      await ready(page);
      expect(await axe(page)).toEqual([]);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(over).toBe(0);
      await context.close();
    }
    app.expectClean();
  });
});

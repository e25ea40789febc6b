import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { neckfall } from './command-line.ts';
import { kept, openFile, told, whole } from './kept-garden.ts';
import { type App, hasChromium, openApp, openFolds, ready } from './open-app.ts';
import { asked, counted, garden, type HowSeen, lead, noteIt, pageWith, season } from './seen-garden.ts';
import { weatherHere } from './weather-files.ts';

describe.skipIf(!hasChromium)('the forecast that learns from what was seen', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => {
    app.expectClean();
    return app.close();
  });

  /** A page at a day of the season, in a window of its own that keeps the garden. */
  const withGarden = (...how: HowSeen): Promise<Page> => pageWith(app, ...how);

  test('is there at once in another tab, and counts there too', async () => {
    const one = await withGarden('2027-05-20');
    const other = await app.page(season('2027-05-20'), { context: one.context() });
    const before = await lead(other);
    await asked(one).fill('7');
    await noteIt(one).click();
    await other.locator('.saw').getByText('7 green leaves').waitFor();
    await ready(other);
    await ready(one);
    expect(await lead(other)).not.toBe(before);
    expect(await lead(other)).toBe(await lead(one));
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
    const context = await app.context();
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
    const context = await app.context();
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
        tempMinC: constant(14).map((tempC, at) => tempC + (at % 2)),
        tempMaxC: constant(26),
        rainMm: constant(2),
        solarMJ: constant(18),
        forecastFrom: null,
        sources: [],
      },
    ];
    const context = await app.context();
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
    const grounds = bare.locator('.how');
    expect(await grounds.textContent()).toContain(
      'Days from 20 February 2027 to 19 June 2027 as they came, where the weather kept of this place has them.',
    );
    await ahead.reload();
    await ready(ahead);
    expect(await lead(ahead)).toBe(usualAhead);
    expect(await ahead.locator('main').textContent()).not.toContain('as they came');
    // days that no thermometer showed are none to work with, as the command line has it
    await openFile(first, { ...garden, weather: [{ ...weather[0], tempMinC: constant(14) }] });
    await bare.locator('.how', { hasText: 'so these were not measured' }).waitFor({ state: 'attached' });
    await ready(bare);
    expect(await lead(bare)).toBe(usual);
    const page = await app.page(weatherHere, { context });
    expect(await page.locator('main .alarm').textContent()).toContain('no season is worked out with it');
    await context.close();
  });

  test('is worked out while the old answer stands, without a jump', async () => {
    const page = await withGarden('2027-05-20', [counted('2027-05-10', 3)]);
    const top = () => page.locator('.noting').evaluate((noting) => noting.getBoundingClientRect().top);
    // what is noted stands below the week's work: a press would bring it into view by itself
    await noteIt(page).scrollIntoViewIfNeeded();
    const before = await top();
    await noteIt(page).click();
    await told(page, 'Noted:');
    expect(await page.locator('h1.answer').count()).toBe(1);
    expect(Math.abs((await top()) - before)).toBeLessThan(1);
  });
});

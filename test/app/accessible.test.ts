import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, axe, hasChromium, openApp, openDetails, ready } from './open-app.ts';
import {
  giveWeather,
  keepWeather,
  letter,
  otherThermometer,
  stationFile,
  weatherHere,
} from './weather-files.ts';

const place = 'at=45.748,4.847&name=Lyon&today=2027-05-03';
const pages = [
  { name: 'a first visit', hash: '' },
  { name: 'where', hash: `#/where?${place}` },
  {
    name: 'a season under way',
    hash: `#/season?${place}&class=long&start=direct-seed&date=2027-03-10`,
  },
  { name: 'keep', hash: `#/keep?${place}&people=3&store=4,65` },
  { name: 'a sheet to hand out', hash: `#/sheet?${place}&heading=Allotment+evening&note=Bring+soil` },
  { name: 'ten questions', hash: `#/questions?${place}&shows=sets-flower` },
  { name: 'through the latitudes', hash: '#/latitudes?latitude=52&today=2027-05-03' },
  { name: 'about', hash: `#/about?${place}` },
  { name: 'weather, none kept yet', hash: weatherHere },
  { name: 'a map with a point asked', hash: '#/map?view=new-zealand~-41.29,174.78&today=2027-05-03' },
  {
    name: 'places side by side',
    hash: '#/together?today=2027-05-03&view=longest-day&places=45.748,4.847~Lyon;-45.874,170.504~Dunedin',
  },
  { name: 'starts side by side', hash: `#/together?${place}&class=long&starts=sets~2027-03-25` },
  { name: 'a place at sea', hash: '#/where?at=0,-30' },
];

const light = { dark: false };
const dark = { dark: true };
const phone = { width: 360 };
const desk = { width: 1280 };

/** Each page once light, on a phone, and once dark, on a desk. */
const views = pages.flatMap((page) => [
  { ...page, ...light, ...phone },
  { ...page, ...dark, ...desk },
]);

describe.skipIf(!hasChromium)('every page', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());
  /** A first visit has a window of its own. */
  const open = (hash: string, look: { width: number; dark?: boolean }) =>
    hash === '' ? app.page(hash, look) : app.at(hash, look);

  test.each(views)(
    '$name at $width px, dark $dark: nothing for axe to find, all folds open',
    async (view) => {
      const page = await open(view.hash, view);
      await openDetails(page);
      expect(await axe(page)).toEqual([]);
    },
  );

  test.each(pages)('$name needs no sideways scrolling, from 320 px on', async ({ hash }) => {
    const page = await open(hash, { width: 320 });
    for (const width of [320, 480, 640]) {
      await page.setViewportSize({ width, height: 700 });
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect({ width, over }).toEqual({ width, over: 0 });
    }
  });

  test.each([
    { ...light, ...phone },
    { ...dark, ...desk },
  ])(
    'weather found, kept, differing and refused, at $width px, dark $dark: nothing for axe to find',
    async (look) => {
      const page = await app.page(weatherHere, look);
      await giveWeather(page, stationFile());
      await openDetails(page);
      expect(await axe(page)).toEqual([]);
      await keepWeather(page);
      await giveWeather(page, otherThermometer(2));
      await openDetails(page);
      expect(await axe(page)).toEqual([]);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(over).toBe(0);
      await giveWeather(page, letter);
      await page.locator('main [role=alert]').waitFor();
      expect(await axe(page)).toEqual([]);
      await page.close();
    },
  );

  test('weather is kept by keyboard alone, once its file is chosen', async () => {
    const page = await app.page(weatherHere, desk);
    await giveWeather(page, stationFile());
    await page.waitForFunction(() => document.activeElement?.id === 'found');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.locator('h1', { hasText: 'is kept' }).waitFor();
    await page.waitForFunction(() => document.activeElement?.classList.contains('weather'));
    await page.close();
  });

  test('can be worked by keyboard alone, from the town to the next page', async () => {
    const page = await app.page();
    await page.keyboard.type('Lyon');
    await page.getByRole('option').first().waitFor();
    await page.keyboard.press('Enter');
    await page.locator('h1.answer').waitFor();
    await ready(page);
    const reached: string[] = [];
    for (let i = 0; i < 40 && !reached.includes('When: week by week'); i++) {
      await page.keyboard.press('Tab');
      reached.push(await page.evaluate(() => document.activeElement?.textContent?.trim() ?? ''));
    }
    expect(reached).toContain('When: week by week');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => location.hash.startsWith('#/when'));
    await page.waitForFunction(() => document.activeElement?.tagName === 'MAIN');
  });

  test('can be skipped to with the first key', async () => {
    const page = await app.page(`#/about?${place}`);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.activeElement?.tagName === 'MAIN');
    app.expectClean();
  });
});

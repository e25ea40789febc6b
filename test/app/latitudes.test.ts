import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, axe, hasChromium, openApp, openDetails, ready, textOf } from './open-app.ts';

const today = 'today=2027-05-03';
const at52 = `#/latitudes?latitude=52&date=2027-05-20&${today}`;

describe.skipIf(!hasChromium)('the page that walks through the latitudes', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  const slider = (page: Page, name: RegExp) => page.getByRole('slider', { name });
  const latitude = (page: Page) => slider(page, /How far/);
  const sentences = (page: Page) => page.locator('.three li').allTextContents();
  const addressSays = (page: Page, text: string) =>
    page.waitForFunction((said) => location.hash.includes(said), text);

  test('needs no place, and answers with sentences, pictures and their tables', async () => {
    const page = await app.at(at52);
    expect(await page.locator('h1.answer').textContent()).toContain('At 52° north');
    const three = await sentences(page);
    expect(three).toHaveLength(3);
    expect(three[0]).toContain('16 h 44 min');
    expect(await page.getByRole('img').count()).toBeGreaterThanOrEqual(5);
    await openDetails(page);
    expect(await page.locator('main table').count()).toBeGreaterThanOrEqual(6);
    const text = await textOf(page);
    expect(text).toContain('The zone tells of winter cold; the onion asks the day.');
    expect(text).toContain('made up');
    expect(await page.getByRole('link', { name: 'For a real place, ask Where' }).count()).toBe(1);
  });

  test('is worked by keys alone: degrees, fives, ends, and the other sliders', async () => {
    const page = await app.at(at52);
    await latitude(page).focus();
    for (const [key, value] of [
      ['ArrowRight', '53'],
      ['ArrowLeft', '52'],
      ['PageUp', '57'],
      ['PageDown', '52'],
      ['Home', '0'],
      ['End', '70'],
    ] as const) {
      await page.keyboard.press(key);
      expect(await latitude(page).inputValue()).toBe(value);
    }
    await page.keyboard.press('Home');
    await addressSays(page, 'latitude=0');
    await ready(page);
    expect((await sentences(page))[0]).toContain('every day of the year');
    expect(await latitude(page).getAttribute('aria-valuetext')).toBe('the equator');
    await slider(page, /Warmth/).focus();
    await page.keyboard.press('PageDown');
    await addressSays(page, 'warmth=-2');
    await slider(page, /Sowing day/).focus();
    await page.keyboard.press('PageUp');
    await addressSays(page, 'date=2027-05-27');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('type'))).toBe('range');
  });

  test('has stops for those who do not drag, and says three other sentences at each', async () => {
    const page = await app.at(at52);
    const seen = new Set<string>();
    for (const stop of ['equator', '30°', '45°', '60°', 'polar circle, 67°']) {
      await page.getByRole('button', { name: stop, exact: true }).click();
      await ready(page);
      for (const sentence of await sentences(page)) seen.add(sentence);
    }
    expect(seen.size).toBeGreaterThanOrEqual(12);
    // read out once the hand rests
    await page.waitForFunction(() => {
      const spoken = document.querySelector('[aria-live=polite].unseen')?.textContent ?? '';
      return spoken.includes('67° north');
    });
  });

  test('turns the seasons with the side of the equator, and opens again by its link', async () => {
    const page = await app.at(at52);
    await page.getByLabel('Side of the equator').selectOption('south');
    await addressSays(page, 'latitude=-52');
    await addressSays(page, 'date=2027-11-20');
    await ready(page);
    const heading = await page.locator('h1').textContent();
    const again = await app.page(await page.evaluate(() => location.hash));
    expect(await again.locator('h1').textContent()).toBe(heading);
    await again.close();
  });

  test('tells values of a link that it cannot take, and goes on without them', async () => {
    const page = await app.at(`#/latitudes?latitude=91&warmth=hot&shows=leek&${today}`);
    expect(await page.getByRole('alert').allTextContents()).toHaveLength(3);
    expect(await page.locator('h1.answer').textContent()).toContain('45° north');
  });

  test('stands at the opposite places by their links', async () => {
    const page = await app.at(at52);
    await page
      .getByRole('link', { name: /^Stand at/ })
      .first()
      .click();
    await ready(page);
    expect(await page.locator('h1.answer').textContent()).toMatch(/short-day onions do best: good bulbs/);
  });

  test('takes at most 50 ms of the page’s thread for a step of the latitude', async () => {
    const page = await app.page(at52);
    const session = await page.context().newCDPSession(page);
    // time of the page's own thread: what else the machine does meanwhile is not counted
    await session.send('Performance.enable', { timeDomain: 'threadTicks' });
    const spentMs = async () => {
      const { metrics } = await session.send('Performance.getMetrics');
      const of = (wanted: string) => metrics.find(({ name }) => name === wanted)?.value ?? Number.NaN;
      return 1000 * (of('ScriptDuration') + of('LayoutDuration') + of('RecalcStyleDuration'));
    };
    await latitude(page).focus();
    const before = await spentMs();
    const steps = 20;
    for (let step = 0; step < steps; step++) await page.keyboard.press('ArrowLeft', { delay: 60 });
    await addressSays(page, 'latitude=32');
    await ready(page);
    // all tasks of a step together, of which the longest is one
    const allMs = (await spentMs()) - before;
    expect(allMs).toBeGreaterThan(0);
    expect(allMs / steps).toBeLessThanOrEqual(50);
    await page.close();
  });

  test.each([
    { width: 360, dark: false },
    { width: 1280, dark: true },
  ])('at $width px, dark $dark: nothing for axe to find, no sideways scrolling', async (look) => {
    const page = await app.at(at52, look);
    await openDetails(page);
    expect(await axe(page)).toEqual([]);
    for (const width of [320, look.width]) {
      await page.setViewportSize({ width, height: 700 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
    }
  });

  test('asked nothing of anybody and had no error', () => app.expectClean());
});

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type View, whole, withKept } from './kept-garden.ts';
import { type App, axe, hasChromium, openApp, openDetails, ready } from './open-app.ts';
import { garden } from './seen-garden.ts';
import { bank, causesTold, headline, plain, saw, see, sets } from './why-page.ts';

const winter = 'today=2028-01-20';
const kept = `#/why?${bank}&planting=bed&class=long&start=raised-seedlings&date=2027-02-20&today=2027-09-20`;
const slow = [
  { id: 'a', plantingId: 'bed', date: '2027-05-14', leavesGreen: 2, lookedAt: 5 },
  { id: 'b', plantingId: 'bed', date: '2027-05-30', leavesGreen: 3, lookedAt: 5 },
  { id: 'c', plantingId: 'bed', date: '2027-06-14', leavesGreen: 4, lookedAt: 5 },
];

describe.skipIf(!hasChromium)('the Why page, of crops that are kept, stored, printed', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => {
    app.expectClean();
    return app.close();
  });
  const withSeen = (observations: object[], hash: string, look: View = {}) =>
    withKept(app, { ...garden, observations }, hash, look);

  test('a planting of the garden is chosen from a list, and what was noted of it counts', async () => {
    const blank = `#/why?${bank}&today=2027-09-20&saw=small`;
    const page = await withSeen([], `${kept}&saw=small`);
    const unseen = [await headline(page), ...(await causesTold(page))];
    const noted = await withSeen(slow, blank);
    await noted.locator('.crop-line summary').click();
    await noted.getByLabel('Which crop').selectOption('The long bed');
    await ready(noted);
    expect(noted.url()).toContain('planting=bed');
    await noted.getByText('What you noted of it').waitFor();
    expect([await headline(noted), ...(await causesTold(noted))]).not.toEqual(unseen);
  });

  test('next year’s plan is kept by one press, without what went wrong', async () => {
    const page = await withSeen([], `${kept}&saw=small&answers=weeds~overgrown`);
    await page.getByRole('button', { name: /^Keep next year/ }).click();
    await page.getByText('Kept as “').waitFor();
    const href = await page.locator('.next-year .next').getAttribute('href');
    expect(href).not.toMatch(/saw=|answers=|planting=|taken=/);
    await page.locator('.foot a[href*=kept]').click();
    await ready(page);
    const { plantings } = (await whole(page)) as unknown as { plantings: { startDate: string }[] };
    expect(plantings).toHaveLength(2);
    expect(plantings[1].startDate).toMatch(/^2028/);
    expect(href).toContain(`date=${plantings[1].startDate}`);
  });

  test('where it was stored and when it was seen are asked of what was seen in store alone', async () => {
    const page = await app.page(`#/why?${bank}&${sets}&${winter}&saw=flowered`);
    await page.locator('.crop-line summary').click();
    expect(await page.getByLabel('Where they are kept').count()).toBe(0);
    await page.getByRole('button', { name: 'Change what you saw' }).click();
    await saw(page, 'They flowered', 'Sprouted in store');
    await see(page);
    const causes = page.locator('.causes');
    const before = await causes.textContent();
    await page.locator('.crop-line summary').click();
    await page.getByLabel('Where they are kept').selectOption('kitchen');
    await ready(page);
    await page.getByLabel('When you saw it in store').selectOption({ label: 'Dec 2027' });
    await ready(page);
    expect(page.url()).toContain('store=kitchen');
    expect(page.url()).toContain('noticed=2027-12-15');
    expect(await causes.textContent()).not.toBe(before);
    const bulbs = page.locator('.sound-bulbs').first();
    expect(await bulbs.getAttribute('aria-label')).toMatch(/with it \d+, without it \d+/);
    await page.close();
  });

  test('is reached from the head of the page, from a season that goes wrong, and from a bad look at the store', async () => {
    const page = await app.page(
      `#/season?${bank}&class=short&start=direct-seed&date=2027-04-01&today=2027-03-01`,
    );
    await page.getByRole('link', { name: 'If you saw this' }).click();
    await page.locator('.causes').waitFor();
    await ready(page);
    expect(page.url()).toMatch(/#\/why\?.*saw=/);
    await page.locator('header a', { hasText: 'Season' }).click();
    await ready(page);
    await page.locator('header a', { hasText: 'Why' }).click();
    await page.locator('.causes').waitFor();
    await page.close();
    const stored = await withSeen(
      [
        { id: 'l', plantingId: 'bed', date: '2027-09-01', lifted: true },
        { id: 's', plantingId: 'bed', date: '2027-12-10', soundCount: 80, sproutedCount: 12, rottenCount: 0 },
      ],
      `#/keep?${bank}&${winter}`,
    );
    await stored.getByRole('link', { name: 'Why they went bad' }).click();
    await stored.locator('.causes').waitFor();
    await ready(stored);
    expect(stored.url()).toContain('saw=sprouted');
    expect(stored.url()).toContain('noticed=2027-12-10');
    expect(stored.url()).toContain('planting=bed');
  });

  const views = [
    [`#/why?${bank}&${winter}`, 'the drawings'],
    [`#/why?${bank}&${sets}&${winter}&saw=flowered,small,sprouted&answers=weeds~some`, 'an answer'],
  ] as const;
  test.each(views)('%s: nothing for axe to find, all folds open, no sideways scrolling', async (hash) => {
    for (const look of [
      { width: 360, dark: true },
      { width: 1280, dark: false },
    ]) {
      const page = await app.at(hash, look);
      await openDetails(page);
      await openDetails(page);
      expect(await axe(page)).toEqual([]);
      await page.setViewportSize({ width: 320, height: 700 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
    }
  });

  test.each([
    ['en-US', /in across|1\.\d in|2\.\d in/],
    ['es', /de cada 10/],
  ])('speaks as its reader does: %s', async (locale, words) => {
    const page = await app.at(`#/why?${bank}&${sets}&${winter}&saw=flowered`, { locale });
    expect(plain(await page.locator('main').textContent())).toMatch(words);
    await page.evaluate(() => scrollTo(0, 0));
  });

  test('on paper the answer stands without what is to be pressed', async () => {
    const page: Page = await app.page(`#/why?${bank}&${sets}&${winter}&saw=flowered`);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.why button:visible').count()).toBe(0);
    expect(await page.locator('.ask').isVisible()).toBe(false);
    for (const part of ['h1', '.rescue .today', '.cause.first', '.next-year p'])
      expect(await page.locator(part).first().isVisible()).toBe(true);
    await page.close();
  });
});

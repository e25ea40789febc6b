import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, hasChromium, openApp } from './open-app.ts';

const place = 'at=45.748,4.847&name=Lyon&today=2027-05-03';

/** Counts the elements that come onto the page together, before anything else can have its turn. */
const count = `
  globalThis.atOnce = [];
  new MutationObserver((changes) => {
    const added = changes.flatMap(({ addedNodes }) => [...addedNodes]);
    const sizes = added.map((node) => (node instanceof Element ? 1 + node.querySelectorAll('*').length : 0));
    atOnce.push(sizes.reduce((sum, size) => sum + size, 0));
  }).observe(document, { subtree: true, childList: true });
`;

describe.skipIf(!hasChromium)('a page comes in turns, between which a finger is heard', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  // elements on the page, and the most of them that come at once; the 52 starts of When are one table
  test.each([
    ['Where', `#/where?${place}`, 300, 160],
    ['Which', `#/which?${place}`, 350, 130],
    ['When', `#/when?${place}&class=long&start=sets`, 700, 340],
    ['Season', `#/season?${place}&class=long&start=sets&date=2027-02-01`, 400, 130],
    ['Keep', `#/keep?${place}&people=4`, 200, 180],
    ['Side by side', `#/together?${place}`, 250, 150],
    ['Why, what may be seen', `#/why?${place}`, 300, 130],
    ['Why, an answer', `#/why?${place}&class=long&start=sets&date=2027-02-01&saw=small`, 200, 130],
  ])('%s', async (_, hash, atLeast, mostAtOnce) => {
    const page = await app.page(hash, { width: 360, before: count });
    const atOnce = await page.evaluate(() => (globalThis as unknown as { atOnce: number[] }).atOnce);
    const onPage = await page.evaluate(() => document.body.querySelectorAll('*').length);
    expect(onPage).toBeGreaterThan(atLeast);
    expect(Math.max(...atOnce)).toBeLessThanOrEqual(mostAtOnce);
    await page.close();
  });
});

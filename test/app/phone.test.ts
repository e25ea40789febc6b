import type { BrowserContext } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, hasChromium, openApp } from './open-app.ts';

const place = 'at=51.50853,-0.12574&name=London&today=2027-05-03';

/** WCAG 2.2 asks for 24 px; a wet glove for more. */
const leastPx = 44;

describe.skipIf(!hasChromium)('on a phone of 360 × 740 px, worked by a finger', () => {
  let app: App;
  let phone: BrowserContext;
  beforeAll(async () => {
    app = await openApp();
    phone = await app.browser.newContext({
      viewport: { width: 360, height: 740 },
      hasTouch: true,
      isMobile: true,
      locale: 'en-GB',
      reducedMotion: 'reduce',
      serviceWorkers: 'block',
    });
  });
  afterAll(() => app.close());

  test('headline and what is in time today stand whole on the first screen', async () => {
    const page = await app.at(`#/where?${place}`, { context: phone });
    const [headline, today] = await Promise.all(
      ['h1.answer', '.today'].map((what) => page.locator(what).boundingBox()),
    );
    expect(headline!.y + headline!.height).toBeLessThan(today!.y);
    expect(today!.y + today!.height).toBeLessThan(740);
  });

  test.each(['where', 'which', 'when', 'season', 'keep', 'why', 'about'])(
    'everything to be hit on %s is 44 px high or more',
    async (name) => {
      const page = await app.at(`#/${name}?${place}`, { context: phone });
      const small = await page.evaluate((least) => {
        // links in running text are as high as their line
        const alone = ':is(.pages, .onward, .ways-in, .names, dt, h2, h3, h4) a, .foot a';
        const targets = document.querySelectorAll<HTMLElement>(
          `button:not(.skip), summary, select, label:has(> :is([type=checkbox], [type=radio])), ${alone}`,
        );
        return [...targets].flatMap((target) => {
          const { height, width } = target.getBoundingClientRect();
          const isShown = width > 1 && target.checkVisibility();
          return isShown && (height < least || width < least)
            ? [`${target.textContent?.trim().slice(0, 40)}: ${Math.round(width)} × ${Math.round(height)}`]
            : [];
        });
      }, leastPx);
      expect(small).toEqual([]);
    },
  );

  test('a table is cards: each figure beside the name of its column, no wider than the screen', async () => {
    const page = await app.at(`#/where?${place}`, { context: phone });
    await page.getByText('The year here').click();
    const { cells, over } = await page
      .locator('.scroll')
      .filter({ has: page.locator('caption') })
      .last()
      .evaluate((scroll) => ({
        cells: [...scroll.querySelectorAll('tbody tr:first-child td')].map((cell) => ({
          name: getComputedStyle(cell, '::before').content,
          top: cell.getBoundingClientRect().top,
        })),
        over: scroll.scrollWidth - scroll.clientWidth,
      }));
    expect(over).toBe(0);
    expect(cells.map(({ name }) => name)).toContain('"Rain"');
    expect(cells.map(({ top }) => top)).toEqual(cells.map(({ top }) => top).toSorted((a, b) => a - b));
    expect(new Set(cells.map(({ top }) => top)).size).toBe(cells.length);
  });

  test('pictures stand on the first screen, under the answer', async () => {
    for (const name of ['where', 'when']) {
      const page = await app.at(`#/${name}?${place}`, { context: phone });
      const [answer, picture] = await Promise.all(
        ['h1.answer', '.seen figure'].map((what) => page.locator(what).first().boundingBox()),
      );
      expect(answer!.y + answer!.height).toBeLessThan(picture!.y);
      // the ridge down to the ground; the rows of words may follow
      expect(picture!.y + 240).toBeLessThan(740);
    }
  });

  test('the place is said once to the eye, and in full to those who listen', async () => {
    const page = await app.at(`#/where?${place}`, { context: phone });
    expect(await page.locator('h1').textContent()).toMatch(/^London, United Kingdom: /);
    const said = await page.locator('.place-said').boundingBox();
    expect(said!.width).toBeLessThanOrEqual(1);
    await page.emulateMedia({ media: 'print' });
    expect((await page.locator('.place-said').boundingBox())!.width).toBeGreaterThan(50);
    app.expectClean();
  });
});

import { loadLater, speaker } from '@neckfall/words';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, axe, hasChromium, openApp, ready } from './open-app.ts';

const lyonOn = (day: string) =>
  `#/season?at=45.748,4.847&name=Lyon&class=long&start=direct-seed&date=2027-03-25&today=${day}`;

/** Opens the fold by key and waits for what it says. */
async function lifting(page: Page) {
  const fold = page.locator('section.lift');
  await fold.locator('summary').focus();
  await page.keyboard.press('Enter');
  await fold.locator('strong').waitFor();
  await ready(page);
  return fold;
}

describe.skipIf(!hasChromium)('lifting on the Season page', () => {
  let app: App;
  beforeAll(async () => {
    await loadLater();
    app = await openApp();
  });
  afterAll(() => app.close());

  test('is told near the time alone, with signs, rain and where it is from, and drying', async () => {
    const { say } = speaker('metric');
    const early = await app.at(lyonOn('2027-05-01'));
    await ready(early);
    expect(await early.locator('section.lift').count()).toBe(0);
    const fold = await lifting(await app.at(lyonOn('2027-08-05')));
    const text = (await fold.textContent()) ?? '';
    expect(text).toContain(say('lift.signs'));
    expect(text).toContain('as is usual here');
    expect(text).toMatch(/Under a roof, airy: about \d+ days, \d+–\d+; \d % lighter/);
    expect(text).toContain('carbon monoxide');
  });

  test('leaves axe nothing to find, and scrolls no way sideways at 320 px', async () => {
    for (const colorScheme of ['light', 'dark'] as const) {
      const page = await app.at(lyonOn('2027-08-05'), { width: 320, height: 740 });
      await page.emulateMedia({ colorScheme });
      await lifting(page);
      expect(await axe(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
    }
  });
});

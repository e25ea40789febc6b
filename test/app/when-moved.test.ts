import { formatDay } from '@neckfall/engine';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, hasChromium, openApp, ready } from './open-app.ts';

const today = 'today=2027-05-03';
const lyon = `#/when?at=45.748,4.847&name=Lyon&${today}`;
const sets = `${lyon}&class=long&start=sets`;

describe.skipIf(!hasChromium)('the start on the When page', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  const slider = (page: Page) => page.getByRole('slider', { name: 'Start' });
  const dayOf = async (page: Page) => Number(await slider(page).inputValue());
  const shownDate = (day: number) => formatDay(day);
  /** The season shown is that of the day, and the address says so. */
  const follows = async (page: Page, day: number) => {
    await page.waitForFunction((date) => location.hash.includes(`date=${date}`), shownDate(day));
    await ready(page);
    expect(await page.getByLabel(/^(Sowing|Planting) day$/).inputValue()).toBe(shownDate(day));
  };

  test('moves the start by keys: days, weeks, and the ends of the year', async () => {
    const page = await app.at(`${sets}&date=2027-03-20`);
    await slider(page).focus();
    const from = await dayOf(page);
    expect(shownDate(from)).toBe('2027-03-20');
    for (const [key, by] of [
      ['ArrowRight', 1],
      ['ArrowUp', 1],
      ['ArrowLeft', -1],
      ['PageUp', 7],
      ['PageDown', -7],
    ] as const) {
      const before = await dayOf(page);
      await page.keyboard.press(key);
      expect((await dayOf(page)) - before).toBe(by);
    }
    await follows(page, from + 1);
    await page.keyboard.press('Home');
    const first = await dayOf(page);
    await page.keyboard.press('PageDown');
    expect(await dayOf(page)).toBe(first);
    await page.keyboard.press('End');
    expect((await dayOf(page)) - first).toBe(364);
    await follows(page, first + 364);
    expect(await slider(page).getAttribute('aria-valuetext')).toMatch(/^\d+ \w+: .+ (year|no|work|had)/);
    await page.waitForFunction(() => document.activeElement?.getAttribute('type') === 'range');
  });

  test('loses no key press on a slow machine', async () => {
    const page = await app.page(`${sets}&date=2027-03-20`, { slowed: 6 });
    await slider(page).focus();
    const from = await dayOf(page);
    // about as far apart as the hand may rest before the address follows
    for (let press = 0; press < 48; press++)
      await page.keyboard.press('ArrowRight', { delay: 180 + 2 * press });
    expect((await dayOf(page)) - from).toBe(48);
    await follows(page, from + 48);
    await page.close();
  });

  test('moves the start by hand, the season with it, without a step in the history for each day', async () => {
    // with a history of its own, which is short enough to grow
    const page = await app.page(`${sets}&date=2027-03-20`);
    const steps = await page.evaluate(() => history.length);
    await page.locator('.start-drag').scrollIntoViewIfNeeded();
    const box = await page.locator('.start-drag svg').first().boundingBox();
    if (!box) throw new Error('no hills');
    const y = box.y + 60;
    await page.mouse.move(box.x + box.width * 0.3, y);
    await page.mouse.down();
    const seen = new Set<string>();
    for (let part = 0.3; part < 0.6; part += 0.02) {
      await page.mouse.move(box.x + box.width * part, y);
      await page.waitForFunction(
        (day) => document.querySelector<HTMLInputElement>('.start-slider input')?.value !== day,
        String([...seen].at(-1) ?? ''),
      );
      seen.add(String(await dayOf(page)));
    }
    await page.mouse.up();
    expect(seen.size).toBeGreaterThan(10);
    const day = await dayOf(page);
    await follows(page, day);
    expect(await page.evaluate(() => history.length)).toBe(steps);
    await page.mouse.move(box.x + 20, y);
    expect(await dayOf(page)).toBe(day);
    await page.getByRole('button', { name: /^Back to the best/ }).click();
    await follows(page, await dayOf(page));
    expect(await page.getByRole('button', { name: /^Back to the best/ }).count()).toBe(0);
  });

  test('opens the season of a day typed in, in another year too, and refuses others in words', async () => {
    const page = await app.at(sets);
    await page.getByText('Another onion, another start, or a day of your own').click();
    const field = page.getByLabel('Planting day');
    await field.fill('2025-10-14');
    await page.waitForFunction(() => location.hash.includes('date=2025-10-14'));
    await page.locator('#season-from', { hasText: '14 October' }).waitFor();
    await ready(page);
    expect(shownDate(await dayOf(page))).toBe('2025-10-14');
    await field.fill('1999-01-01');
    await field.blur();
    expect(await page.getByRole('alert').textContent()).toContain('2025');
    expect(page.url()).toContain('date=2025-10-14');
    await page.goBack();
    await page.waitForFunction(() => !location.hash.includes('date='));
  });
});

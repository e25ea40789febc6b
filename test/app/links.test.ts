import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, hasChromium, openApp, ready } from './open-app.ts';

const place = 'at=45.748,4.847&name=Lyon';

/** A day, and one a year on, when the starts that came next then have gone by. */
const now = '2027-05-03';
const yearOn = '2028-06-01';

describe.skipIf(!hasChromium)('the link of an answer', () => {
  let app: App;
  let context: BrowserContext;
  beforeAll(async () => {
    app = await openApp();
    context = await app.context();
    await context.grantPermissions(['clipboard-read', 'clipboard-write'], { origin: app.url });
  });
  afterAll(() => app.close());

  async function copied(page: Page): Promise<string> {
    await page.getByRole('button', { name: 'Copy a link' }).click();
    await page.getByText('Copied.').waitFor();
    return (await page.evaluate(() => navigator.clipboard.readText())).slice(app.url.length);
  }

  const heading = async (page: Page) => (await page.locator('h1').textContent()) ?? '';

  test('of Season carries the plan that was chosen for the reader, and opens to it on another day', async () => {
    const page = await app.at(`#/season?${place}&today=${now}`, { context });
    const link = await copied(page);
    const answer = await heading(page);
    expect(link).toMatch(/[?&]class=[a-z]+&.*start=[a-z-]+&date=20\d\d-\d\d-\d\d/);
    expect(link).not.toContain('today');
    const later = await app.page(`${link}&today=${yearOn}`, { context });
    expect(await heading(later)).toBe(answer);
    await later.close();
    // without the link another plan would be chosen that day
    const chosen = await app.at(`#/season?${place}&today=${yearOn}`, { context });
    expect(await copied(chosen)).not.toBe(link);
  });

  test('of Season keeps a day of planting out', async () => {
    const plan = 'class=long&start=raised-seedlings&date=2027-02-20&plant-out=2027-04-18';
    const page = await app.at(`#/season?${place}&${plan}&today=${now}`, { context });
    expect(await copied(page)).toBe(`#/season?${place}&${plan}`);
  });

  test('of Season names the kind that stands in for an onion we do not know', async () => {
    const page = await app.at(`#/season?${place}&cultivar=Nobody's+Globe&today=${now}`, { context });
    expect(await copied(page)).toMatch(/class=[a-z]+&cultivar=/);
  });

  test('of When carries the onion, its start and the day shown', async () => {
    const page = await app.at(`#/when?${place}&today=${now}`, { context });
    const shown = await page.getByRole('slider', { name: 'Start' }).getAttribute('aria-valuetext');
    const link = await copied(page);
    expect(link).toMatch(/class=[a-z]+&start=[a-z-]+&date=2/);
    const later = await app.at(`${link}&today=${yearOn}`, { context });
    expect(await later.getByRole('slider', { name: 'Start' }).getAttribute('aria-valuetext')).toBe(shown);
  });

  test('says no more that it was copied once the answer is another', async () => {
    const page = await app.at(`#/season?${place}&today=${now}`, { context });
    await copied(page);
    await page.getByText('Change it', { exact: false }).last().click();
    // whatever was chosen, another
    const startedAs = page.getByLabel('Started as');
    await startedAs.selectOption((await startedAs.inputValue()) === 'sets' ? 'raised-seedlings' : 'sets');
    await ready(page);
    expect(await page.getByText('Copied.').count()).toBe(0);
    app.expectClean();
  });
});

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { press, told, whole } from './kept-garden.ts';
import { type App, axe, hasChromium, openApp, ready } from './open-app.ts';
import {
  asked,
  counted,
  entries,
  type garden,
  type HowSeen,
  noteIt,
  pageWith,
  season,
} from './seen-garden.ts';

describe.skipIf(!hasChromium)('what was seen of a crop', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => {
    app.expectClean();
    return app.close();
  });

  const withGarden = (...how: HowSeen): Promise<Page> => pageWith(app, ...how);

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
  });

  test('its buttons are large enough for a thumb', async () => {
    const page = await withGarden('2027-05-20', [], { width: 360 });
    for (const button of await page.locator('.quick button').all()) {
      const box = await button.boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
    }
  });

  test('keeps a plan first that is not kept yet, and says so', async () => {
    const context = await app.context();
    const page = await app.page(season('2027-05-20', null), { context });
    await asked(page).fill('4.5');
    await noteIt(page).click();
    await told(page, 'Your crop is now kept as “northern long-day, sown in trays”');
    await ready(page);
    // the form moves up with the first thing noted: it is gone on from in sight
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('note-it');
    const box = await noteIt(page).boundingBox();
    expect(box!.y).toBeGreaterThanOrEqual(0);
    expect(box!.y + box!.height).toBeLessThanOrEqual(page.viewportSize()!.height);
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
  });

  test('what can’t be a number of leaves is refused in words, and nothing is noted', async () => {
    const page = await withGarden('2027-05-20');
    for (const bad of ['many', '31', '-1']) {
      await asked(page).fill(bad);
      await noteIt(page).click();
      await page.getByRole('alert').getByText(bad).waitFor();
    }
    expect(await entries(page).count()).toBe(0);
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
    // what was pressed is folded away: go on from what unfolds it
    const focused = page.locator('.noting-more > summary');
    expect(await focused.evaluate((summary) => summary === document.activeElement)).toBe(true);
    expect(await entries(page).first().textContent()).toContain('Slugs by the hedge');
    const { observations } = (await whole(page)) as unknown as typeof garden;
    expect(observations).toMatchObject([
      { wateredLitres: 37.9, fedProduct: '10-5-8', fedG: 113.4, note: 'Slugs by the hedge' },
    ]);
  });

  test('a crop lifted early is told what to do with it now, and no more of green leaves', async () => {
    const page = await withGarden('2027-06-20', [
      counted('2027-06-08', 5),
      { id: 'l', plantingId: 'bed', date: '2027-06-18', lifted: true },
    ]);
    expect(await page.locator('.this-week').textContent()).toContain('Dry bulbs off');
    expect(await page.locator('.today').textContent()).toBe(
      'Lifted on 18 June: what is said of later days is what the crop would have done if left.',
    );
  });

  test('an empty entry is none', async () => {
    const page = await withGarden('2027-05-20');
    await page.locator('.noting-more summary').first().click();
    await page.locator('.entry .note-it').click();
    await told(page, 'There is nothing to note yet');
    expect(await entries(page).count()).toBe(0);
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
    await entries(page).nth(1).waitFor();
    await ready(page);
    await press(page, /^Take back: what was seen of “The long bed” changed/);
    await page.locator('.saw').getByText('2.5 green leaves').waitFor();
  });

  test('folds away what is older than the last six', async () => {
    const many = Array.from({ length: 9 }, (_, at) => counted(`2027-05-0${at + 1}`, 2 + at / 4));
    const page = await withGarden('2027-05-20', many);
    expect(await page.locator('.saw > ul > li').count()).toBe(6);
    await page.getByText('Earlier (3)').click();
    expect(await page.locator('.saw details li').count()).toBe(3);
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
    }
  });
});

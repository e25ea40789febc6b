import ICAL from 'ical.js';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { neckfall } from './command-line.ts';
import { download } from './download.ts';
import { told, whole } from './kept-garden.ts';
import { type App, axe, hasChromium, openApp, openDetails, ready } from './open-app.ts';
import { type garden, pageWith, season } from './seen-garden.ts';

const demo =
  '#/season?at=52.08,-3.13&name=Pencarreg+Bank&elevation=160&sun=14&class=long&start=raised-seedlings&date=2027-02-20&soil=silt-loam';
/** Every four weeks of its year. */
const days = Array.from({ length: 13 }, (_, at) =>
  new Date(Date.UTC(2027, 0, 10 + 28 * at)).toISOString().slice(0, 10),
);
const week = (page: Page) => page.locator('.this-week');
const lines = (page: Page) => page.locator('.this-week .work > li');
const jobsOf = async (page: Page) =>
  ((await whole(page)) as unknown as typeof garden & { jobs: object[] }).jobs;

describe.skipIf(!hasChromium)('the work of a season', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => {
    app.expectClean();
    return app.close();
  });

  const keptOn = (day: string, width = 1280): Promise<Page> => pageWith(app, day, [], { width });

  test('on any day of the demo garden’s year the first screen of Season tells what to do this week and why', async () => {
    let busy = 0;
    for (const day of days) {
      const page = await app.at(`${demo}&today=${day}`, { width: 360, height: 740 });
      const first = (await lines(page).count()) > 0 ? lines(page).first() : week(page).locator('p').first();
      const text = (await first.textContent()) ?? '';
      const box = (await first.boundingBox())!;
      expect({ day, isSeen: box.y + box.height <= 740, box }).toMatchObject({ isSeen: true });
      // a sentence with its reason, and a number in it
      expect({ day, text }).toMatchObject({ text: expect.stringMatching(/\d.*[:,;] .*\d?/) });
      expect(await lines(page).count()).toBeLessThanOrEqual(5);
      if ((await lines(page).count()) > 0) busy++;
      else expect(text).toMatch(/^Nothing needs doing .* Next, from \d+ \w+: /);
    }
    expect(busy).toBeGreaterThanOrEqual(6);
  });

  test('is what the command line says of the same crop', async () => {
    const page = await app.at(`${demo}&today=2027-05-20`);
    await openDetails(page);
    const plan = '--class long --start raised-seedlings --date 2027-02-20 --soil silt-loam --sun 14';
    const at = ['--at', '52.08,-3.13,160', '--today', '2027-05-20', '--to', '2028-12-31'];
    const plain = (text: string) => text.replace(/\s+/g, ' ').trim();
    const said = plain(await neckfall('jobs', ...at, ...plan.split(' ')));
    const shown = (await page.locator('.work > li').allTextContents()).map(plain);
    expect(shown.length).toBeGreaterThan(8);
    // of looks through the store the command line tells the next
    const looks = shown.filter((line) => line.startsWith('Look through the store'));
    expect(looks).toHaveLength(3);
    for (const line of shown.filter((line) => !looks.slice(1).includes(line))) expect(said).toContain(line);
  });

  test('is numbered alike in its sentences, on the year line and in the table of that', async () => {
    const page = await app.at(`${demo}&today=2027-05-20`, { width: 360 });
    await openDetails(page);
    const numbers = await page
      .locator('.work > li')
      .evaluateAll((all) => all.map((line) => (line as HTMLLIElement).value));
    expect(numbers).toEqual(numbers.map((_, at) => at + 1));
    const rows = await page.getByRole('table', { name: 'The work marked, by its number' }).locator('tr');
    expect(await rows.count()).toBe(numbers.length + 1);
    const label = await page.locator('.the-year figure').getAttribute('aria-label');
    expect(label).toContain('Work is marked by its number: 1, ');
  });

  test('says what to keep, so that work can be noted', async () => {
    const context = await app.context();
    const page = await app.page(season('2027-05-20', null), { context });
    expect(await page.getByRole('button', { name: /^Done: / }).count()).toBe(0);
    await week(page).getByRole('button', { name: 'Keep it' }).click();
    await page
      .getByRole('button', { name: /^Done: / })
      .first()
      .waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('this-week');
    await context.close();
  });

  test('is said done by key, leaves the week, and is brought back', async () => {
    const page = await keptOn('2027-05-20');
    const before = await lines(page).count();
    await page.getByRole('button', { name: 'Done: Weed' }).focus();
    await page.keyboard.press('Enter');
    await told(page, 'Noted as done on 20 May 2027: Weed.');
    await ready(page);
    expect(await lines(page).filter({ hasText: 'weeds' }).count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('this-week');
    expect(await jobsOf(page)).toMatchObject([
      { job: 'weed', state: 'done', date: '2027-05-20', plantingId: 'bed' },
    ]);
    await week(page).getByRole('button', { name: 'Take it back' }).click();
    await page.getByRole('button', { name: 'Done: Weed' }).waitFor();
    await ready(page);
    expect(await lines(page).count()).toBe(before);
    expect(await jobsOf(page)).toEqual([]);
  });

  test('is left out, stands apart, and is taken up again, also on another day', async () => {
    const page = await keptOn('2027-05-20');
    await page.getByRole('button', { name: 'Leave out: Weed' }).click();
    await told(page, 'Left out this season: Weed.');
    await page.reload();
    await ready(page);
    await openDetails(page);
    // what was folded away in a fold
    await openDetails(page);
    await page.locator('.all-work').getByText('Weed: left out.').waitFor();
    await page.getByRole('button', { name: 'Take it up again: Weed' }).click();
    await told(page, 'Taken up again: Weed.');
    await page.getByRole('button', { name: 'Done: Weed' }).waitFor();
  });

  test('put off by a week or to a day it moves there', async () => {
    const page = await keptOn('2027-05-20');
    await page.getByRole('button', { name: 'Put off: Weed' }).click();
    expect(await page.getByLabel('Put off until').inputValue()).toBe('2027-05-27');
    await page.getByRole('button', { name: 'Put it off' }).click();
    await told(page, 'Put off until 27 May 2027: Weed.');
    await ready(page);
    expect(await lines(page).filter({ hasText: 'weeds' }).count()).toBe(0);
    await openDetails(page);
    const later = page.locator('.all-work li', { hasText: 'weeds' });
    expect(await later.first().textContent()).toContain('(27 May – ');
    await page.getByRole('button', { name: 'Put off: Weed' }).click();
    await page.getByLabel('Put off until').fill('2027-05-01');
    await page.getByLabel('Put off until').press('Tab');
    await page.getByRole('alert').getByText('1 May 2027').waitFor();
    await page.getByLabel('Put off until').fill('2027-06-10');
    await page.getByRole('button', { name: 'Put it off' }).click();
    await told(page, 'Put off until 10 June 2027: Weed.');
    expect(await jobsOf(page)).toMatchObject([{ job: 'weed', state: 'put-off', until: '2027-06-10' }]);
  });

  test('what is noted of a crop anyhow is noted there: lifted', async () => {
    const page = await keptOn('2027-09-10');
    await page.getByRole('button', { name: 'Done: Lift' }).click();
    expect(await page.getByLabel('Lifted that day').isChecked()).toBe(true);
    // which is gone on from, once it stands
    await page.waitForFunction(() => document.activeElement?.closest('.entry') != null);
    await page.locator('.entry .note-it').click();
    await told(page, 'Noted: 10 September 2027: lifted.');
    await ready(page);
    expect(await page.getByRole('button', { name: 'Done: Lift' }).count()).toBe(0);
    expect(await jobsOf(page)).toEqual([]);
  });

  test('goes into a calendar, and a later one brings it up to date', async () => {
    const page = await keptOn('2027-05-20');
    const read = async () => {
      const { name, bytes } = await download(page, 'Put this work into a calendar');
      expect(name).toBe('neckfall-the-long-bed.ics');
      const events = new ICAL.Component(ICAL.parse(bytes.toString())).getAllSubcomponents('vevent');
      return events.map((event) => new ICAL.Event(event));
    };
    const before = await read();
    await told(page, 'Saved as neckfall-the-long-bed.ics.');
    expect(before.length).toBeGreaterThan(5);
    const weed = (events: ICAL.Event[]) => events.find(({ uid }) => uid === 'bed-weed@neckfall')!;
    expect(weed(before).summary).toContain('Weed');
    expect(weed(before).startDate.isDate).toBe(true);
    await page.getByRole('button', { name: 'Put off: Weed' }).click();
    await page.getByLabel('Put off until').fill('2027-07-01');
    await page.getByRole('button', { name: 'Put it off' }).click();
    await told(page, 'Put off until 1 July 2027: Weed.');
    await ready(page);
    const after = await read();
    expect(weed(after).startDate.compare(weed(before).startDate)).toBe(1);
    expect(weed(after).sequence).toBeGreaterThanOrEqual(weed(before).sequence);
  });

  test.each([360, 1280])(
    'leaves axe nothing to find at %d px, all open, and no sideways scroll',
    async (width) => {
      for (const colorScheme of ['light', 'dark'] as const) {
        const page = await keptOn('2027-05-20', width);
        await page.emulateMedia({ colorScheme });
        await openDetails(page);
        await page
          .getByRole('button', { name: /^Put off: / })
          .first()
          .click();
        expect(await axe(page)).toEqual([]);
        for (const button of await page.locator('.work-ways button').all()) {
          const box = (await button.boundingBox())!;
          expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(24);
        }
        await page.setViewportSize({ width: Math.min(width, 320), height: 740 });
        expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
      }
    },
  );
});

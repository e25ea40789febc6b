import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { neckfall } from './command-line.ts';
import { press, told, whole } from './kept-garden.ts';
import { type App, hasChromium, openApp, ready } from './open-app.ts';
import { asked, entries, lead, noteIt } from './seen-garden.ts';
import { giveWeather, keepWeather, stationFile, weatherHere } from './weather-files.ts';

const crop =
  'at=52.08,-3.13&name=Pencarreg+Bank&class=long&start=raised-seedlings&date=2027-02-20&plants=250&row-cm=30';

/** A season of the demo garden as one of its growers would live through it, day by day of a calendar of the test's. */
describe.skipIf(!hasChromium)('a season lived through', () => {
  let app: App;
  let context: BrowserContext;
  let page: Page;
  let planting = '';
  beforeAll(async () => {
    app = await openApp();
    context = await app.context({ width: 360 });
  });
  afterAll(() => app.close());

  async function onDay(day: string): Promise<void> {
    const known = planting === '' ? '' : `&planting=${planting}`;
    page ??= await app.page(`#/season?${crop}&today=${day}`, { context });
    await page.goto(`${app.url}#/season?${crop}${known}&today=${day}`);
    await ready(page);
  }

  async function note(value: string, day: string): Promise<void> {
    const before = await entries(page).count();
    await asked(page).fill(value);
    await noteIt(page).click();
    await entries(page).nth(before).waitFor({ state: 'attached' });
    await told(page, `Noted: ${day} 2027`);
    await ready(page);
  }

  /** Days between the early and the late end of 8 seasons in 10 by the command line, from the garden as it is saved. */
  async function spanOnDay(day: string): Promise<{ days: number; from: string; to: string }> {
    const folder = mkdtempSync(join(tmpdir(), 'neckfall-lived-'));
    const file = join(folder, 'bank.neckfall.json');
    writeFileSync(file, JSON.stringify(await whole(page)));
    const ask = ['season', file, '--planting', planting, '--today', day];
    const said = (await neckfall(...ask)).replace(/\s+/g, ' ');
    const { neckFall } = JSON.parse(await neckfall(...ask, '--json'));
    rmSync(folder, { recursive: true });
    const row = page.locator('.expect tr', { hasText: 'Tops go over' }).locator('th, td');
    expect(said).toContain((await row.allTextContents()).join(' ').replace(/\s+/g, ' '));
    const days = (Date.parse(neckFall.p90) - Date.parse(neckFall.p10)) / 86_400_000;
    return { days, from: neckFall.p10, to: neckFall.p90 };
  }

  test('from the plan to the day the bulbs are weighed, the forecast draws in', async () => {
    await onDay('2027-02-10');
    await press(page, 'Keep it on this device');
    await page.waitForFunction(() => location.hash.includes('planting='));
    planting = /planting=([^&]+)/.exec(page.url())?.[1] ?? '';
    const planned = await spanOnDay('2027-02-10');
    expect(planned.days).toBeGreaterThan(14);

    await onDay('2027-02-20');
    await page.locator('.noting-more summary').first().click();
    await page.getByLabel('Note', { exact: true }).fill('Sown, two to a cell');
    await page.locator('.entry .note-it').click();
    await told(page, 'Noted: 20 February 2027');

    // the station's record of March and April
    await page.goto(app.url + weatherHere.replace('2027-06-20', '2027-04-30'));
    await page.getByLabel('Weather files, one or several').waitFor();
    await giveWeather(page, stationFile());
    await keepWeather(page);

    await onDay('2027-05-25');
    for (const [day, said, leaves] of [
      ['2027-05-25', '25 May', '3.5'],
      ['2027-06-01', '1 June', '4'],
      ['2027-06-08', '8 June', '5'],
      ['2027-06-15', '15 June', '6'],
    ]) {
      await onDay(day);
      await note(leaves, said);
      expect(await lead(page)).toContain(`you have ${leaves}`);
    }
    const counted = await spanOnDay('2027-06-15');
    expect(await page.locator('.learnt').textContent()).toMatch(/leaves come \d+% faster/);

    await onDay('2027-08-15');
    await note('2', '15 August');
    await onDay('2027-08-20');
    await note('6', '20 August');
    const falling = await spanOnDay('2027-08-20');
    expect(falling.days).toBeLessThan(counted.days / 2);
    expect(falling.from < '2027-08-24' && falling.to > '2027-08-18').toBe(true);

    await onDay('2027-08-28');
    await page.locator('.noting-more summary').first().click();
    await page.getByLabel('What was it?').selectOption({ label: 'Lifted or weighed' });
    await page.getByLabel('Lifted that day').check();
    await page.locator('.entry .note-it').click();
    await told(page, 'Noted: 28 August 2027');
    await ready(page);
    const { observations } = (await whole(page)) as unknown as { observations: object[] };
    expect(observations).toHaveLength(8);
    expect(observations.at(-1)).toMatchObject({ date: '2027-08-28', lifted: true });

    // next year starts from it, if one likes
    planting = '';
    await page.goto(`${app.url}#/season?${crop.replace('2027', '2028')}&today=2028-01-10`);
    await ready(page);
    await press(page, 'Keep it on this device');
    await page.getByRole('button', { name: 'Start from what you learnt in 2027' }).click();
    await told(page, 'This starts from what');
    app.expectClean();
  });
});

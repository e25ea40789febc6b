import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { neckfall } from './command-line.ts';
import { type App, axe, hasChromium, openApp, openDetails, ready } from './open-app.ts';

const today = 'today=2027-05-03';
const lyon = `#/when?at=45.748,4.847&name=Lyon&${today}`;
const sets = `${lyon}&class=long&start=sets`;
const otherStart = 'Another onion, another start';

describe.skipIf(!hasChromium)('the When page', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  const textOf = async (page: Page) =>
    ((await page.locator('main').textContent()) ?? '').replace(/\s+/g, ' ');
  test.each([
    ['a class', 'class=long&start=sets', ['--class', 'long', '--start', 'sets']],
    [
      'an onion by name',
      'cultivar=Copra&start=direct-seed',
      ['--cultivar', 'Copra', '--start', 'direct-seed'],
    ],
    [
      'a packet, on other ground',
      'packet-hours=14&packet-days=110&start=raised-seedlings&sun=7&soil=clay&water=rain',
      '--packet-hours 14 --packet-days 110 --start raised-seedlings --sun 7 --soil clay --water rain'.split(
        ' ',
      ),
    ],
  ])('says of %s what the command line says', async (_, address, args) => {
    const run = (...more: string[]) => neckfall('when', 'Lyon', ...args, '--today', '2027-05-03', ...more);
    const { starts, reason, assumed } = JSON.parse(await run('--json'));
    const page = await app.at(`${lyon}&${address}`);
    const text = await textOf(page);
    const [headline] = (await run()).replace(/\s+/g, ' ').replace('Lyon, France: ', '').split('. ');
    expect(text.toLowerCase()).toContain(`${headline}.`.toLowerCase());
    expect(text).toContain(reason);
    for (const sentence of assumed) expect(text).toContain(sentence);

    await page.getByText('All 52 starts in numbers').click();
    const rows = await page.locator('details[open] tbody tr').allInnerTexts();
    const said = new Map(
      rows.map((row) => row.split('\t')).map(([date, good]) => [date.trim(), good.trim()]),
    );
    for (const { dayOfYear, seasonShares } of starts) {
      const date = new Date(Date.UTC(2027, 0, dayOfYear)).toLocaleDateString('en-GB', {
        day: 'numeric',
        month: 'long',
        timeZone: 'UTC',
      });
      const tenths = /(\d+) years? in 10/.exec(said.get(date) ?? '')?.[1];
      if (tenths !== undefined) expect(Number(tenths)).toBe(Math.round(10 * seasonShares.good));
      else expect([0, 1]).toContain(Math.round(seasonShares.good));
    }
    expect(said.size).toBe(52);
  });

  test.each([
    ['sets', '2027-03-20'],
    // in a seedbed outdoors, where trays indoors are for January
    ['raised-seedlings', '2027-08-20'],
  ])('shows below the season that the command line has for %s started on %s', async (start, date) => {
    const page = await app.at(`${lyon}&class=long&start=${start}&date=${date}`);
    const args = ['--class', 'long', '--start', start, '--date', date, '--today', '2027-05-03', '--json'];
    const season = await neckfall('season', 'Lyon', ...args);
    const { reason, neckFall } = JSON.parse(season);
    const shown = (await page.locator('.season-from').textContent()) ?? '';
    expect(shown).toContain(reason);
    const falls = new Date(`${neckFall.p50}T00:00Z`);
    expect(shown).toContain(
      falls.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', timeZone: 'UTC' }),
    );
  });

  test('leads with today, and takes what suits the place where nothing is asked', async () => {
    const page = await app.at(lyon);
    const heading = await page.locator('h1.answer').textContent();
    expect(heading).toMatch(/^Lyon, France: (today, 3 May, is|no day)/);
    expect(await page.locator('p.today').textContent()).toMatch(
      /^(Still good today|Too late|Too early|No week)/,
    );
    await page.getByRole('link', { name: 'Season: from this start' }).last().click();
    await page.waitForFunction(() => location.hash.startsWith('#/season'));
    expect(page.url()).toMatch(/class=\w+/);
    expect(page.url()).toMatch(/start=[\w-]+/);
    expect(page.url()).toMatch(/date=20\d\d-\d\d-\d\d/);
  });

  test('changes onion and way of starting, with the words that go with it', async () => {
    const page = await app.at(sets);
    await page.getByText(otherStart).click();
    await page.getByLabel('How you start it').selectOption('direct-seed');
    await ready(page);
    expect(page.url()).toContain('start=direct-seed');
    expect(await page.getByLabel('Sowing day').count()).toBe(1);
    await page.getByLabel('Onion, as the packet says').selectOption('short');
    await ready(page);
    expect(page.url()).toContain('class=short');
    expect(await page.locator('h1').textContent()).toContain('short-day onions sown in place');
  });

  test('takes the way of starting that is asked for, with the onion that suits the place', async () => {
    const page = await app.at(lyon);
    await page.getByText(otherStart).click();
    const { length } = await page.getByLabel('How you start it').locator('option').all();
    expect(length).toBe(4);
    await page.getByLabel('How you start it').selectOption('raised-seedlings');
    await ready(page);
    expect(page.url()).toContain('start=raised-seedlings');
    expect(await page.locator('h1').textContent()).toContain('sown in trays');
    await page.getByLabel('How you start it').selectOption('sets');
    await ready(page);
    expect(await page.locator('h1').textContent()).toContain('from sets');
  });

  test('says what to grow instead where no week is good, and draws an onion without a bulb', async () => {
    const page = await app.at(`#/when?at=1.35,103.82&name=Singapore&class=long&start=direct-seed&${today}`);
    const text = await textOf(page);
    expect(text).toContain('make no good bulbs, whichever week of the year');
    expect(text).toContain('shallots');
    expect(await page.locator('.season-from figure').getAttribute('aria-label')).toMatch(/spring onion|lost/);
  });

  test('has the southern year the other way round', async () => {
    const page = await app.at(
      `#/when?at=-41.286,174.776&name=Wellington&class=intermediate&start=raised-seedlings&${today}`,
    );
    const label = await page.locator('.year-line').first().getAttribute('aria-label');
    expect(label).toMatch(/on the longest day, \d+ December/);
  });

  test('answers beyond the polar circle and near the equator', async () => {
    const polar = await app.at(`#/when?at=69.649,18.956&name=Troms%C3%B8&class=long&start=sets&${today}`);
    expect(await textOf(polar)).toContain('the sun does not set');
    const tropics = await app.at(`#/when?at=14.604,120.982&name=Manila&${today}`);
    expect(await textOf(tropics)).toContain('all year');
  });

  test('speaks to Americans in inches and their words', async () => {
    const page = await app.page(sets, { locale: 'en-US' });
    const text = await textOf(page);
    expect(text).toContain('May 3');
    expect(text).toContain('Tops fall');
    expect(text).toMatch(/\d in across/);
    expect(text).not.toMatch(/\d mm/);
    await page.close();
  });

  test('shows a name it does not know as text, and takes names like it', async () => {
    const nasty = '<img src=x onerror=alert(1)>';
    const page = await app.at(`${sets}&cultivar=${encodeURIComponent(nasty)}`);
    expect(await textOf(page)).toContain(`“${nasty}”`);
    expect(await page.locator('main img').count()).toBe(0);
    const near = await app.at(`${sets}&cultivar=Copre`);
    await near.getByRole('link', { name: 'Copra', exact: true }).click();
    await ready(near);
    expect(near.url()).toContain('cultivar=Copra');
    expect(await near.locator('main .alarm').count()).toBe(0);
  });

  test('prints answer, pictures and season without the controls', async () => {
    const page = await app.at(`${sets}&date=2027-03-20`);
    await page.emulateMedia({ media: 'print' });
    const isSeen = (selector: string) => page.locator(selector).first().isVisible();
    expect(await isSeen('h1.answer')).toBe(true);
    expect(await isSeen('.start-hills')).toBe(true);
    expect(await isSeen('.season-from table')).toBe(true);
    expect(await isSeen('main form')).toBe(false);
    expect(await isSeen('.start-slider')).toBe(false);
    expect((await page.pdf()).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test.each([
    { width: 360, dark: false },
    { width: 1280, dark: true },
  ])('leaves axe nothing to find at $width px, dark $dark, and needs no sideways scrolling', async (view) => {
    const page = await app.at(sets, view);
    await openDetails(page);
    expect(await axe(page)).toEqual([]);
    await page.setViewportSize({ width: Math.min(view.width, 320), height: 700 });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over).toBe(0);
    app.expectClean();
  });
});

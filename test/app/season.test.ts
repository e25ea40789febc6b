import { cultivars } from '@neckfall/data';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { neckfall } from './command-line.ts';
import { download } from './download.ts';
import { type App, axe, hasChromium, openApp, openFolds, ready } from './open-app.ts';

const lyon = '#/season?at=45.748,4.847&name=Lyon';
const bank = '#/season?at=52.08,-3.13&name=Pencarreg+Bank';
const trays = `${bank}&class=long&start=raised-seedlings&date=2027-02-20&today=2027-06-20`;
const named = cultivars.find(({ kind, starts }) => kind === 'bulb-onion' && starts.includes('direct-seed'))!;

const plain = (text: string | null) => (text ?? '').replace(/\s+/g, ' ').trim();
const mainText = async (page: Page) => plain(await page.locator('main').textContent());

describe.skipIf(!hasChromium)('the Season page', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => {
    app.expectClean();
    return app.close();
  });

  test.each([
    [
      'seed in place',
      `${lyon}&class=long&start=direct-seed&date=2027-03-25`,
      'Lyon --class long --start direct-seed --date 2027-03-25',
    ],
    [
      'seedlings of lit trays on rain alone, planted out on a day',
      `${lyon}&class=intermediate&start=raised-seedlings&date=2027-02-10&plant-out=2027-04-12&nursery-temp=18&lamp-hours=14&water=rain`,
      'Lyon --class intermediate --start raised-seedlings --date 2027-02-10 --plant-out 2027-04-12 --nursery-temp 18 --lamp-hours 14 --water rain',
    ],
    [
      'large sets stored warm, set close under fleece, over New Year',
      `${lyon}&class=long&start=sets&date=2027-10-12&set-size=22&set-store=warm&row-cm=20&plant-cm=8&cover=fleece&soil=clay`,
      'Lyon --class long --start sets --date 2027-10-12 --set-size 22 --set-store warm --density 62.5 --cover fleece --soil clay',
    ],
    [
      'a named onion',
      `${lyon}&cultivar=${encodeURIComponent(named.name)}&start=direct-seed&date=2027-04-01`,
      ['Lyon', '--cultivar', named.name, '--start', 'direct-seed', '--date', '2027-04-01'],
    ],
    [
      'a packet with hours and days, started another year, where half a day is sunny',
      `${lyon}&class=long&packet-hours=14.5&packet-days=110&start=direct-seed&date=2028-03-20&sun=8`,
      'Lyon --class long --packet-hours 14.5 --packet-days 110 --start direct-seed --date 2028-03-20 --sun 8',
    ],
    [
      'an onion that makes no bulbs',
      '#/season?at=14.604,120.982&name=Manila&class=long&start=direct-seed&date=2027-06-01',
      'Manila --class long --start direct-seed --date 2027-06-01',
    ],
  ])('says of %s what the command line says', async (_, hash, command) => {
    const args = [...(typeof command === 'string' ? command.split(' ') : command), '--today', '2027-05-03'];
    const page = await app.at(`${hash}&today=2027-05-03`);
    const said = plain(await neckfall('season', ...args));
    const { reason, assumed } = JSON.parse(await neckfall('season', ...args, '--json'));
    const text = await mainText(page);
    expect(said.startsWith(plain(await page.locator('h1').textContent()))).toBe(true);
    for (const sentence of [reason, ...assumed]) expect(text).toContain(sentence);
    const rows = await page.locator('.expect tbody tr').all();
    expect(rows.length).toBeGreaterThan(3);
    for (const row of rows) {
      const cells = await row.locator('th, td').allTextContents();
      expect(said).toContain(plain(cells.join(' ')));
    }
    const ends = await page.locator('.risks ul').first().locator('li').allTextContents();
    for (const end of ends) expect(said.toLowerCase()).toContain(plain(end).toLowerCase().replace(/\.$/, ''));
    const csv = await download(page, 'Day-by-day table');
    expect(csv.bytes.toString()).toBe(await neckfall('season', ...args, '--days', '--csv'));
  });

  test('says what should be seen now, and when tops go over', async () => {
    const page = await app.at(trays);
    expect(plain(await page.locator('.today').textContent())).toMatch(
      /^You should see \S+ green leaves on each plant now.* Tops go over about /,
    );
  });

  test('says beforehand when to count leaves, and not once the day is long past', async () => {
    for (const day of ['2027-03-20', '2027-08-01']) {
      const page = await app.at(`${bank}&class=long&start=direct-seed&date=2027-03-25&today=${day}`);
      await openFolds(page);
      await page.locator('.into-calendar').waitFor();
      const work = plain(await page.locator('.all-work').textContent());
      expect(work.includes('three weeks before bulbs start')).toBe(day < '2027-04');
    }
  });

  test('tells its own spans, the weather apart from the onion', async () => {
    const page = await app.at(trays);
    const how = plain(await page.locator('.how').textContent());
    expect(how).toMatch(
      /tops go over within \d+ days of each other, and bulbs are within \d+ mm\. The weather/,
    );
    expect(how.match(/an ordinary garden gives about four fifths/g)).toHaveLength(1);
  });

  test('asks nothing: without a plan it takes what suits the place, says so, and writes it into its links', async () => {
    const page = await app.at(`${lyon}&today=2027-05-03`);
    expect(await mainText(page)).toContain('You had not said how');
    const link = await page.getByRole('link', { name: 'When: other days' }).getAttribute('href');
    expect(link).toMatch(/class=\w+&start=[a-z-]+&date=20\d\d-\d\d-\d\d/);
    await page.goto(app.url + (link ?? '').replace('#/when', '#/season'));
    await ready(page);
    expect(await mainText(page)).not.toContain('You had not said how');
  });

  test.each([1, 6])(
    'takes a changed plan into the answer and the address, slowed %d times',
    async (slowed) => {
      const page = await app.page(trays, { slowed });
      await page.getByText('Change it').click();
      const before = await page.locator('h1').textContent();
      // one field after the other, whatever is still being worked out
      await page.getByLabel('Between rows').fill('40');
      await page.getByLabel('Between rows').press('Tab');
      await page.getByLabel('Sown on').fill('2027-03-10');
      await page.getByLabel('Planted out on').fill('2027-05-01');
      await page.getByLabel('Planted out on').press('Tab');
      await ready(page);
      expect(page.url()).toContain('date=2027-03-10&plant-out=2027-05-01&row-cm=40');
      await expect.poll(() => page.locator('h1').textContent()).not.toBe(before);
      // what waits in trays moves with the sowing
      await page.getByLabel('Sown on').fill('2027-03-20');
      await page.getByLabel('Sown on').press('Tab');
      expect(page.url()).toContain('date=2027-03-20&plant-out=2027-05-11');
      await page.getByLabel('Planted out on').fill('2027-03-01');
      await page.getByLabel('Planted out on').press('Tab');
      await page.getByRole('alert').filter({ hasText: '1 March 2027' }).waitFor();
      expect(page.url()).toContain('plant-out=2027-05-11');
      await page.getByLabel('Started as').selectOption('sets');
      await page.locator('h1', { hasText: 'from sets' }).waitFor();
      await page.goBack();
      await page.locator('h1', { hasText: 'sown in trays' }).waitFor();
      await page.close();
    },
  );

  test('keeps what is typed as a field comes up', async () => {
    const page = await app.page(trays);
    // before the first frame that shows it
    await page.evaluate(() => {
      new MutationObserver((_, watch) => {
        const label = [...document.querySelectorAll('label')].find((one) =>
          one.textContent?.startsWith('Between rows'),
        );
        if (!(label?.control instanceof HTMLInputElement)) return;
        watch.disconnect();
        label.control.value = '40';
        label.control.dispatchEvent(new Event('input', { bubbles: true }));
      }).observe(document.body, { childList: true, subtree: true });
    });
    await page.getByText('Change it').click();
    await page.getByLabel('Between rows').focus();
    await page.keyboard.press('Tab');
    await expect.poll(() => page.getByLabel('Between rows').inputValue()).toBe('40');
    await page.close();
  });

  test('reckons plants and row into a crop, either way', async () => {
    const page = await app.at(trays);
    await openFolds(page);
    await page.getByLabel('Or row').fill('25');
    await page.getByLabel('Or row').press('Tab');
    await ready(page);
    expect(await page.getByLabel('Plants', { exact: true }).inputValue()).toBe('250');
    expect(page.url()).toContain('plants=250');
    const text = plain(await page.locator('.yield').textContent());
    expect(text).toContain('250 plants take 25 m of row');
  });

  test('keeps plants in ten and years in ten apart', async () => {
    const page = await app.at(
      `${lyon}&class=intermediate&start=direct-seed&date=2026-08-25&today=2027-05-03`,
    );
    const [years, plants] = await page.locator('.risks .two > div').allTextContents();
    expect(years).not.toContain('plants in 10');
    expect(plants).toMatch(/plants? in 10/);
  });

  test('has the days in a box that keys can scroll, made when it is opened', async () => {
    const page = await app.at(trays);
    expect(await page.locator('.days tr').count()).toBe(0);
    await page.locator('.days summary').click();
    await page.locator('.days tbody tr').first().waitFor();
    expect(await page.locator('.days tbody tr').count()).toBeGreaterThan(60);
    expect(await page.locator('.days .scroll').getAttribute('tabindex')).toBe('0');
  });

  test('speaks American with American units', async () => {
    const page = await app.page(trays, { locale: 'en-US' });
    const text = await mainText(page);
    expect(text).toMatch(/tops fall/i);
    expect(text).not.toMatch(/\d (mm|kg|cm)\b/);
    await page.getByText('Change it').click();
    await page.getByLabel('Between rows').fill('12');
    await page.getByLabel('Between rows').press('Tab');
    expect(page.url()).toContain('row-cm=30.5');
    expect(await page.getByLabel('Between rows').inputValue()).toBe('12');
    await page.close();
  });

  test('has a southern season over New Year', async () => {
    const page = await app.at(
      '#/season?at=-46.413,168.352&name=Invercargill&class=long&start=direct-seed&date=2027-10-05&today=2027-12-20',
    );
    const csv = (await download(page, 'Day-by-day table')).bytes.toString().trim().split('\r\n').slice(1);
    const [first, last] = [csv[0], csv.at(-1) ?? ''].map((line) => line.slice(0, 10));
    expect(first.slice(0, 4)).toBe('2027');
    expect(last.slice(0, 4)).toBe('2028');
    expect(await page.locator('.today').textContent()).toContain('green leaves on each plant');
  });

  test('says what else to grow where no bulbs come', async () => {
    const page = await app.at(
      '#/season?at=14.604,120.982&name=Manila&class=long&start=direct-seed&date=2027-06-01&today=2027-09-20',
    );
    const text = await mainText(page);
    expect(text).toContain('no bulbs');
    expect(text).toContain('bunching onions');
    expect(text).toContain('No crop worth keeping');
  });

  test('names an onion that it does not know, as text, and goes on with the kind', async () => {
    const nasty = '<img src=x onerror=alert(1)>';
    const page = await app.at(`${trays}&cultivar=${encodeURIComponent(nasty)}`);
    expect(await mainText(page)).toContain(`No onion here is called “${nasty}”, so the long-day kind`);
    expect(await page.locator('main img').count()).toBe(0);
  });

  test('says what of a link does not go together', async () => {
    const early = await app.at(`${trays}&plant-out=2027-02-01`);
    expect(await mainText(early)).toContain('Planted out on 1 February 2027 does not go with that sowing');
    const onlySeed = cultivars.find(({ kind, starts }) => kind === 'bulb-onion' && !starts.includes('sets'))!;
    const name = encodeURIComponent(onlySeed.name);
    const page = await app.at(`${bank}&cultivar=${name}&start=sets&date=2027-03-20&today=2027-06-20`);
    expect(await mainText(page)).toContain(`As far as we know ${onlySeed.name} is not sold as sets`);
    expect(await page.locator('h1').textContent()).not.toContain('from sets');
  });

  test.each([
    { width: 360, dark: false },
    { width: 1280, dark: true },
  ])('leaves axe nothing to find at $width px, dark $dark, all folds open', async (view) => {
    const page = await app.at(trays, view);
    for (const fold of await page.locator('main details > summary').all()) await fold.click();
    expect(await axe(page)).toEqual([]);
  });

  test('needs no sideways scrolling from 320 px on', async () => {
    const page = await app.at(trays, { width: 320 });
    for (const fold of await page.locator('main details > summary').all()) await fold.click();
    for (const width of [320, 480, 640]) {
      await page.setViewportSize({ width, height: 700 });
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect({ width, over }).toEqual({ width, over: 0 });
    }
  });
});

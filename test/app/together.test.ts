import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { neckfall } from './command-line.ts';
import { type App, axe, hasChromium, openApp, openDetails, ready, textOf } from './open-app.ts';

const today = 'today=2027-05-03';
const pair = 'places=47.606,-122.332~Seattle;32.783,-96.807~Dallas';
const halves = 'places=45.748,4.847~Lyon;-45.874,170.504~Dunedin';
const six = [
  '59.329,18.069~Stockholm',
  '54.352,18.649~Gdańsk',
  '46.073,18.231~Pécs',
  '45.748,4.847~Lyon',
  '32.783,-96.807~Dallas',
  '27.702,85.321~Kathmandu',
].join(';');

describe.skipIf(!hasChromium)('places and starts side by side', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  const slider = (page: Page) => page.getByRole('slider', { name: 'Day' });
  const heads = (page: Page) => page.locator('.beside-line h2').allTextContents();
  const notes = (page: Page) => page.locator('.beside-day').allTextContents();
  const add = async (page: Page, name: string, option: string | RegExp) => {
    await page.locator('main').getByRole('combobox', { name: 'Town or village' }).fill(name);
    await page.getByRole('option', { name: option }).first().click();
  };

  test('shows, unasked, two winters alike and two onions that are not, as the command line has them', async () => {
    const page = await app.at(`#/together?${today}`);
    expect(await page.locator('h1.answer').textContent()).toMatch(
      /^On 2[01] June days last 15 h \d\d min in Seattle and 14 h \d\d min in Dallas: bulbs start .+ in Seattle and .+ in Dallas\.$/,
    );
    const text = await textOf(page);
    expect(text).toContain('long-day onions do best in Seattle and short-day onions in Dallas');
    for (const town of ['Seattle', 'Dallas']) {
      const { classes } = JSON.parse(await neckfall('where', town, '--today', '2027-05-03', '--json'));
      const [month, day] = classes[0].bestDate.split('-').map(Number);
      const name = new Date(Date.UTC(2027, month - 1, day));
      const begun = name.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', timeZone: 'UTC' });
      const line = page.locator('.beside-line', { hasText: town });
      expect(await line.locator('.beside-crop').textContent()).toContain(`begun ${begun}: bulbs start`);
    }
  });

  test('takes towns up to six, refuses a seventh and one that is there in words, and gives one up', async () => {
    const page = await app.page(`#/together?${today}&places=${six.split(';').slice(0, 5).join(';')}`);
    await add(page, 'Lyon', 'Lyon, France');
    await page.getByText('Lyon is there already.').waitFor();
    await add(page, 'Oslo', 'Oslo, Norway');
    await page.locator('.beside-line').nth(5).waitFor();
    await ready(page);
    expect((await heads(page)).at(-1)).toBe('Oslo, Norway');
    await add(page, 'Nairobi', 'Nairobi, Kenya');
    await page.getByText('Six lines are as many as can be read together').waitFor();
    expect(await page.locator('.beside-line').count()).toBe(6);
    await page.getByRole('button', { name: 'Move Oslo, Norway up' }).click();
    await page.waitForFunction(() => location.hash.indexOf('Oslo') < location.hash.indexOf('Dallas'));
    await page.getByRole('button', { name: 'Take away Stockholm, Sweden' }).click();
    await page.waitForFunction(() => document.querySelectorAll('.beside-line').length === 5);
    await ready(page);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('change');
    expect((await heads(page)).map((head) => head.split(',')[0])).toEqual([
      'Gdańsk',
      'Pécs',
      'Lyon',
      'Oslo',
      'Dallas',
    ]);
    await page.close();
  });

  test('moves one day through all lines by keys and by hand, within a frame, without a step in the history', async () => {
    const page = await app.page(`#/together?${today}&${pair}&on=2027-06-21`);
    const steps = await page.evaluate(() => history.length);
    await slider(page).focus();
    const from = Number(await slider(page).inputValue());
    for (const [key, by] of [
      ['ArrowRight', 1],
      ['ArrowLeft', -1],
      ['PageUp', 30],
      ['PageDown', -30],
    ] as const) {
      const before = Number(await slider(page).inputValue());
      await page.keyboard.press(key);
      expect(Number(await slider(page).inputValue()) - before).toBe(by);
    }
    expect(Number(await slider(page).inputValue())).toBe(from);
    expect(await slider(page).getAttribute('aria-valuetext')).toBe('21 June');
    // what is said has changed by the next frame
    const said = await page.evaluate(async () => {
      const input = document.querySelector<HTMLInputElement>('.day-bar input')!;
      input.valueAsNumber += 40;
      input.dispatchEvent(new Event('input', { bubbles: true }));
      await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
      return [...document.querySelectorAll('.beside-day')].map(({ textContent }) => textContent);
    });
    for (const one of said)
      expect(one).toMatch(/^31 July: a day of 1\d h \d+ min, \d+\s?°C at its warmest; /);
    await page.waitForFunction(
      () => location.hash.includes('on=2027-07-31') || location.hash.includes('-07-31'),
    );
    const picture = page.locator('.beside-drag').first();
    await picture.scrollIntoViewIfNeeded();
    const box = (await picture.boundingBox())!;
    await page.mouse.move(box.x + box.width * 0.2, box.y + 40);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.5, box.y + 40, { steps: 8 });
    await page.mouse.up();
    const [first, second] = await notes(page);
    expect(first.split(':')[0]).toBe(second.split(':')[0]);
    const plumb = (await page.locator('.plumb').boundingBox())!;
    expect(Math.abs(plumb.x - (box.x + box.width * 0.5))).toBeLessThan(4);
    expect(await page.locator('.on-day caption').textContent()).toBe(`All lines on ${first.split(':')[0]}`);
    expect(await page.evaluate(() => history.length)).toBe(steps);
    await page.close();
  });

  test('a link opens to the same lines and day, and tells what of it cannot be read', async () => {
    const page = await app.at(`#/together?${today}&${pair};rubbish&on=2027-03-20&class=long&start=sets`);
    expect(await notes(page)).toHaveLength(2);
    for (const note of await notes(page)) expect(note).toMatch(/^20 March: /);
    const text = await textOf(page);
    expect(text).toContain('On every line long-day onions from sets');
    expect(text).toContain('Left out of the link, since it could not be read: “rubbish”.');
    const many = await app.at(`#/together?${today}&places=${six};51.5,-0.1~London`);
    expect(await heads(many)).toHaveLength(6);
    expect(await textOf(many)).toContain('“51.5,-0.1~London”');
  });

  test('one kind for all is the crop of the Season page there', async () => {
    const page = await app.at(`#/together?${today}&${pair}&class=long&start=sets`);
    const line = (await page.locator('.beside-crop').first().textContent()) ?? '';
    await page.getByRole('link', { name: 'Seattle, WA, United States' }).click();
    await page.waitForFunction(() => location.hash.startsWith('#/season'));
    await ready(page);
    const [, tops = ''] = /tops go over (\d+ \w+)/.exec(line) ?? [];
    expect(tops).not.toBe('');
    expect(await textOf(page)).toContain(tops);
  });

  test('starts of one onion: each way first, then days of one’s own', async () => {
    const page = await app.page(`#/together?${today}&at=45.748,4.847&name=Lyon&class=long&starts=`);
    expect(await heads(page)).toHaveLength(4);
    expect(await page.locator('h1').textContent()).toMatch(/^Lyon, France: .*widest bulbs, \d+ mm across/);
    await page.getByLabel('Started as').selectOption('sets');
    await page.getByLabel('On', { exact: true }).fill('2028-06-01');
    await page.getByRole('button', { name: 'Add a start' }).click();
    await page.locator('.beside-line').nth(4).waitFor();
    await ready(page);
    expect((await heads(page)).at(-1)).toBe('sets planted 1 June');
    expect(page.url()).toContain('sets~2028-06-01');
    await page.getByRole('link', { name: 'The best start, a month sooner and a month later' }).click();
    await page.waitForFunction(() => document.querySelectorAll('.beside-line').length === 3);
    await page.close();
  });

  test('both halves of the globe stand on one calendar, or are lined up by the longest day, and it is said', async () => {
    const page = await app.at(`#/together?${today}&${halves}&on=2027-06-21`);
    expect(await textOf(page)).toContain('summer in the south stands half a year from summer in the north');
    const months = () =>
      page
        .locator('.beside-line')
        .evaluateAll((lines) =>
          lines.map((line) => [...line.querySelectorAll('text')].map((t) => t.textContent)),
        );
    const [north, south] = (await months()).map((words) => words.filter((word) => word === 'Jul'));
    expect(north).toEqual(south);
    await page.getByRole('button', { name: 'Line up by the longest day' }).click();
    await ready(page);
    expect(await textOf(page)).toContain('midsummer stands under midsummer');
    const [first, second] = await notes(page);
    expect(first).toMatch(/^21 June: a day of 15 h/);
    expect(second).toMatch(/^21 December: a day of 15 h/);
    const x = await page.locator('.beside-line').evaluateAll((lines) =>
      lines.map((line) => {
        const words = [...line.querySelectorAll('text')];
        return words.find((word) => word.textContent?.startsWith('longest'))!.getBoundingClientRect().x;
      }),
    );
    expect(Math.abs(x[0] - x[1])).toBeLessThan(8);
  });

  test('is read on a phone and on paper, with nothing for axe to find in six lines', async () => {
    const page = await app.page(`#/together?${today}&places=${six}`, { width: 320 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
    await openDetails(page);
    expect(await axe(page)).toEqual([]);
    await page.emulateMedia({ media: 'print' });
    expect(await slider(page).isVisible()).toBe(false);
    expect(await page.locator('.change').isVisible()).toBe(false);
    expect(await page.locator('.beside-line').count()).toBe(6);
    expect(await page.locator('.on-day').isVisible()).toBe(true);
    await page.close();
    app.expectClean();
  });

  test('works without a network once it was here', async () => {
    const context = await app.context({ offline: true });
    const first = await app.page('', { context });
    await first.getByText('Ready to work without a network').waitFor();
    app.cut();
    await first.close();
    const page = await app.page(`#/together?${today}&${pair}`, { context });
    expect(await heads(page)).toHaveLength(2);
    await context.close();
  });
});

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { neckfall } from './command-line.ts';
import { type App, hasChromium, openApp, ready } from './open-app.ts';
import { bank, causesTold, headline, plain, saw, see, seeWhy, sets, tile } from './why-page.ts';

const autumn = 'today=2027-09-20';
const flowered = `#/why?${bank}&${sets}&${autumn}&saw=flowered`;

/** What the command line says of the same. */
async function told(...words: string[]) {
  const crop = ['--at', '52.08,-3.13', '--today', '2027-09-20', ...words];
  return JSON.parse(await neckfall('why', ...crop, '--json'));
}

const answers = (page: Page) => page.locator('.ask fieldset button');

describe.skipIf(!hasChromium)('the Why page', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => {
    app.expectClean();
    return app.close();
  });

  test('two taps lead to the likeliest cause with its number, what can be done, and next year', async () => {
    const page = await app.page(`#/why?${bank}&${autumn}`, { width: 360, height: 740 });
    await saw(page, 'They flowered');
    // in reach without a scroll, wherever the tile was
    const box = await seeWhy(page).boundingBox();
    expect(box!.y + box!.height).toBeLessThanOrEqual(740);
    await see(page);
    expect(await headline(page)).toMatch(/\d in 10|in 20/);
    expect(await page.locator('.rescue .today').textContent()).toContain('eat them now');
    expect(await page.locator('.next-year .next').getAttribute('href')).toMatch(
      /#\/season\?.*start=.*date=2028/,
    );
    expect(await page.evaluate(() => scrollY)).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('MAIN');
    await page.close();
  });

  test.each([
    [
      'a crop told',
      `${sets}&saw=flowered`,
      ['--class', 'long', '--start', 'sets', '--date', '2027-04-05', '--seen', 'flowered'],
    ],
    ['nothing told of it', 'saw=small,dry-tips', ['--seen', 'small,dry-tips']],
    [
      'days remembered, an answer, a store',
      `${sets}&saw=sprouted&date-about=yes&answers=drying~damp-or-heaped&store=kitchen`,
      [
        ...['--class', 'long', '--start', 'sets', '--date', '2027-04-05', '--about', '--seen', 'sprouted'],
        ...['--said', 'drying=damp-or-heaped', '--store', 'kitchen'],
      ],
    ],
  ])('says what the command line says: %s', async (_, asked, options) => {
    const page = await app.at(`#/why?${bank}&${autumn}&${asked}`);
    const { answer, causes, rescue, cautions, nextYear } = await told(...options);
    expect(await headline(page)).toBe(plain(answer));
    const shown = (await causesTold(page)).slice(0, -1);
    const names = causes.map(({ name }: { name: string }) => name);
    expect(shown.map((one, at) => one.slice(0, names[at]?.length))).toEqual(names);
    expect(causes.length).toBeGreaterThan(0);
    const said = plain(await page.locator('main').textContent());
    for (const sentence of [...rescue, ...cautions, nextYear.sentence])
      expect(said).toContain(plain(sentence));
  });

  test('a link opens to the same on another day, though nothing was said of the crop', async () => {
    const page = await app.page(`#/why?${bank}&${autumn}&saw=flowered,small&date-about=yes`);
    const before = [await headline(page), ...(await causesTold(page)), await plan(page)];
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write'], { origin: app.url });
    await page.getByRole('button', { name: 'Copy a link' }).click();
    await page.getByText('Copied.').waitFor();
    const link = (await page.evaluate(() => navigator.clipboard.readText())).slice(app.url.length);
    expect(link).toContain('saw=flowered,small');
    const later = await app.at(`${link}&today=2027-12-28`);
    expect([await headline(later), ...(await causesTold(later)), await plan(later)]).toEqual(before);
    await page.close();
  });

  const plan = async (page: Page) => plain(await page.locator('.crop-line summary').textContent());

  test('a question weighs the causes anew, and its answer is taken back', async () => {
    const page = await app.page(flowered);
    const before = await causesTold(page);
    await answers(page).first().click();
    await ready(page);
    const after = await causesTold(page);
    expect(after).not.toEqual(before);
    expect(page.url()).toContain('answers=');
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('ask');
    await page.getByText('Weighed again').waitFor();
    await page.getByRole('button', { name: /^Take back/ }).click();
    await ready(page);
    expect(await causesTold(page)).toEqual(before);
    expect(page.url()).not.toContain('answers=');
    // as any step of the history
    await page.goBack();
    await ready(page);
    expect(await causesTold(page)).toEqual(after);
    await page.close();
  });

  test('what has to be known of the crop is asked first where nothing was said, and counts among the three', async () => {
    const page = await app.page(`#/why?${bank}&${autumn}&saw=small`);
    await page.getByText('How did you start them?').waitFor();
    await answers(page).getByText('seed, sown in trays').click();
    await ready(page);
    expect(page.url()).toContain('start=raised-seedlings');
    expect(await plan(page)).toContain('sown in trays');
    await page.getByText('What did the packet or bag say?').waitFor();
    await page.getByRole('button', { name: 'Not sure' }).click();
    await ready(page);
    expect(page.url()).not.toContain('class=');
    const last = page.getByText('This is the last question');
    expect((await last.count()) + (await page.getByText('nothing more to ask').count())).toBe(1);
    await page.getByRole('button', { name: 'Take back: How did you start them?' }).click();
    await ready(page);
    expect(page.url()).not.toContain('start=');
    await page.getByText('How did you start them?').waitFor();
    await page.close();
  });

  test('no more than three questions are put, each of which may be passed over', async () => {
    const page = await app.page(`#/why?${bank}&${sets}&${autumn}&saw=small`);
    let put = 0;
    for (; put < 5 && (await answers(page).count()) > 0; put++) {
      await page.getByRole('button', { name: 'Not sure' }).click();
      await ready(page);
    }
    expect(put).toBeGreaterThan(0);
    expect(put).toBeLessThanOrEqual(3);
    expect(await page.locator('.ask li').count()).toBe(put);
    await page.close();
  });

  test('is found by words of one’s own and worked by keyboard alone', async () => {
    const page = await app.page(`#/why?${bank}&${autumn}`);
    await page.getByRole('searchbox').focus();
    await page.keyboard.type('Why did mine never bulb?');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await page.locator('.tile[aria-pressed=true]').textContent()).toBe('No bulb, only leaves');
    await page.locator('.tiles .hint').waitFor();
    // back into the field, from which Enter asks
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Enter');
    await page.locator('.causes').waitFor();
    expect(page.url()).toContain('saw=no-bulb');
    await page.close();
  });

  test('what is typed and means nothing is told, and all tiles stay', async () => {
    const page = await app.page(`#/why?${bank}&${autumn}`);
    await page.getByRole('searchbox').fill('zzzz');
    await page.getByText('Nothing here goes by “zzzz”').waitFor();
    expect(await page.locator('.tile').count()).toBe(31);
    await page.close();
  });

  test('no more is pressed than can be weighed, and what was seen can be changed', async () => {
    const page = await app.page(`#/why?${bank}&${autumn}&saw=flowered`);
    await page.getByRole('button', { name: 'Change what you saw' }).click();
    expect(await tile(page, 'They flowered').getAttribute('aria-pressed')).toBe('true');
    const unpressed = page.locator('.tile[aria-pressed=false]');
    for (let i = 0; i < 8; i++) await unpressed.first().click();
    expect(await page.locator('.tile[aria-pressed=true]').count()).toBe(8);
    await page.getByText('More than 8 things').waitFor();
    await tile(page, 'They flowered').click();
    await see(page);
    expect(page.url()).not.toContain('flowered');
    await page.goBack();
    await ready(page);
    expect(page.url()).toContain('saw=flowered');
    await page.close();
  });

  test('the crop is changed in its fold, and only what is said counts as said', async () => {
    const page = await app.page(`#/why?${bank}&${autumn}&saw=flowered`);
    await page.getByText('what most would have grown here').waitFor();
    await page.locator('.crop-line summary').click();
    await page.getByLabel('Started as').selectOption('raised-seedlings');
    await ready(page);
    expect(page.url()).toContain('start=raised-seedlings');
    expect(page.url()).not.toContain('date=');
    await page.getByLabel('The days are about right').check();
    await ready(page);
    expect(page.url()).toContain('date-about=yes');
    await page.close();
  });

  test('what an address has wrong is told, and the rest of it is answered', async () => {
    const page = await app.at(`#/why?${bank}&${autumn}&saw=flowered,blue&answers=watering~oft&taken=long`);
    const notice = plain(await page.locator('.notice').textContent());
    for (const wrong of ['saw as “flowered,blue”', 'answers as “watering~oft”', 'taken as “long”'])
      expect(notice).toContain(wrong);
    expect(await headline(page)).toBe('What went wrong?');
  });
});

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, axe, hasChromium, openApp, openDetails, ready, textOf } from './open-app.ts';
import { lyon, rowsOfCommand } from './which-rows.ts';

const nashik = '#/which?at=19.997,73.791&name=Nashik&today=2027-05-03';

describe.skipIf(!hasChromium)('the packet in the hand', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  test('takes a packet by its day length and days, and says what was made of it', async () => {
    const page = await app.at(lyon);
    await page.getByRole('link', { name: 'I have this packet' }).click();
    await page.getByRole('heading', { name: 'What do you have in your hand?' }).waitFor();
    await page.getByText('What else it says').click();
    await page.getByLabel('Day length', { exact: true }).selectOption('long');
    await page.locator('h1.answer').waitFor();
    await page.getByLabel('Days to maturity').fill('120');
    await page.getByLabel('Days to maturity').press('Tab');
    await ready(page);
    expect(page.url()).toContain('packet-days=120');
    const text = await textOf(page);
    expect(text).toContain('your onion');
    expect(text).toContain('120 days on the packet');
    expect(await page.locator('.starts thead th').count()).toBe(5);
    expect(text).toContain('Beside the best here');
    await page.getByLabel('Days to maturity').fill('1200');
    await page.getByLabel('Days to maturity').press('Tab');
    expect(await page.getByRole('alert').textContent()).toContain('“1200”');
  });

  test('takes a packet by its name as the command line does, with ways of starting and their sources', async () => {
    const page = await app.at(`${lyon}&packet=yes`);
    await page.getByLabel('Its name').fill('walla walla');
    await page.getByLabel('Its name').press('Tab');
    await page.locator('h1.answer', { hasText: 'Walla Walla' }).waitFor();
    await ready(page);
    const rows = await rowsOfCommand('Lyon', '--have', 'Walla Walla');
    const starts = rows.map(({ start }) => start);
    const heads = await page.locator('.starts thead th').allTextContents();
    expect(heads.length - 1).toBe(starts.length);
    await page.getByText('What is known of each way').click();
    const facts = await page.locator('.starts li').allTextContents();
    expect(facts.some((fact) => /\(source 1\)/.test(fact))).toBe(true);
    expect(await page.locator('.starts ol li').count()).toBeGreaterThan(1);
  });

  test('offers names like one it does not know, and tells shallots apart', async () => {
    const page = await app.at(`${lyon}&cultivar=Copraa`);
    await page.getByRole('button', { name: 'Did you mean Copra?' }).click();
    await page.locator('h1.answer', { hasText: 'Copra' }).waitFor();
    const other = await app.at(`${lyon}&cultivar=Golden+Gourmet`);
    expect(await other.getByRole('alert').textContent()).toContain('shallot');
  });

  test('says plainly that it does not know a name, keeps it, and goes by what else is printed', async () => {
    const page = await app.at(`${lyon}&packet=yes`);
    await page.getByLabel('Its name').fill('Bobs Giant');
    await page.getByLabel('Its name').press('Tab');
    await page.getByRole('heading', { level: 1, name: 'We don’t know “Bobs Giant”' }).waitFor();
    expect(await page.getByRole('alert').textContent()).toContain('No onion “Bobs Giant” in our list');
    await page.getByText('What else it says').click();
    await page.getByLabel('Day length', { exact: true }).selectOption('long');
    await page.locator('h1.answer', { hasText: 'Bobs Giant' }).waitFor();
    await ready(page);
    const text = await textOf(page);
    expect(text).toContain('We don’t know “Bobs Giant” by name: this goes by what its packet says.');
    expect(text).toContain('Ways to start Bobs Giant');
    expect(page.url()).toContain('class=long&cultivar=Bobs+Giant');
  });

  test('asks for more than days to maturity', async () => {
    const page = await app.at(`${lyon}&packet=yes`);
    await page.getByText('What else it says').click();
    await page.getByLabel('Days to maturity').fill('110');
    await page.getByLabel('Days to maturity').press('Tab');
    await page.getByText('Days to maturity alone don’t say when bulbs start').waitFor();
    expect(await page.locator('h1').textContent()).toBe('What do you have in your hand?');
  });

  test.each([
    ['seed', /Sow it/, ['Sown in place', 'Sown in trays']],
    ['young plants', /Set your plants out/, ['Bought plants']],
    ['sets', /Plant your sets/, ['Sets']],
  ])('answers from %s in the hand, whatever else is said', async (content, answer, ways) => {
    const page = await app.at(`${lyon}&packet=yes`);
    await page.getByLabel('What do you have in your hand?').selectOption(content);
    await page.locator('h1.answer').waitFor();
    await ready(page);
    expect(await page.locator('h1.answer').textContent()).toMatch(answer);
    expect(await textOf(page)).toContain('Taken as');
    const heads = (await page.locator('.starts thead th').allTextContents()).slice(1);
    expect(heads.sort()).toEqual([...ways].sort());
    expect(await textOf(page)).not.toContain('not on sale');
  });

  test('keeps what is in the hand when a name is mended', async () => {
    const page = await app.at(`${lyon}&packet=yes&holds=sets&skin=red&cultivar=Sturonn`);
    await page.getByRole('button', { name: 'Did you mean Sturon?' }).click();
    await page.locator('h1.answer', { hasText: 'Sturon' }).waitFor();
    for (const kept of ['holds=sets', 'skin=red', 'cultivar=Sturon']) expect(page.url()).toContain(kept);
    await page.getByRole('button', { name: 'Does it suit?' }).click();
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
  });

  test('tells the name an onion goes by here, and in words which start was chosen', async () => {
    const page = await app.at(`${lyon}&cultivar=Senshyu&start=raised-seedlings`);
    expect(await textOf(page)).toContain('“Senshyu” is Senshuki in our list.');
    expect(await page.locator('.starts th.chosen').textContent()).toBe('Sown in trays, as you chose');
  });

  test('says no in a whole sentence, and what comes before it with its numbers', async () => {
    const page = await app.at(`${nashik}&cultivar=Copra`);
    expect(await page.locator('h1.answer').textContent()).toBe(
      'Nashik, India: not Copra. However it is started, it makes no bulbs.',
    );
    const against = page.locator('[aria-labelledby=against] > p');
    expect(await against.textContent()).toMatch(
      /^Others come before it here, first of all tropical short-day, .+: good bulbs in .+, with this one in none of 30 years tried\./,
    );
  });

  test.each([360, 1280])('at %i px has nothing for axe to find with all that can be said', async (width) => {
    const page = await app.at(
      `${lyon}&packet=yes&cultivar=Bobs+Giant&class=long&holds=sets&start=sets&skin=red`,
      {
        width,
      },
    );
    await openDetails(page);
    expect(await axe(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
    app.expectClean();
  });
});

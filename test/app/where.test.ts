import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { neckfall } from './command-line.ts';
import { type App, hasChromium, openApp, ready } from './open-app.ts';

const today = 'today=2027-05-03';
const lyon = `#/where?at=45.748,4.847&name=Lyon&${today}`;

describe.skipIf(!hasChromium)('the Where page', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  const textOf = async (hash: string) => {
    const page = await app.at(hash);
    const text = await page.locator('main').textContent();
    return (text ?? '').replace(/\s+/g, ' ');
  };

  test.each([
    ['a town', '#/where?at=45.748,4.847&name=Lyon', ['Lyon']],
    ['a bare point', '#/where?at=52.08,-3.13', ['--at', '52.08,-3.13']],
    [
      'a point with its height and sun',
      '#/where?at=52.08,-3.13&elevation=160&sun=9',
      ['--at', '52.08,-3.13,160', '--sun', '9'],
    ],
  ])('says of %s what the command line says', async (_, hash, args) => {
    const page = await textOf(`${hash}&${today}`);
    const run = (...more: string[]) => neckfall('where', ...args, '--today', '2027-05-03', ...more);
    const { today: outlook, classes, climate, assumed } = JSON.parse(await run('--json'));
    const [headline] = (await run()).replace(/\s+/g, ' ').split('. ');
    expect(page).toContain(`${headline}.`);
    expect(page).toContain(outlook.sentence);
    for (const { reason } of classes) expect(page).toContain(reason);
    for (const sentence of assumed) expect(page).toContain(sentence);
    const rain = [...page.matchAll(/(\d+) mm(?=\d)/g)].map(([, mm]) => Number(mm)).slice(-12);
    expect(rain).toHaveLength(12);
    climate.months.forEach(({ rainMmPerMonth }: { rainMmPerMonth: number }, month: number) => {
      expect(Math.abs(rain[month] - rainMmPerMonth)).toBeLessThan(0.6);
    });
  });

  test('leads with rain and heat in the tropics, and not elsewhere', async () => {
    expect(await textOf(`#/where?at=14.604,120.982&name=Manila&${today}`)).toContain('rain and heat lead');
    expect(await textOf(lyon)).not.toContain('rain and heat lead');
  });

  test('answers beyond the polar circle, where the sun does not set', async () => {
    const text = await textOf(`#/where?at=69.649,18.956&name=Troms%C3%B8&${today}`);
    expect(text).toContain('24 h');
  });

  test('has the southern year the other way round', async () => {
    const page = await app.at(`#/where?at=-41.286,174.776&name=Wellington&${today}`);
    const hours = await page.locator('tbody tr td:nth-of-type(1)').allTextContents();
    const minutes = hours.slice(-12).map((text) => {
      const [h, m = '0'] = text.match(/\d+/g) ?? [];
      return Number(h) * 60 + Number(m);
    });
    expect(minutes.indexOf(Math.max(...minutes))).toBe(11);
    expect([5, 6]).toContain(minutes.indexOf(Math.min(...minutes)));
  });

  test('speaks to Americans in their units and words, and keeps what is chosen instead', async () => {
    const context = await app.context({ locale: 'en-US' });
    const page = await app.page(lyon, { context });
    expect(await page.locator('main').textContent()).toContain('°F');
    await page.getByLabel('°C, mm, grams').check();
    expect(await page.locator('main').textContent()).toContain('°C');
    const again = await app.page(lyon, { context });
    expect(await again.locator('main').textContent()).not.toContain('°F');
    await context.close();
  });

  test('takes what the grower knows of the ground into the answer and the link', async () => {
    const page = await app.at(lyon);
    await page.getByText('Your ground:').click();
    await page.getByLabel('Height above the sea').fill('420');
    await page.getByLabel('Height above the sea').press('Tab');
    await page.getByText('as given').waitFor({ state: 'attached' });
    expect(await page.getByLabel('Height above the sea').inputValue()).toBe('420');
    await page.getByLabel('Hours a day that the sun reaches').fill('5,5');
    await page.getByLabel('Hours a day that the sun reaches').press('Tab');
    await page.getByLabel('A frost hollow').check();
    await page.getByLabel('Soil').selectOption('clay');
    await ready(page);
    expect(page.url()).toContain('elevation=420&sun=5.5&hollow=yes&soil=clay');
    const how = await page.locator('.how').textContent();
    expect(how).toContain('5 h 30 min of direct sun');
    expect(how).toContain('frost hollow');
    await page.getByLabel('Hours a day that the sun reaches').fill('30');
    await page.getByLabel('Hours a day that the sun reaches').press('Tab');
    expect(await page.getByRole('alert').textContent()).toContain('“30”');
    expect(page.url()).toContain('sun=5.5');
  });

  test('prints the answer and its grounds without the controls', async () => {
    const page = await app.at(lyon);
    await page.emulateMedia({ media: 'print' });
    const isSeen = (text: string) => page.getByText(text).first().isVisible();
    expect(await isSeen('Lyon, France: ')).toBe(true);
    expect(await isSeen('How we know')).toBe(true);
    expect(await isSeen('Another place')).toBe(false);
    expect(await isSeen('Copy a link')).toBe(false);
    expect((await page.pdf()).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test('takes coordinates with points or commas, names for them, and refuses others in words', async () => {
    const page = await app.page();
    await page.getByText('Other ways to say where').click();
    const field = page.getByLabel('Coordinates');
    await field.fill('north of here');
    await field.press('Enter');
    expect(await page.getByRole('alert').textContent()).toContain('“north of here”');
    await page.getByLabel('What you call it').fill('Pencarreg Bank');
    await field.fill('52,08; -3,13');
    await field.press('Enter');
    await page.locator('h1.answer').waitFor();
    expect(await page.locator('h1').textContent()).toMatch(/^Pencarreg Bank: /);
    expect(await page.locator('.place').textContent()).toContain('Pencarreg Bank (52.08° N, 3.13° W, near ');
    await page.close();
  });

  test('takes a point of the map, by finger or by keys', async () => {
    const page = await app.page();
    await page.getByText('Other ways to say where').click();
    await page.getByText('Point on a map').click();
    const map = page.getByRole('application');
    await map.click({ position: { x: 10, y: 100 } });
    expect(await page.getByRole('button', { name: /^Take \S+°/ }).textContent()).toMatch(
      /^Take \S+°, -1\d\d/,
    );
    await page.getByRole('button', { name: 'Closer' }).click();
    await map.focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    await page.locator('main :is(h1.answer, [role=alert])').waitFor();
    expect(page.url()).toContain('at=');
    await page.close();
  });

  test('says why there is no answer at sea and beyond the land covered, and asks for another place', async () => {
    expect(await textOf('#/where?at=0,-30')).toMatch(/at sea; the nearest town is .+ away/);
    expect(await textOf('#/where?at=78.2,15.6')).toContain('72° N');
    const page = await app.at('#/where?at=0,-30');
    expect(await page.getByRole('combobox').count()).toBe(1);
    app.expectClean();
  });
});

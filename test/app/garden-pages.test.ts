import type { BrowserContext } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { garden, heading, kept, openFile, press, told, whole } from './kept-garden.ts';
import { type App, axe, hasChromium, openApp, openFolds, ready } from './open-app.ts';

const nasty = '<img src=x onerror="document.title=1"><script>document.title=2</script>';

const hidden = 'Bed\u202e of\u200b \u0007ours';
const spelt = 'Bed\\u{202e} of\\u{200b} \\u{7}ours';
const steering = /[\p{Cc}\u200b\u202e]/u;

describe.skipIf(!hasChromium)('the pages of a garden', () => {
  let app: App;
  let context: BrowserContext;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());
  const alone = async (hash: string) => {
    context = await app.context();
    return app.page(hash, { context });
  };

  test('a first visit can begin with a garden file, which says where', async () => {
    const page = await alone('');
    await page.getByText('Have you a garden file?').click();
    await openFile(page, garden);
    await heading(page).getByText('2 crops').waitFor();
    expect(page.url()).toContain('at=52.08,-3.13&name=Pencarreg+Bank');
    await page.getByRole('link', { name: 'Where', exact: true }).click();
    await page.locator('h1.answer', { hasText: 'Pencarreg Bank' }).waitFor();
    await page.close();
    const later = await app.page('', { context });
    await later.getByRole('link', { name: 'Kept on this device: 2 crops' }).click();
    await later.getByRole('link', { name: 'By the wall' }).waitFor();
    await context.close();
  });

  test('plantings tell what was seen of them, and places the weather that is kept', async () => {
    const page = await alone(kept);
    const seen = ['2027-05-20', '2027-06-01'].map((date) => ({ plantingId: 'b', date, leavesGreen: 5 }));
    const weather = { placeId: 'bank', firstDate: '2027-05-01', tempMaxC: [15, null, 17] };
    await openFile(page, { ...garden, observations: seen, weather: [weather] });
    await told(page, 'Seen twice, last on 1 June 2027.');
    await told(page, 'Weather kept from 1 May 2027 to 3 May 2027: 2 days measured.');
    const { observations, weather: saved } = (await whole(page)) as unknown as Record<string, object[]>;
    expect(observations).toMatchObject(seen);
    expect(saved).toMatchObject([weather]);
    expect(await axe(page)).toEqual([]);
    await context.close();
  });

  test('an onion of one’s own stands in Which as others do, and can be chosen on Season and When', async () => {
    const page = await alone(kept);
    await openFile(page, garden);
    await page.getByRole('link', { name: 'Which', exact: true }).click();
    // folded away with others of its kind, perhaps
    const own = page.locator('.names a', { hasText: 'Ines’s Tin (your own)' });
    await page.waitForFunction(() => location.hash.startsWith('#/which'));
    await ready(page);
    await told(page, 'Out of the jar: neither its kind');
    await press(page, 'Show all');
    await ready(page);
    // from seed alone, like any packet; ranked among the others
    const starts = await own.evaluateAll((links) =>
      links.map((link) => link.closest<HTMLElement>('.names')?.dataset.start),
    );
    expect(starts.sort()).toEqual(['direct-seed', 'raised-seedlings']);
    const months = await own.first().evaluate((link) => link.closest('.names')?.textContent);
    expect(months).toMatch(/7.9 months/);
    await page.evaluate(() => {
      location.hash = location.hash.replace('#/which', '#/season');
    });
    await ready(page);
    await page.locator('details.plan summary').click();
    await page.getByLabel('Onion', { exact: true }).selectOption({ label: 'Ines’s Tin (your own)' });
    await heading(page).getByText('Ines’s Tin').waitFor();
    await ready(page);
    expect(page.url()).toContain('class=long&cultivar=Ines%E2%80%99s+Tin&packet-hours=15');
    const link = page.url();
    await page.evaluate(() => {
      location.hash = location.hash.replace('#/season', '#/when');
    });
    await page.getByLabel('Onion, as the packet says').waitFor({ state: 'attached' });
    await ready(page);
    expect(await page.getByLabel('Onion, as the packet says').locator('option:checked').textContent()).toBe(
      'Ines’s Tin (your own)',
    );
    const here = await app.page(link.slice(link.indexOf('#')), { context });
    const answer = await heading(here).textContent();
    expect(answer).toContain('Ines’s Tin');
    await context.close();

    // the link opens where nobody knows the name, by what the packet says
    const other = await app.page(link.slice(link.indexOf('#')));
    await told(other, '“Ines’s Tin” is no onion that is known here. It is worked out from its packet');
    const figures = (text: string | null) => text?.match(/\d+ \w+/g);
    expect(figures(await heading(other).textContent())).toEqual(figures(answer));
    await other.close();
  });

  test('a packet is kept as an onion of one’s own, and taken back', async () => {
    const page = await alone('#/which?at=52.08,-3.13&name=Pencarreg+Bank&packet-hours=14.5&packet=yes');
    await page.getByText('Keep it as an onion of your own').click();
    await openFolds(page);
    await page.getByLabel('What you call it').fill('Okoro’s Red');
    await press(page, 'Keep this onion');
    await heading(page).getByText('Okoro’s Red').waitFor();
    await ready(page);
    await page.getByRole('link', { name: /^Kept on this device/ }).click();
    await page.getByRole('link', { name: 'Okoro’s Red' }).waitFor();
    expect((await whole(page)).cultivars).toMatchObject([{ name: 'Okoro’s Red', packetHours: 14.5 }]);
    await press(page, 'Remove onion “Okoro’s Red”');
    await page.getByRole('link', { name: 'Okoro’s Red' }).waitFor({ state: 'detached' });
    await press(page, 'Take back: onion “Okoro’s Red” removed');
    await page.getByRole('link', { name: 'Okoro’s Red' }).click();
    await page.waitForFunction(() => location.hash.startsWith('#/which'));
    await heading(page).getByText('Okoro’s Red').waitFor();
    await context.close();
  });

  test('names in a file that are markup stay text', async () => {
    const page = await alone('');
    await page.getByText('Have you a garden file?').click();
    const named = (entry: object) => ({ ...entry, name: nasty });
    await openFile(
      page,
      {
        ...garden,
        places: garden.places.map(named),
        cultivars: garden.cultivars.map(named),
        plantings: garden.plantings.map((planting) => ({ ...planting, name: nasty, cultivar: nasty })),
      },
      `${nasty}.json`,
    );
    await heading(page).getByText('2 crops').waitFor();
    expect(await page.locator('h2').first().textContent()).toBe(nasty);
    await page.getByRole('link', { name: nasty }).first().click();
    await page.waitForFunction(() => location.hash.startsWith('#/season'));
    await ready(page);
    expect(await page.locator('img[src=x], main script, .place img').count()).toBe(0);
    expect(await page.title()).toContain('<img');
    await context.close();
  });

  test('marks in names that hide, or turn the text round, are spelt out on every page and kept in the file', async () => {
    const page = await alone('');
    await page.getByText('Have you a garden file?').click();
    const named = (entry: object) => ({ ...entry, name: hidden });
    const given = {
      ...garden,
      places: garden.places.map(named),
      cultivars: garden.cultivars.map(named),
      plantings: garden.plantings.map((planting) => ({ ...planting, name: hidden, cultivar: hidden })),
    };
    await openFile(page, given);
    await heading(page).getByText('2 crops').waitFor();
    expect(await page.locator('h2').first().textContent()).toBe(spelt);
    expect((await whole(page)).plantings[0].name).toBe(hidden);
    await openFolds(page);
    await page
      .getByRole('button', { name: `Remove onion “${spelt}”` })
      .first()
      .click();
    await page.getByRole('button', { name: /^Take back/ }).click();
    const words = () =>
      page.evaluate(() => `${document.title} ${document.body.textContent.replaceAll(/\s/g, ' ')}`);
    expect(await words()).toContain(spelt);
    expect(await words()).not.toMatch(steering);
    for (const [at, to] of [
      ['#/kept', '#/which'],
      ['#/which', '#/when'],
    ]) {
      await page.evaluate(
        ([from, next]) => {
          location.hash = location.hash.replace(from, next);
        },
        [at, to] as const,
      );
      await page.waitForFunction((next) => location.hash.startsWith(next), to);
      await ready(page);
      expect(await words()).toContain(spelt);
      expect(await words()).not.toMatch(steering);
    }
    await context.close();
  });

  test.each([
    ['on a phone, light', 360, false],
    ['on a desk, dark', 1280, true],
  ])('%s: nothing for axe to find, nothing beside the page', async (_, width, dark) => {
    const context = await app.context({ width, dark });
    const page = await app.page('', { context });
    await page.getByText('Have you a garden file?').click();
    expect(await axe(page)).toEqual([]);
    const long = { ...garden.plantings[0], id: 'c', name: 'Thelongestbedofall'.repeat(12) };
    await openFile(page, {
      ...garden,
      plantings: [...garden.plantings, long, { ...long, id: 'd', placeId: null }],
    });
    await heading(page).getByText('4 crops').waitFor();
    await press(page, 'Remove “By the wall”');
    await page.getByRole('button', { name: /^Take back/ }).waitFor();
    expect(await axe(page)).toEqual([]);
    const over = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(await over()).toBe(0);
    await page.setViewportSize({ width: 320, height: 700 });
    expect(await over()).toBe(0);
    await context.close();
    app.expectClean();
  });
});

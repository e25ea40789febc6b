import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { download } from './download.ts';
import { type App, axe, hasChromium, openApp, ready } from './open-app.ts';

const bank =
  '#/season?at=52.08,-3.13&name=Pencarreg+Bank&class=long&start=raised-seedlings&date=2027-02-20&row-cm=30&plants=250&today=2027-06-20';
const kept = '#/kept?at=52.08,-3.13&name=Pencarreg+Bank&today=2027-06-20';
const nasty = '<img src=x onerror="document.title=1"><script>document.title=2</script>';

/** An invented garden, with fields that no version knows. */
const garden = {
  schema: 'neckfall/garden@1',
  keeper: 'Ines Tarrant',
  places: [{ id: 'bank', name: 'Pencarreg Bank', latitudeDeg: 52.08, longitudeDeg: -3.13, slope: 'south' }],
  cultivars: [
    { id: 'tin', name: 'Ines’s Tin', class: 'long', packetHours: 15, keepsMonths: [7, 9] },
    { id: 'jar', name: 'Out of the jar' },
  ],
  plantings: [
    { id: 'a', name: 'The long bed', placeId: 'bank', cultivar: 'Ines’s Tin', start: 'raised-seedlings' },
    { id: 'b', name: 'By the wall', placeId: 'bank', class: 'long', start: 'sets', startDate: '2027-03-20' },
  ],
};

async function openFile(page: Page, content: object, name = 'bank.neckfall.json'): Promise<void> {
  const buffer = Buffer.from(JSON.stringify(content));
  await page.getByLabel('Open a garden file').setInputFiles({ name, mimeType: 'application/json', buffer });
  await page.locator('.opened', { hasText: `${name} is open` }).waitFor();
}

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();
const heading = (page: Page) => page.locator('h1');
const told = (page: Page, text: string) => page.getByText(text).first().waitFor();

const isAsPublished = new Ajv({ strict: true, allErrors: true }).compile(
  JSON.parse(readFileSync(new URL('../../packages/cli/schemas/garden@1.json', import.meta.url), 'utf8')),
);

/** The kept garden as it is saved, which is always as the published schema says. */
async function whole(page: Page): Promise<typeof garden> {
  const saved = JSON.parse((await download(page, 'Save the whole garden')).bytes.toString());
  isAsPublished(saved);
  expect(isAsPublished.errors).toBeNull();
  return saved;
}

/** Puts a record straight into the browser's store, as damage or another version might. */
async function damage(page: Page, key: number | 'at', value: unknown): Promise<void> {
  await page.evaluate(
    ([at, record]) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('neckfall');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const write = opening.result.transaction('garden', 'readwrite');
          write.objectStore('garden').put(record, at as IDBValidKey);
          write.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    [key, value] as const,
  );
}

describe.skipIf(!hasChromium)('the garden kept on the device', () => {
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

  test('a plan kept is there after the page was left, and leads back to its season', async () => {
    const page = await alone(bank);
    const answer = await heading(page).textContent();
    await page.getByLabel('What you call it').fill('The long bed');
    await press(page, 'Keep it on this device');
    await told(page, 'Kept on this device as “The long bed”.');
    await page.close();
    const again = await app.page(kept, { context });
    await again.getByRole('link', { name: 'The long bed' }).click();
    await again.waitForFunction(() => location.hash.startsWith('#/season'));
    await ready(again);
    expect(await heading(again).textContent()).toBe(answer);
    await told(again, 'Kept on this device as “The long bed”.');
    expect(again.url()).toContain('row-cm=30&plants=250');
    await context.close();
  });

  test('a change is kept in place or beside, taken back and done again, also after a new start', async () => {
    const page = await alone(bank);
    await press(page, 'Keep it on this device');
    await told(page, 'Kept on this device as');
    await page.evaluate(() => {
      location.hash = location.hash.replace('plants=250', 'plants=90');
    });
    await told(page, 'but not as it is shown now');
    await press(page, 'Keep it so, in place of');
    await page.getByText('not as it is shown now').waitFor({ state: 'detached' });
    expect((await whole(page)).plantings).toMatchObject([{ plants: 90 }]);
    await page.close();

    const again = await app.page(kept, { context });
    await press(again, /^Take back: .* changed/);
    await again.getByRole('button', { name: /^Do again: .* changed/ }).waitFor();
    expect((await whole(again)).plantings).toMatchObject([{ plants: 250 }]);
    await press(again, /^Take back: .* kept/);
    await heading(again).getByText('Nothing is kept').waitFor();
    await press(again, /^Do again/);
    await press(again, /^Do again: .* changed/);
    await again.getByRole('button', { name: /^Do again/ }).waitFor({ state: 'detached' });
    expect((await whole(again)).plantings).toMatchObject([{ plants: 90 }]);
    await context.close();
  });

  test('a garden file is kept whole and saved as it came', async () => {
    const page = await alone(kept);
    await openFile(page, garden);
    await told(page, 'bank.neckfall.json is open: 2 plans.');
    await page.close();
    const again = await app.page(kept, { context });
    const saved = await download(again, 'Save the whole garden');
    expect(saved.name).toBe('bank.neckfall.json');
    expect(JSON.parse(saved.bytes.toString())).toMatchObject(garden);
    await openFile(again, { ...garden, keeper: 'Bram Okoro', plantings: [] }, 'other.neckfall.json');
    await told(again, 'It took the place of the garden kept before.');
    expect(await whole(again)).toMatchObject({ keeper: 'Bram Okoro', plantings: [] });
    await press(again, 'Take back: other.neckfall.json opened');
    await again.getByRole('link', { name: 'By the wall' }).waitFor();
    expect(await whole(again)).toMatchObject({ keeper: 'Ines Tarrant' });
    await context.close();
  });

  test('two tabs keep one garden: each sees the other’s changes, and neither undoes them', async () => {
    const one = await alone(kept);
    await openFile(one, garden);
    await one.getByRole('link', { name: 'By the wall' }).waitFor();
    const other = await app.page(kept, { context });
    await press(other, 'Put away “By the wall”');
    await one.getByRole('link', { name: 'By the wall' }).waitFor({ state: 'detached' });
    await told(one, 'changed in another tab');
    await press(one, 'Put away “The long bed”');
    await other.getByRole('link', { name: 'The long bed' }).waitFor({ state: 'detached' });
    // both at once: no change is lost
    const season = await app.page(bank, { context });
    const third = await app.page(bank.replace('class=long', 'class=short'), { context });
    await Promise.all([press(season, 'Keep it on this device'), press(third, 'Keep it on this device')]);
    await told(season, 'Kept on this device as');
    await told(third, 'Kept on this device as');
    await other.getByRole('link').filter({ hasText: 'own seedlings' }).nth(1).waitFor();
    expect((await whole(other)).plantings).toHaveLength(2);
    await context.close();
  });

  test.each([
    ['refuses to keep anything', 'get() { throw new DOMException("refused", "SecurityError"); }'],
    ['has no store', 'value: undefined'],
    ['fails to open its store', 'value: { open() { throw new Error("broken"); } }'],
  ])('where the browser %s, the app works on and says once that the garden goes', async (_, store) => {
    const before = `Object.defineProperty(window, 'indexedDB', { ${store} });`;
    const page = await app.page(bank, { before });
    expect(await page.getByText('does not keep your garden').count()).toBe(0);
    await press(page, 'Keep it on this device');
    await told(page, 'Kept on this device as');
    expect(await page.getByText('does not keep your garden').count()).toBe(1);
    expect((await whole(page)).plantings).toHaveLength(1);
    await press(page, /^Take back/);
    await told(page, 'not among those kept');
    await page.close();
  });

  test('a full device loses nothing of what is on the page', async () => {
    const before = `
      const put = IDBObjectStore.prototype.put;
      let isFull = false;
      addEventListener('device-full', () => { isFull = true; });
      IDBObjectStore.prototype.put = function (...args) {
        if (isFull) throw new DOMException('full', 'QuotaExceededError');
        return put.apply(this, args);
      };`;
    const page = await app.page(kept, { before });
    await openFile(page, garden);
    await page.getByRole('link', { name: 'By the wall' }).waitFor();
    await page.evaluate(() => dispatchEvent(new Event('device-full')));
    await press(page, 'Put away “By the wall”');
    await page.getByRole('link', { name: 'By the wall' }).waitFor({ state: 'detached' });
    await told(page, 'does not keep your garden');
    expect(await whole(page)).toMatchObject({ plantings: [garden.plantings[0]] });
    await press(page, /^Take back/);
    await page.getByRole('link', { name: 'By the wall' }).waitFor();
    await page.close();
  });

  test('what lies damaged in the store is mended and told', async () => {
    const page = await alone(kept);
    await openFile(page, garden);
    await page.getByRole('link', { name: 'By the wall' }).waitFor();
    const plantings = [{ ...garden.plantings[0], start: 'cuttings' }, 7];
    await damage(page, 1, { garden: { ...garden, plantings }, file: 12, step: 'x' });
    await damage(page, 'at', 'nowhere');
    await page.reload();
    await told(page, 'was damaged');
    const text = await page.locator('main').textContent();
    expect(text).toContain('plantings[0].start cuttings');
    expect(text).toContain('plantings[1]');
    expect(await page.getByRole('link', { name: 'The long bed' }).count()).toBe(1);
    expect(await whole(page)).toMatchObject({ keeper: 'Ines Tarrant' });
    await damage(page, 1, 'nothing of ours');
    await page.reload();
    await told(page, 'was damaged');
    await context.close();
  });

  test('put away whole it can be taken back, until it is removed for good', async () => {
    const page = await alone(kept);
    await openFile(page, garden);
    await press(page, 'Put the whole garden away');
    await heading(page).getByText('Nothing is kept').waitFor();
    await press(page, 'Take back: the whole garden put away');
    await page.getByRole('link', { name: 'By the wall' }).waitFor();
    await press(page, 'Put the whole garden away');
    await press(page, 'Remove it from this device for good');
    await page.getByRole('button', { name: 'Remove it' }).waitFor({ state: 'detached' });
    expect(await page.getByRole('button', { name: /^(Take back|Do again)/ }).count()).toBe(0);
    await page.reload();
    await heading(page).getByText('Nothing is kept').waitFor();
    expect(await page.locator('.foot a').count()).toBe(0);
    await context.close();
  });

  test('a first visit can begin with a garden file, which says where', async () => {
    const page = await alone('');
    await page.getByText('Have you a garden file?').click();
    await openFile(page, garden);
    await heading(page).getByText('2 plans').waitFor();
    expect(page.url()).toContain('at=52.08,-3.13&name=Pencarreg+Bank');
    await page.getByRole('link', { name: 'Where', exact: true }).click();
    await page.locator('h1.answer', { hasText: 'Pencarreg Bank' }).waitFor();
    await page.close();
    const later = await app.page('', { context });
    await later.getByRole('link', { name: 'Kept on this device: 2 plans' }).click();
    await later.getByRole('link', { name: 'By the wall' }).waitFor();
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
    await page.getByRole('link', { name: 'Try other days' }).click();
    await page.waitForFunction(() => location.hash.startsWith('#/when'));
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
    await page.getByLabel('What you call it').fill('Okoro’s Red');
    await press(page, 'Keep this onion');
    await heading(page).getByText('Okoro’s Red').waitFor();
    await ready(page);
    await page.getByRole('link', { name: /^Kept on this device/ }).click();
    await page.getByRole('link', { name: 'Okoro’s Red' }).waitFor();
    expect((await whole(page)).cultivars).toMatchObject([{ name: 'Okoro’s Red', packetHours: 14.5 }]);
    await press(page, 'Put away onion “Okoro’s Red”');
    await page.getByRole('link', { name: 'Okoro’s Red' }).waitFor({ state: 'detached' });
    await press(page, 'Take back: onion “Okoro’s Red” put away');
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
    await heading(page).getByText('2 plans').waitFor();
    expect(await page.locator('h2').first().textContent()).toBe(nasty);
    await page.getByRole('link', { name: nasty }).first().click();
    await page.waitForFunction(() => location.hash.startsWith('#/season'));
    await ready(page);
    expect(await page.locator('img[src=x], main script, .place img').count()).toBe(0);
    expect(await page.title()).toContain('<img');
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
    await heading(page).getByText('4 plans').waitFor();
    await press(page, 'Put away “By the wall”');
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

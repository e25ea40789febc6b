import { restoreGarden } from '@neckfall/engine';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { download } from './download.ts';
import { fileOfBytes } from './file-of-bytes.ts';
import { type App, hasChromium, openApp, openFolds, ready } from './open-app.ts';
import { taken } from './taken.ts';

const bank =
  '#/season?at=52.08,-3.13&name=Pencarreg+Bank&class=long&start=raised-seedlings&date=2027-02-20&plant-out=2027-04-12&row-cm=30&plants=250&today=2027-06-20';
const nasty = '<img src=x onerror="document.title=1"><script>document.title=2</script>';

/** An invented garden, with fields that no version knows. */
const garden = {
  schema: 'neckfall/garden@1',
  keeper: 'Ines Tarrant',
  places: [{ id: 'bank', name: 'Pencarreg Bank', latitudeDeg: 52.08, longitudeDeg: -3.13, slope: 'south' }],
  cultivars: [{ id: 'tin', name: 'Ines’s Tin', class: 'long', packetHours: 15 }],
  plantings: [
    {
      id: 'a',
      name: 'The long bed',
      placeId: 'bank',
      cultivar: 'Ines’s Tin',
      start: 'sets',
      startDate: '2027-03-28',
      weededBy: 'Bram Okoro',
    },
    {
      id: 'b',
      name: 'By the wall',
      placeId: 'bank',
      class: 'short',
      start: 'direct-seed',
      startDate: '2027-08-20',
    },
  ],
};

type Content = string | Buffer | object;

/** @param content none: `name` is the path of a file */
async function open(page: Page, content: Content | null, name = 'bank.neckfall.json'): Promise<void> {
  const text = typeof content === 'string' || Buffer.isBuffer(content) ? content : JSON.stringify(content);
  await openFolds(page);
  const file = { name, mimeType: 'application/json', buffer: Buffer.from(text) };
  await page.getByLabel('Open a garden file').setInputFiles(content === null ? name : file);
}

async function keep(page: Page): Promise<void> {
  await openFolds(page);
  await page.getByRole('button', { name: 'Keep it on this device' }).click();
  await page.getByText('Kept on this device as').waitFor();
}

/** The kept garden as it is saved. */
async function whole(page: Page): Promise<typeof garden> {
  return JSON.parse((await download(page, 'Save the whole garden')).bytes.toString());
}

describe.skipIf(!hasChromium)('copies to keep of a season', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  test('the plan comes back from its file as it was', async () => {
    const page = await app.page(bank);
    const answer = await page.locator('h1').textContent();
    await keep(page);
    const saved = await download(page, 'Save the whole garden');
    expect(saved.name).toBe('neckfall-pencarreg-bank.neckfall.json');
    const text = saved.bytes.toString();
    expect(restoreGarden(JSON.parse(text)).changes).toEqual([]);
    await page.close();
    const other = await app.page('#/season?at=45.748,4.847&name=Lyon&class=short&today=2027-06-20');
    await open(other, text);
    await other.locator('h1', { hasText: 'Pencarreg Bank' }).waitFor();
    await ready(other);
    expect(await other.locator('h1').textContent()).toBe(answer);
    expect(other.url().split('#')[1]).toBe(
      bank.slice(1).replace('&today', `&planting=${JSON.parse(text).plantings[0].id}&today`),
    );
    await other.goBack();
    await ready(other);
    expect(await other.locator('h1').textContent()).toContain('Lyon');
    await other.close();
  });

  test('a chosen plan is kept as it was chosen', async () => {
    const page = await app.page('#/season?at=45.748,4.847&name=Lyon&today=2027-05-03');
    await keep(page);
    const { places, plantings } = await whole(page);
    expect(plantings[0]).toMatchObject({ placeId: places[0].id });
    for (const field of ['class', 'start', 'startDate'] as const)
      expect(plantings[0][field]).toEqual(expect.any(String));
    await page.close();
  });

  test('of several plans the reader picks; saving keeps all else of the file', async () => {
    const page = await app.page(bank);
    await open(page, garden);
    await page.getByRole('link', { name: 'By the wall' }).click();
    await page.locator('h1', { hasText: '20 August' }).waitFor();
    await page.goBack();
    await page.getByRole('link', { name: 'The long bed' }).click();
    await page.locator('h1', { hasText: 'from sets' }).waitFor();
    await ready(page);
    // an onion of their own goes with what its packet says
    expect(page.url()).toContain('packet-hours=15');
    await page.getByText('Change it').click();
    await page.getByLabel('Planted on').fill('2027-04-05');
    await ready(page);
    await openFolds(page);
    await page.getByRole('button', { name: 'in place of “The long bed”' }).click();
    await page.getByText('Kept on this device as “The long bed”.').waitFor();
    const kept = await whole(page);
    expect(kept).toMatchObject({
      keeper: 'Ines Tarrant',
      places: garden.places,
      cultivars: garden.cultivars,
    });
    expect(kept.places).toHaveLength(1);
    expect(kept.plantings).toHaveLength(2);
    expect(kept.plantings[0]).toMatchObject({
      ...garden.plantings[0],
      startDate: '2027-04-05',
      packetHours: null,
    });
    expect(kept.plantings[1]).toMatchObject(garden.plantings[1]);
    await page.getByLabel('Planted on').fill('2027-04-09');
    await ready(page);
    await openFolds(page);
    await page.getByRole('button', { name: 'Keep it as another crop' }).click();
    await page.getByText('Kept on this device as “Ines’s Tin, sets”.').waitFor();
    const more = await whole(page);
    expect(more.plantings).toHaveLength(3);
    expect(more.plantings.slice(0, 2)).toEqual(kept.plantings);
    await page.close();
  });

  test('shows hostile names of a file as text, and tells what it mended', async () => {
    const page = await app.page(bank);
    const places = [{ ...garden.places[0], name: nasty }];
    const plantings = garden.plantings.map((planting) => ({
      ...planting,
      name: nasty,
      cultivar: nasty,
      start: nasty,
    }));
    await open(page, { ...garden, places, plantings, [nasty]: nasty }, `${nasty}.json`);
    await page.getByRole('link', { name: nasty }).first().waitFor();
    const told = await page.locator('.opened').textContent();
    expect(told).toContain(`plantings[0].start ${nasty.slice(0, 20)}`);
    await page.getByRole('link', { name: nasty }).first().click();
    await page.locator('h1', { hasText: '<img' }).waitFor();
    await ready(page);
    expect(await page.locator('main').textContent()).toContain(`called “${nasty}”`);
    expect(await page.locator('main img, main script, .place img').count()).toBe(0);
    const { svg } = await taken(page, '.the-year');
    expect(svg).not.toMatch(/<(img|script)/);
    expect(await whole(page)).toHaveProperty([nasty], nasty);
    await page.close();
  });

  test.each<[string, Content | null, string]>([
    ['what is no JSON', 'bed 1: onions', 'it is not JSON'],
    ['a file cut off', '{"schema": "neckfall/garden@1", "places": [', 'it is not JSON'],
    ['a picture', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe, 0x00]), 'is not text (UTF-8)'],
    ['another document', { schema: 'neckfall/season@1' }, 'its schema is “neckfall/season@1”'],
    ['a list', [1, 2], 'its schema is'],
    ['more than a garden', null, 'at most 32 MB'],
  ])('refuses %s with the reason, and changes nothing', async (what, content, reason) => {
    const page = await app.at(bank);
    const before = page.url();
    await open(page, content, content === null ? fileOfBytes('odd.json', 32_000_001, ' ') : 'odd.json');
    const alert = page.getByRole('alert');
    await alert.waitFor();
    expect(await alert.textContent()).toContain(reason);
    expect(await alert.textContent()).toContain('odd.json');
    expect(page.url()).toBe(before);
    expect(await page.locator('h1').textContent()).toContain('Pencarreg Bank');
    await open(page, { ...garden, plantings: [] }, `not ${what}.json`);
    await page.getByText(`not ${what}.json is open: it holds no crop`).waitFor();
    expect(await alert.count()).toBe(0);
  });

  test('reads the file of a later version for what it knows', async () => {
    const page = await app.page(bank);
    await open(page, { ...garden, schema: 'neckfall/garden@7', plantings: garden.plantings.slice(1) });
    await page.getByText('written by a later version').waitFor();
    await page.locator('h1', { hasText: '20 August' }).waitFor();
    await page.close();
    app.expectClean();
  });
});

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { neckfall } from './command-line.ts';
import { openFile, whole } from './kept-garden.ts';
import { type App, axe, hasChromium, openApp, openDetails, openFolds, ready, textOf } from './open-app.ts';
import { readPdf } from './pdf-text.ts';

const place = 'at=45.748,4.847&name=Lyon&today=2027-03-01';
const lyon = `#/keep?${place}&people=4&store=shed`;
const command = 'keep Lyon --people 4 --store shed --today 2027-03-01'.split(' ');

const plain = (text: string | null) => (text ?? '').replace(/\s+/g, ' ').trim();
const answer = (page: Page) => page.locator('h1.answer');

/** Waits for another answer than the one that stands. */
async function after(page: Page, work: () => Promise<unknown>): Promise<string> {
  const before = plain(await answer(page).textContent());
  await work();
  await page.waitForFunction((was) => {
    const now = document.querySelector('h1.answer')?.textContent?.replace(/\s+/g, ' ').trim();
    return now !== undefined && now !== was;
  }, before);
  await ready(page);
  return plain(await answer(page).textContent());
}

describe.skipIf(!hasChromium)('the Keep page', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => {
    app.expectClean();
    return app.close();
  });

  test('says what the command line says: the answer, each lot, each gap, what to get', async () => {
    const page = await app.at(lyon);
    await openDetails(page);
    const told = JSON.parse(await neckfall(...command, '--json'));
    expect(plain(await answer(page).textContent())).toBe(plain(told.answer));
    expect(await page.locator('.lots .lot').count()).toBe(told.lots.length);
    expect(told.lots.length).toBeGreaterThan(0);
    const said = plain(await textOf(page));
    const printed = plain(await neckfall(...command));
    for (const card of await page.locator('.lots .lot > p:first-of-type').all())
      expect(printed).toContain(plain(await card.textContent()));
    for (const sentence of told.eatFirst) expect(said).toContain(plain(sentence));
    const gaps = await page.locator('[aria-labelledby=gaps] p').allTextContents();
    expect(gaps).toHaveLength(told.gaps.length);
    for (const gap of gaps) expect(printed).toContain(plain(gap));
    for (const { lot, sentence } of told.shopping) if (lot !== null) expect(said).toContain(plain(sentence));
    expect(await page.locator('.picture-table tbody tr').count()).toBe(told.months.length);
  });

  test.each([
    ['American units', 'en-US', ['--units', 'us']],
    ['Spanish', 'es', ['--lang', 'es']],
  ])('speaks as the command line does: %s', async (_, locale, options) => {
    const page = await app.at(lyon, { locale });
    const printed = plain(await neckfall(...command, ...options));
    const said = plain(await answer(page).textContent());
    expect(said).not.toBe('');
    expect(printed.startsWith(said)).toBe(true);
  });

  test('is asked by keyboard alone, and its link opens to the same', async () => {
    const page = await app.page(`#/keep?${place}`);
    await page.locator('details.plan > summary').focus();
    await page.keyboard.press('Enter');
    await page.getByLabel('People who eat').focus();
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('7');
    const seven = await after(page, () => page.keyboard.press('Tab'));
    expect(page.url()).toContain('people=7');
    const again = await app.page(page.url().slice(page.url().indexOf('#')));
    expect(plain(await answer(again).textContent())).toBe(seven);
    await again.close();
    await page.close();
  });

  test('what an address has wrong is told, and the rest of it is answered', async () => {
    const page = await app.at(`#/keep?${place}&people=zero&store=4,650&like=blue`);
    const notice = plain(await page.locator('.notice').textContent());
    for (const wrong of ['people as “zero”', 'store as “4,650”', 'like as “blue”'])
      expect(notice).toContain(wrong);
    expect(plain(await answer(page).textContent())).not.toBe('');
  });

  test('a number out of its range is refused where it is typed', async () => {
    const page = await app.page(lyon);
    await page.locator('details.plan > summary').click();
    const field = page.getByLabel('People who eat');
    await field.fill('4000');
    await field.blur();
    await page.getByRole('alert').getByText('4000').waitFor();
    expect(page.url()).toContain('people=4&');
    await page.close();
  });

  test('is accessible, open to the last fold, at both widths and in both lights', async () => {
    for (const look of [
      { width: 360, dark: true },
      { width: 1280, dark: false },
    ]) {
      const page = await app.at(lyon, look);
      await openDetails(page);
      expect(await axe(page)).toEqual([]);
      await page.setViewportSize({ width: 320, height: 700 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
    }
  });

  test('prints labels and what to get on one sheet of A4 or Letter', async () => {
    const page = await app.page(lyon);
    const lots = await page.locator('.lots h3').allTextContents();
    for (const format of ['A4', 'Letter']) {
      const { pages, text } = readPdf(await page.pdf({ format }));
      expect({ format, pages }).toEqual({ format, pages: 1 });
      for (const lot of lots) expect(text).toContain(lot.replace(/\s/g, ''));
      expect(text).toContain('Eatbyabout');
    }
    await page.close();
  });

  test('keeps the kitchen and a lot with the garden, and takes both back', async () => {
    const page = await app.page(lyon);
    await page.locator('details.plan > summary').click();
    await page.getByRole('button', { name: 'Keep this kitchen on this device' }).click();
    await page.getByText('This kitchen is kept with the garden').waitFor();
    await page.getByRole('button', { name: /^Keep the plan: 1/ }).click();
    await page.getByText(/^Kept as “1: /).waitFor();
    expect(await whole(page)).toMatchObject({
      kitchen: { people: 4, store: 'shed', likes: [] },
      plantings: [{ name: expect.stringMatching(/^1: /) }],
    });
    await page
      .getByRole('button', { name: /^Take back: “1: / })
      .first()
      .click();
    await page.getByText(/^Kept as “1: /).waitFor({ state: 'detached' });
    await page
      .getByRole('button', { name: /^Take back: kitchen/ })
      .first()
      .click();
    await page.getByRole('button', { name: 'Keep this kitchen on this device' }).waitFor();
    await page.close();
  });

  test('notes what a thermometer in the store said, and takes it out', async () => {
    const page = await app.page(lyon);
    await page.locator('details.plan > summary').click();
    const form = page.getByRole('form', { name: 'What you read there' });
    await form.getByRole('button', { name: 'Note it' }).click();
    await page.getByText('Give the temperature first.').waitFor();
    await form.getByLabel(/^Air of the store/).fill('9.5');
    await form.getByLabel('Its humidity').fill('80');
    await form.getByLabel('Its humidity').blur();
    await form.getByRole('button', { name: 'Note it' }).click();
    await page.getByText('1 March 2027: 9.5 °C, 80% humidity').waitFor();
    expect(await whole(page)).toMatchObject({
      kitchen: {
        store: 'shed',
        storeReadings: [{ date: '2027-03-01', store: 'shed', tempC: 9.5, humidityPct: 80 }],
      },
    });
    await page.getByText(/drawn toward your reading/).waitFor({ state: 'attached' });
    await page.getByRole('button', { name: /^Remove: 1 March 2027/ }).click();
    await page.getByText('1 March 2027: 9.5 °C').waitFor({ state: 'detached' });
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('What you read there');
    expect(await whole(page)).toMatchObject({ kitchen: { storeReadings: [] } });
    await page.close();
  });

  test('notes a look at what lies in store', async () => {
    const context = await app.context();
    const first = await app.page('#/kept', { context });
    await openFile(first, {
      schema: 'neckfall/garden@1',
      places: [{ id: 'bank', name: 'Lyon', latitudeDeg: 45.748, longitudeDeg: 4.847 }],
      plantings: [
        {
          id: 'a',
          name: 'The long bed',
          placeId: 'bank',
          class: 'long',
          start: 'sets',
          startDate: '2026-03-01',
        },
      ],
      observations: [{ id: 'l', plantingId: 'a', date: '2026-08-01', lifted: true, bulbCount: 100 }],
    });
    await first.close();
    const page = await app.page(lyon, { context });
    await openFolds(page);
    const form = page.getByRole('form', { name: /The long bed/ });
    await form.getByRole('button', { name: 'Note it' }).click();
    await page.getByText('Give a number of bulbs first.').waitFor();
    for (const [label, count] of [
      ['Sound', '40'],
      ['Sprouted', '3'],
      ['Rotten', '2'],
    ]) {
      await form.getByLabel(label).fill(count);
      await form.getByLabel(label).blur();
    }
    await form.getByRole('button', { name: 'Note it' }).click();
    await page.getByText('1 March 2027: 40 sound, 3 sprouted, 2 rotten.').waitFor();
    // of the 45 bulbs there, 40 are left of 100 that went in
    await page.getByText(/The long bed, lifted 1 August: 40 bulbs sound/).waitFor();
    expect(((await whole(page)) as unknown as { observations: object[] }).observations).toContainEqual(
      expect.objectContaining({ plantingId: 'a', soundCount: 40, sproutedCount: 3, rottenCount: 2 }),
    );
    await context.close();
  });

  test('can be left while it works, and taken up again', async () => {
    const page = await app.page('#/about');
    await page.evaluate((hash) => {
      location.hash = hash;
    }, `#/keep?${place}&people=9&store=garage`);
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByRole('button', { name: 'Work it out' }).click();
    await answer(page).waitFor();
    await page.close();
  });
});

import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { download } from './download.ts';
import { bank, garden, heading, kept, openFile, press, told, whole } from './kept-garden.ts';
import { type App, hasChromium, openApp, openFolds, ready } from './open-app.ts';

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
    await openFolds(page);
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
    await openFolds(again);
    await again.getByRole('button', { name: /^Do again: .* changed/ }).waitFor();
    expect((await whole(again)).plantings).toMatchObject([{ plants: 250 }]);
    await press(again, /^Take back: .* added/);
    await heading(again).getByText('Nothing is kept').waitFor();
    await press(again, /^Do again/);
    await press(again, /^Do again: .* changed/);
    await openFolds(again);
    await again.getByRole('button', { name: /^Do again/ }).waitFor({ state: 'detached' });
    expect((await whole(again)).plantings).toMatchObject([{ plants: 90 }]);
    await context.close();
  });

  test('a garden file is kept whole and saved as it came', async () => {
    const page = await alone(kept);
    await openFile(page, garden);
    await told(page, 'bank.neckfall.json is open: 2 crops.');
    await page.close();
    const again = await app.page(kept, { context });
    const saved = await download(again, 'Save the whole garden');
    expect(saved.name).toBe('bank.neckfall.json');
    expect(JSON.parse(saved.bytes.toString())).toMatchObject(garden);
    await openFile(again, { ...garden, keeper: 'Bram Okoro', plantings: [] }, 'other.neckfall.json');
    await told(again, 'It took the place of the garden that was here before.');
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
    await press(other, 'Remove “By the wall”');
    await one.getByRole('link', { name: 'By the wall' }).waitFor({ state: 'detached' });
    await told(one, 'changed in another tab');
    await press(one, 'Remove “The long bed”');
    await other.getByRole('link', { name: 'The long bed' }).waitFor({ state: 'detached' });
    // both at once: no change is lost
    const season = await app.page(bank, { context });
    const third = await app.page(bank.replace('class=long', 'class=short'), { context });
    await Promise.all([press(season, 'Keep it on this device'), press(third, 'Keep it on this device')]);
    await told(season, 'Kept on this device as');
    await told(third, 'Kept on this device as');
    await other.getByRole('link').filter({ hasText: 'sown in trays' }).nth(1).waitFor();
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
    await press(page, 'Hold it on this page');
    await told(page, 'Held by this page alone, as');
    expect(await page.getByText('does not keep your garden').count()).toBe(1);
    expect((await whole(page)).plantings).toHaveLength(1);
    await press(page, /^Take back/);
    await told(page, 'not among those held by this page');
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
    await press(page, 'Remove “By the wall”');
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

  test('removed whole it can be taken back, until it is wiped for good', async () => {
    const page = await alone(kept);
    await openFile(page, garden);
    await page.evaluate(
      () =>
        new Promise<void>((resolve) => {
          const opening = indexedDB.open('neckfall.map', 1);
          opening.onsuccess = () => resolve(opening.result.close());
        }),
    );
    await press(page, 'Remove the whole garden');
    await heading(page).getByText('Nothing is kept').waitFor();
    await press(page, 'Take back: the whole garden removed');
    await page.getByRole('link', { name: 'By the wall' }).waitFor();
    await press(page, 'Remove the whole garden');
    await press(page, 'Wipe it from this device for good');
    await page.getByRole('button', { name: 'Wipe it' }).waitFor({ state: 'detached' });
    // with the points of maps, one of which may lie about the garden
    await page.waitForFunction(async () =>
      (await indexedDB.databases()).every(({ name }) => name !== 'neckfall.map'),
    );
    expect(await page.getByRole('button', { name: /^(Take back|Do again)/ }).count()).toBe(0);
    await page.reload();
    await heading(page).getByText('Nothing is kept').waitFor();
    expect(await page.locator('.foot').getByText('Kept on this device').count()).toBe(0);
    await context.close();
    app.expectClean();
  });
});

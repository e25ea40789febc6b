import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bank, garden, heading, kept, openFile, press, told } from './kept-garden.ts';
import { type App, hasChromium, openApp, openFolds, ready } from './open-app.ts';

/** Another version of the app, or the browser itself, at the data base. */
const makeNewer = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open('neckfall', 9);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          resolve(opening.result.version);
          opening.result.close();
        };
      }),
  );
const versionOf = (page: Page) =>
  page.evaluate(async () => (await indexedDB.databases()).find(({ name }) => name === 'neckfall')?.version);

describe.skipIf(!hasChromium)('at the edges of what the browser keeps', () => {
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

  test('where nothing is kept, nothing is said to be', async () => {
    const before = `Object.defineProperty(window, 'indexedDB', { value: undefined });`;
    const page = await app.page(bank, { before });
    await press(page, 'Hold it on this page');
    await told(page, 'Held by this page alone, as');
    await page.evaluate(() => {
      location.hash = location.hash.replace('plants=250', 'plants=90');
    });
    await told(page, 'but not as it is shown now');
    await page.getByRole('link', { name: 'Held by this page alone: one crop' }).first().click();
    await heading(page).getByText('Held by this page alone: one crop').waitFor();
    expect(await page.locator('body').textContent()).not.toMatch(
      /kept (on|in) this|kept (here|before)|” kept/i,
    );
    await page.close();
  });

  test('what a later version keeps is left alone, and said so', async () => {
    const first = await alone(kept);
    await openFile(first, garden);
    await first.close();
    const blank = await context.newPage();
    await blank.goto(`${app.url}NOTICE.txt`);
    expect(await makeNewer(blank)).toBe(9);
    const page = await app.page(kept, { context });
    await told(page, 'a later version of Neckfall');
    expect(await heading(page).textContent()).toBe('No garden on this page');
    await openFile(page, { ...garden, plantings: [] }, 'other.neckfall.json');
    expect(await versionOf(page)).toBe(9);
    await context.close();
  });

  test('a later version in another tab is told at once', async () => {
    const page = await alone(kept);
    await openFile(page, garden);
    const blank = await context.newPage();
    await blank.goto(`${app.url}NOTICE.txt`);
    await makeNewer(blank);
    await told(page, 'a later version of Neckfall');
    await heading(page).getByText('Held by this page alone: 2 crops').waitFor();
    await context.close();
  });

  test('a garden cleared from another tab is told at once, and stays on the page', async () => {
    const page = await alone(kept);
    await openFile(page, garden);
    const blank = await context.newPage();
    await blank.goto(`${app.url}NOTICE.txt`);
    await blank.evaluate(() => void indexedDB.deleteDatabase('neckfall'));
    await told(page, 'was cleared while this page was open');
    await page.getByRole('link', { name: 'By the wall' }).waitFor();
    await press(page, 'Remove “By the wall”');
    await page.getByRole('link', { name: 'By the wall' }).waitFor({ state: 'detached' });
    await context.close();
  });

  test('taking back says whose change it is, and takes no other', async () => {
    const one = await alone(kept);
    await openFile(one, garden);
    const other = await app.page(kept, { context });
    await press(other, 'Remove “By the wall”');
    await one
      .getByRole('button', { name: 'Take back: “By the wall” removed (in another tab or window)' })
      .waitFor();
    await other.getByRole('button', { name: 'Take back: “By the wall” removed', exact: true }).waitFor();
    // a tab opened since says so too
    const third = await app.page(kept, { context });
    await third.getByRole('button', { name: /removed \(in another tab or window\)$/ }).waitFor();
    await press(one, /in another tab or window.$/);
    await other.getByRole('link', { name: 'By the wall' }).waitFor();
    await context.close();
  });

  test('a crop of a file just opened is not said to be changed', async () => {
    const page = await alone(kept);
    await openFile(page, { ...garden, plantings: [garden.plantings[0]] });
    await page.waitForFunction(() => location.hash.startsWith('#/season'));
    await ready(page);
    await openFolds(page);
    await told(page, 'Kept on this device as “The long bed”.');
    expect(await page.getByText('not as it is shown now').count()).toBe(0);
    await page.evaluate(() => {
      location.hash += '&plants=90';
    });
    await told(page, 'but not as it is shown now');
    await context.close();
    app.expectClean();
  });
});

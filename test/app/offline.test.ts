import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { type App, hasChromium, openApp, ready } from './open-app.ts';
import { giveWeather, keepWeather, stationFile } from './weather-files.ts';

describe.skipIf(!hasChromium)('what is kept on the device', () => {
  let folder: string;
  let app: App;
  beforeAll(async () => {
    // of its own: a new version is put into it
    folder = mkdtempSync(join(tmpdir(), 'neckfall-offline-'));
    cpSync(inject('appFolder'), folder, { recursive: true });
    app = await openApp(folder);
  });
  afterAll(async () => {
    await app.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test('a new version waits for the reader, loses no half-filled field, and leaves other tabs as they are', async () => {
    const context = await app.context({ offline: true });
    const page = await app.page('', { context });
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
    await page.reload();
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const other = await app.page('#/about', { context });
    await page.getByRole('combobox').fill('Half a na');

    const file = join(folder, 'service-worker.js');
    const script = readFileSync(file, 'utf8');
    const [, mark] = /`\$\{\w+\}([0-9a-f]{12})`/.exec(script) ?? [];
    expect(mark).toMatch(/^[0-9a-f]{12}$/);
    writeFileSync(file, script.replaceAll(mark, 'fedcba987654'));

    await page.evaluate(async () => {
      await (await navigator.serviceWorker.getRegistration())?.update();
    });
    await page.getByText('A new version is ready').waitFor();
    expect(await page.getByRole('combobox').inputValue()).toBe('Half a na');

    await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name: 'Use it now' }).click()]);
    await ready(page);
    await other.getByText('put in place in another tab').waitFor();
    const versions = await page.evaluate(() => caches.keys());
    expect(versions).toContain('neckfall-fedcba987654');
    expect(versions).toContain(`neckfall-${mark}`);
    app.expectClean();
    await context.close();
  });

  test('is enough without a network, after one visit: every page, villages, places never seen before', async () => {
    const context = await app.context({ offline: true });
    const first = await app.page('', { context });
    await first.getByText('Ready to work without a network').waitFor();
    app.cut();
    await first.close();
    const page = await app.page('', { context });
    await page.getByRole('combobox').fill('Tobermory');
    await page.getByRole('option', { name: 'Tobermory, United Kingdom' }).click();
    await page.locator('h1.answer', { hasText: 'Tobermory' }).waitFor();
    for (const name of ['Which', 'When', 'Season', 'Keep', 'About']) {
      // in the head by that name alone, at the foot with more words
      await page.getByRole('link', { name: new RegExp(`^${name}( Neckfall|$)`) }).click();
      await page.waitForFunction((wanted) => document.title.startsWith(wanted), name);
      await ready(page);
    }
    for (const name of [
      'The map',
      'Side by side',
      'Through the latitudes',
      'A sheet to hand out',
      'Ten questions',
    ]) {
      await page.getByRole('link', { name: 'Teach', exact: true }).click();
      await page.getByRole('link', { name, exact: true }).click();
      await page.waitForFunction(() => !document.title.startsWith('Teach'));
      await ready(page);
      expect(await page.locator('main h1').count()).toBe(1);
    }
    await page.getByRole('link', { name: 'About' }).last().click();
    await page.waitForFunction(() => document.title.startsWith('About'));
    await page.reload();
    await ready(page);
    expect(await page.locator('main h1').count()).toBe(1);
    await page.evaluate(() => {
      location.hash = location.hash.replace(/^#\/\w+/, '#/weather');
    });
    await giveWeather(page, stationFile());
    await keepWeather(page);
    app.expectClean();
    await context.close();
  });
});

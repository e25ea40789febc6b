import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, hasChromium, openApp, ready } from './open-app.ts';
import { lyon, rowsOf, rowsOfCommand, sorted } from './which-rows.ts';

async function allRowsOf(page: Page) {
  const all = page.getByRole('button', { name: /^Show all/ });
  if (await all.count()) await all.click();
  await ready(page);
  return sorted(await rowsOf(page));
}

/** Opens one of the pages in the head. */
async function follow(page: Page, name: string, hash: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Pages' }).getByRole('link', { name, exact: true }).click();
  await page.waitForFunction((start) => location.hash.startsWith(start), hash);
  await page.locator('main h1.answer').waitFor();
  await ready(page);
}

const narrowed = (page: Page) => page.locator('.narrow summary').first().textContent();

describe.skipIf(!hasChromium)('the address of the Which page', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  test('carries the size and storing of sets, which are ranked as the command line ranks them', async () => {
    const page = await app.at(`${lyon}&only-start=sets`);
    const usual = await allRowsOf(page);
    await page.getByText('Sets are taken as 16 mm across, stored cold.').click();
    await page.getByLabel('Size of the sets').fill('10');
    await page.getByLabel('Size of the sets').press('Tab');
    await page.getByText('Sets are taken as 10 mm across').waitFor();
    await page.getByLabel('Sets were stored').selectOption('warm');
    await page.getByText('Sets are taken as 10 mm across, stored warm.').waitFor();
    await ready(page);
    expect(page.url()).toMatch(/set-size=10&set-store=warm/);
    const rows = await allRowsOf(page);
    expect(rows).toEqual(
      sorted(await rowsOfCommand('Lyon', '--start', 'sets', '--set-size', '10', '--set-store', 'warm')),
    );
    expect(rows).not.toEqual(usual);
  });

  test('asks for sets only where some are meant', async () => {
    const page = await app.at(`${lyon}&only-start=direct-seed`);
    expect(await page.getByText('Sets are taken as').count()).toBe(0);
    const named = await app.at(`${lyon}&cultivar=Walla+Walla`);
    const hasSets = (await named.locator('.starts thead th').allTextContents()).includes('Sets');
    expect(await named.getByText('Sets are taken as').count()).toBe(hasSets ? 1 : 0);
    const packet = await app.at(`${lyon}&packet=yes&class=long`);
    expect(await packet.getByText('Sets are taken as').count()).toBe(1);
  });

  test('shows all kinds to one who comes from another page, with what was looked at there told in words', async () => {
    const plain = await app.at(lyon);
    const all = await allRowsOf(plain);
    const page = await app.at(`${lyon.replace('which', 'when')}&class=long&start=sets`);
    await follow(page, 'Which', '#/which');
    expect(await narrowed(page)).toContain('Among all onions we know.');
    expect(await allRowsOf(page)).toEqual(all);
    const marked = page.locator('.kind', { hasText: 'You were looking at these.' });
    expect(await marked.count()).toBeGreaterThan(0);
    for (const kind of await marked.all()) {
      expect(await kind.getAttribute('data-start')).toBe('sets');
      expect(await kind.getAttribute('data-type')).toMatch(/long$/);
    }
    expect(await page.locator('main').textContent()).toContain(
      'You were looking at long-day onions from sets',
    );
    await page.goBack();
    await page.waitForFunction(() => location.hash.startsWith('#/when'));
    await ready(page);
    expect(page.url()).toContain('class=long&start=sets');
    await page.goForward();
    await page.locator('.kind').first().waitFor({ state: 'attached' });
    await ready(page);
    expect(await narrowed(page)).toContain('Among all onions we know.');
  });

  test('keeps what the reader narrowed by hand over a visit to another page', async () => {
    const page = await app.at(lyon);
    await page.getByText('Narrow it down').click();
    await page.getByLabel('Started as').selectOption('raised-seedlings');
    await page.getByText('Only: sown in trays.').waitFor();
    await ready(page);
    expect(page.url()).toContain('only-start=raised-seedlings');
    await follow(page, 'When', '#/when');
    await follow(page, 'Which', '#/which');
    expect(await narrowed(page)).toContain('Only: sown in trays.');
    expect(new Set((await rowsOf(page)).map(({ start }) => start))).toEqual(new Set(['raised-seedlings']));
  });

  test('goes from a packet to the list without its skin or its start narrowing anything', async () => {
    const page = await app.at(`${lyon}&packet=yes&class=intermediate&skin=red&start=sets`);
    await page
      .getByRole('navigation', { name: 'What do you have?' })
      .getByRole('link', { name: 'What can I get here?' })
      .click();
    await page.locator('.kind').first().waitFor({ state: 'attached' });
    await ready(page);
    expect(await narrowed(page)).toContain('Among all onions we know.');
    expect(page.url()).not.toContain('skin');
  });

  test('opens links that were made when class and start narrowed the list', async () => {
    const page = await app.at(`${lyon}&class=intermediate&start=raised-seedlings`);
    expect(await page.locator('h1.answer').textContent()).toMatch(/^Lyon, France: /);
    expect(await page.locator('.notice').textContent()).not.toContain('class');
    app.expectClean();
  });
});

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, hasChromium, openApp, ready } from './open-app.ts';

describe.skipIf(!hasChromium)('the town search', () => {
  let app: App;
  let page: Page;
  beforeAll(async () => {
    app = await openApp();
    page = await app.page();
  });
  afterAll(() => app.close());

  const field = () => page.getByRole('combobox');
  const offers = () => page.getByRole('option');

  test('has the cursor on a first visit, and asks for nothing else', async () => {
    // The focus comes a moment after the field.
    await page.waitForFunction(() => document.activeElement?.getAttribute('role') === 'combobox');
    expect(await page.getByRole('textbox').count()).toBe(0);
  });

  test('offers towns while one types, the large ones first, with no accents needed', async () => {
    await field().fill('malmo');
    await offers().first().waitFor();
    expect(await offers().first().textContent()).toBe('Malmö, Sweden');
    expect(await field().getAttribute('aria-expanded')).toBe('true');
  });

  test('marks offers with the arrow keys, round both ends, for screen readers too', async () => {
    await field().press('ArrowUp');
    const marked = await page.locator('[role=option][aria-selected=true]').getAttribute('id');
    expect(await field().getAttribute('aria-activedescendant')).toBe(marked);
    expect(await offers().last().getAttribute('id')).toBe(marked);
    await field().press('ArrowDown');
    expect(await offers().first().getAttribute('aria-selected')).toBe('true');
  });

  test('closes with Escape and is empty after another', async () => {
    await field().press('Escape');
    expect(await field().getAttribute('aria-expanded')).toBe('false');
    await field().press('Escape');
    expect(await field().inputValue()).toBe('');
  });

  test('forgives a misspelling', async () => {
    await field().fill('Edinbrugh');
    await offers().first().waitFor();
    expect(await offers().first().textContent()).toBe('Edinburgh, United Kingdom');
  });

  test('tells towns of one name apart', async () => {
    await field().fill('Springfield');
    await page.getByRole('option', { name: 'Springfield, MO' }).waitFor();
    const names = await offers().allTextContents();
    expect(new Set(names).size).toBe(names.length);
    expect(names.length).toBeGreaterThan(3);
  });

  test('puts towns of a country or state that is named first', async () => {
    await field().fill('Springfield, Oregon');
    await field().fill('Birmingham, US');
    await page.waitForFunction(() => document.querySelector('[role=option]')?.textContent?.includes('AL'));
    expect(await offers().first().textContent()).toBe('Birmingham, AL, United States');
  });

  test.each([
    ['springfield missouri', 'Springfield, MO, United States'],
    ['aberdeen scotland', 'Aberdeen, United Kingdom'],
    ['christchurch nz', 'Christchurch, New Zealand'],
    ['york pa', 'York, PA, United States'],
    ['new york', 'New York City, NY, United States'],
  ])('understands “%s” without a comma', async (typed, label) => {
    await field().fill(typed);
    await page.waitForFunction(
      (wanted) => document.querySelector('[role=option]')?.textContent?.startsWith(wanted),
      label,
    );
  });

  test('says of a postal code that it takes towns', async () => {
    await field().fill('SW1A 1AA');
    await page.getByText('Type the town instead').waitFor();
    expect(await field().getAttribute('aria-expanded')).toBe('false');
  });

  test('says in words that there is no such town, and shows what was typed as text', async () => {
    const typed = '<img src=x onerror=alert(1)>qqxxzz';
    await field().fill(typed);
    await page.getByText(`“${typed}”`).waitFor();
    expect(await page.locator('img').count()).toBe(0);
  });

  test('looks through villages where no town begins so', async () => {
    await field().fill('Tobermory');
    await page.getByRole('option', { name: 'Tobermory, United Kingdom' }).waitFor();
  });

  test('takes the likeliest when Enter is pressed before the offers are there', async () => {
    await field().fill('');
    await field().pressSequentially('Lyon');
    await field().press('Enter');
    await page.locator('h1.answer').waitFor();
    expect(await page.locator('h1').textContent()).toMatch(/^Lyon, France: /);
    expect(page.url()).toContain('name=Lyon');
  });

  test('stays at hand under the place, on every page', async () => {
    await page.getByRole('link', { name: 'About' }).click();
    await page.getByRole('button', { name: 'Another place' }).click();
    // The focus comes a moment after the field.
    await page.waitForFunction(() => document.activeElement?.getAttribute('role') === 'combobox');
    await field().fill('Ghent');
    await field().press('Enter');
    await page.getByText('Gent, Belgium').first().waitFor();
    await ready(page);
    expect(await field().count()).toBe(0);
    app.expectClean();
  });
});

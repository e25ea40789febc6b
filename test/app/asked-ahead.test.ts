import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, hasChromium, openApp, ready } from './open-app.ts';

type Heard = { kind: string; request: string; state: 'asked' | 'done' | 'left' };

/** Writes down what the page asks its workers, and how that ended. */
const listen = `
  window.heard = [];
  window.Worker = class extends Worker {
    asked = new Map();
    constructor(...own) {
      super(...own);
      this.addEventListener('message', ({ data }) => {
        const entry = this.asked.get(data?.id);
        if (entry && !('part' in data)) entry.state = 'done' in data ? 'done' : 'left';
      });
    }
    postMessage(message) {
      if ('kind' in message) {
        const plain = (_, value) => (ArrayBuffer.isView(value) ? [...value] : value);
        const entry = { kind: message.kind, request: JSON.stringify(message.request, plain), state: 'asked' };
        this.asked.set(message.id, entry);
        window.heard.push(entry);
      }
      super.postMessage(message);
    }
  };
`;

describe.skipIf(!hasChromium)('while a list of towns is shown', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  const heard = (page: Page, kind: string): Promise<Heard[]> =>
    page.evaluate(
      (wanted) => (window as unknown as { heard: Heard[] }).heard.filter(({ kind }) => kind === wanted),
      kind,
    );
  /** Waits until so many answers were worked out ahead. */
  const workedOut = (page: Page, count: number) =>
    page.waitForFunction(
      (wanted) =>
        (window as unknown as { heard: Heard[] }).heard.filter(
          ({ kind, state }) => kind === 'whereAhead' && state === 'done',
        ).length === wanted,
      count,
    );

  test.each([
    ['', 'en-GB', 'Lyon'],
    ['#/where?today=2027-05-03&sun=5&cover=fleece&hollow=yes&holds=sets', 'de-DE', 'Lyon'],
    // a village, found by its coordinates as an address has them
    ['#/where?units=us', 'en-US', 'Tobermory'],
  ])(
    'the likeliest is worked out, and choosing it asks the same again (%s, %s)',
    async (hash, locale, town) => {
      const page = await app.page(hash, { locale, before: listen });
      await page.getByRole('combobox').fill(town);
      await workedOut(page, 1);
      expect(await heard(page, 'where')).toEqual([]);
      expect(await page.locator('h1.answer').count()).toBe(0);
      await page.getByRole('option').first().click();
      await page.locator('h1.answer').waitFor();
      await ready(page);
      const ahead = await heard(page, 'whereAhead');
      const chosen = await heard(page, 'where');
      expect(ahead).toHaveLength(1);
      expect(chosen.map(({ request }) => request)).toEqual([ahead[0].request]);
      await page.close();
    },
  );

  test('so is the one that is marked; nothing of those passed over is kept', async () => {
    const page = await app.page('', { before: listen });
    const field = page.getByRole('combobox');
    await field.fill('Newcastle');
    await workedOut(page, 1);
    await field.press('ArrowDown');
    await field.press('ArrowDown');
    await workedOut(page, 2);
    expect(await page.evaluate(() => JSON.stringify({ ...localStorage }))).not.toContain('ewcastle');
    expect(page.url()).not.toContain('ewcastle');
    await field.press('Enter');
    await page.locator('h1.answer').waitFor();
    const ahead = await heard(page, 'whereAhead');
    const [chosen] = await heard(page, 'where');
    expect(ahead.map(({ request }) => request).indexOf(chosen.request)).toBe(1);
    await page.close();
  });

  test('a closed list asks nothing, and opens to ask again', async () => {
    const page = await app.page('', { before: listen });
    const field = page.getByRole('combobox');
    await field.fill('Lyon');
    await workedOut(page, 1);
    await field.press('Escape');
    expect(await heard(page, 'whereAhead')).toHaveLength(1);
    await field.press('ArrowDown');
    await workedOut(page, 2);
    await page.close();
    app.expectClean();
  });
});

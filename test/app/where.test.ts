import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, axe, hasChromium, openApp } from './open-app.ts';

const today = 'today=2027-05-03';
const lyon = `#/where?at=45.748,4.847&name=Lyon&${today}`;

describe.skipIf(!hasChromium)('the Where page', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  test('opens', async () => {
    const page = await app.page(lyon);
    expect(await page.locator('h1').textContent()).toMatch(/^Lyon, France: /);
    expect(await axe(page)).toEqual([]);
    app.expectClean();
  });
});

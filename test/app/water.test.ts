import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { neckfall } from './command-line.ts';
import { type App, axe, hasChromium, openApp, ready } from './open-app.ts';

const lyon =
  '#/season?at=45.748,4.847&name=Lyon&class=long&start=direct-seed&date=2027-03-25&today=2027-06-15';
const plan = 'Lyon --class long --start direct-seed --date 2027-03-25 --today 2027-06-15'.split(' ');

const plain = (text: string) => text.replace(/\s+/g, ' ').trim();

/** Opens the fold and waits for what it says. */
async function watering(page: Page) {
  const fold = page.locator('section.water');
  await fold.locator('summary').click();
  await fold.locator('table').waitFor();
  await ready(page);
  return fold;
}

describe.skipIf(!hasChromium)('watering on the Season page', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  test.each([
    ['metres', 'metric', '3'],
    ['feet', 'us', '32.3'],
  ])('says what the command line says, in %s', async (_, unitSystem, area) => {
    const page = await app.page(lyon, { locale: unitSystem === 'us' ? 'en-US' : 'en-GB' });
    const fold = await watering(page);
    const field = fold.getByLabel(/Size of the bed/);
    await field.fill(area);
    await field.blur();
    await fold.getByText('for the whole bed').or(fold.getByText('For the whole bed')).first().waitFor();
    await ready(page);
    const said = plain(await neckfall('water', ...plan, '--bed-m2', '3', '--units', unitSystem));
    const [headline] = said.split(' What a season takes ');
    expect(plain((await fold.locator('p').first().textContent()) ?? '')).toBe(headline);
    for (const row of await fold.locator('tbody tr').all())
      expect(said).toContain(plain((await row.locator('th, td').allTextContents()).join(' ')));
    expect(await fold.locator('tbody tr').count()).toBe(3);
  });

  test('tells how far a butt goes, and is accessible', async () => {
    const page = await app.at(`${lyon}&plants=100`);
    const fold = await watering(page);
    const butt = fold.getByLabel(/Water butt/);
    await butt.fill('200');
    await butt.blur();
    const { seasonMm } = JSON.parse(await neckfall('water', ...plan, '--json'));
    // 100 plants at the usual distances stand on 2.5 m²
    const full = (mm: number) => ((mm * 2.5) / 200).toFixed(1).replace(/\.0$/, '');
    expect(await fold.getByRole('status').textContent()).toBe(
      `An ordinary year takes ${full(seasonMm.need.p50)} of them full, a dry year ${full(seasonMm.need.p90)}.`,
    );
    expect(await axe(page)).toEqual([]);
  });
});

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, hasChromium, openApp, openFolds } from './open-app.ts';
import { readPdf } from './pdf-text.ts';
import { counted, pageWith } from './seen-garden.ts';

const squeezed = (words: string | null) => (words ?? '').replace(/\s/g, '');

/** The demo garden's, one that stands over winter till the next summer, and one of a long name in long words. */
const plans = {
  demo: 'at=52.08,-3.13&name=Pencarreg+Bank&elevation=160&sun=14&class=long&start=raised-seedlings&date=2027-02-20&soil=silt-loam&today=2027-05-20',
  overwintered:
    'at=50.35,-4.7&name=Pencarreg+Bank&class=long&start=direct-seed&date=2026-08-20&today=2026-12-01',
  long: 'at=44.8,-0.6&name=The+long+bed+below+the+southern+wall+of+the+orchard&class=intermediate&start=sets&date=2026-10-01&today=2026-12-01',
} as const;

describe.skipIf(!hasChromium)('the sheet for the shed wall', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => {
    app.expectClean();
    return app.close();
  });

  test.each(Object.entries(plans))(
    'is one page of A4 or Letter with nothing cut off: %s',
    async (_, plan) => {
      for (const locale of ['en-GB', 'es']) {
        const page = await app.page(`#/season?${plan}`, { locale });
        await page.evaluate(() => document.documentElement.setAttribute('data-theme', 'dark'));
        const headline = await page.locator('h1').textContent();
        await openFolds(page);
        for (const format of ['A4', 'Letter']) {
          const { pages, text } = readPdf(await page.pdf({ format }));
          expect({ locale, format, pages }).toEqual({ locale, format, pages: 1 });
          expect(text).toContain(squeezed(headline));
          await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
          const rows = page.locator('.sheet tbody tr');
          await rows.first().waitFor({ state: 'attached' });
          const days: string[] = [];
          for (const cells of await rows.evaluateAll((all) =>
            all.map((row) => [...row.children].map(({ textContent }) => textContent)),
          )) {
            expect(text).toContain(squeezed(cells.slice(0, 3).join('')));
            days.push(cells[1]);
          }
          expect(days.length).toBeGreaterThan(12);
          expect(text).toContain(squeezed(await page.locator('.sheet > p').last().textContent()));
          await page.evaluate(() => dispatchEvent(new Event('afterprint')));
        }
        await page.context().close();
      }
    },
  );

  test('has its year drawn to the width of the paper, and what is done with its day', async () => {
    const page = await pageWith(app, '2027-05-20', [counted('2027-05-10', 3)]);
    await page.getByRole('button', { name: /^Done: Weed/ }).click();
    await page.getByText('Noted as done on 20 May 2027: Weed').waitFor();
    await page.setViewportSize({ width: 726, height: 1000 });
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    const row = page.locator('.sheet tr', { hasText: 'Weed' });
    expect(await row.locator('td').nth(3).textContent()).toBe('20 May');
    const picture = await page.locator('.sheet svg').boundingBox();
    expect(picture!.width).toBeGreaterThan(700);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
    for (const one of ['.noting', '.saw', '.this-week', '.head'])
      expect(await page.locator(one).isVisible()).toBe(false);
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    expect(await page.locator('.sheet').count()).toBe(0);
  });
});

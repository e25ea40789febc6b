import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, axe, hasChromium, openApp, ready } from './open-app.ts';

const place = 'at=45.748,4.847&name=Lyon&today=2027-05-03';
const languageFile = /language-es/;
/** Words that no Spanish sentence has, and hardly an onion or a town for a name. */
const english =
  /\b(the|and|of|with|from|this|your|onions?|bulbs?|years?|seeds?|sown?|sets|tops|leaves|weeks?|where|when)\b/gi;

describe.skipIf(!hasChromium)('the language of the app', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  const isFetched = () => app.sent.some(({ path }) => languageFile.test(path));

  test('is English for those who prefer no other that is spoken, who fetch no other', async () => {
    const page = await app.page(`#/where?${place}`, { locale: 'xx-XX' });
    expect(await page.locator('html').getAttribute('lang')).toBe('en-GB');
    expect(isFetched()).toBe(false);
    await page.close();
  });

  test('is the one that the reader chooses at the foot, and stays', async () => {
    const page = await app.page(`#/where?${place}`);
    await page.getByRole('radio', { name: 'español' }).check();
    await page.getByRole('link', { name: 'Cuándo', exact: true }).waitFor();
    expect(await page.locator('html').getAttribute('lang')).toBe('es');
    expect(await page.title()).toBe('Dónde: Lyon, Francia – Neckfall');
    expect(page.url()).toContain(`#/where?${place}`);
    await page.reload();
    await ready(page);
    expect(await page.locator('html').getAttribute('lang')).toBe('es');
    await page.getByRole('radio', { name: 'English' }).check();
    await page.getByRole('link', { name: 'When', exact: true }).waitFor();
    expect(await page.locator('html').getAttribute('lang')).toBe('en-GB');
    await page.close();
  });

  test('is at first the one that the browser prefers, with either units', async () => {
    const page = await app.page(`#/where?${place}`, { locale: 'es-MX' });
    expect(await page.locator('html').getAttribute('lang')).toBe('es');
    await page.getByRole('radio', { name: '°F, pulgadas, onzas' }).check();
    expect(await page.locator('html').getAttribute('lang')).toBe('es');
    await page.close();
    app.expectClean();
  });

  test('says nothing in English, fits narrow screens and is accessible', async () => {
    const crop = 'class=long&start=sets';
    const hashes = [
      '',
      `#/where?${place}`,
      `#/which?${place}`,
      `#/when?${place}&${crop}`,
      `#/season?${place}&${crop}&date=2027-02-01`,
      `#/keep?${place}`,
      '#/about',
      '#/kept',
    ];
    for (const hash of hashes) {
      const page = await app.at(hash, { locale: 'es-ES', width: 360 });
      const said = await page.evaluate(() => {
        const labels = [...document.querySelectorAll('[aria-label]')].map((at) =>
          at.getAttribute('aria-label'),
        );
        return [document.title, document.querySelector('#app')?.textContent, ...labels].join(' ');
      });
      // the address of a source is in no language
      const spoken = said.replaceAll('onion.nmsu.edu', '');
      expect({ hash, english: spoken.match(english) }).toEqual({ hash, english: null });
      const [wide, room] = await page.evaluate(() => [document.body.scrollWidth, innerWidth]);
      expect(wide, hash).toBeLessThanOrEqual(room);
      expect({ hash, wrong: await axe(page) }).toEqual({ hash, wrong: [] });
    }
  });

  test('can be changed without a network, after one visit', async () => {
    const own = await openApp();
    const context = await own.context({ offline: true });
    const page = await own.page('', { context });
    await page.getByText('Ready to work without a network').waitFor();
    own.cut();
    await page.getByRole('radio', { name: 'español' }).check();
    await page.getByRole('link', { name: 'Cuándo', exact: true }).waitFor();
    await own.close();
  });
});

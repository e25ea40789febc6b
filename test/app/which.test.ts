import { cultivars } from '@neckfall/data';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, axe, hasChromium, openApp, openDetails, openFolds, ready, textOf } from './open-app.ts';
import { lyon, rowsOf, rowsOfCommand, sorted } from './which-rows.ts';

const wellington = '#/which?at=-41.286,174.776&name=Wellington&today=2027-05-03';

describe.skipIf(!hasChromium)('the Which page', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  test.each([
    ['all onions', lyon, ['Lyon']],
    ['red keepers', `${lyon}&colour=red&keeps=5`, ['Lyon', '--colour', 'red', '--keeps', '5']],
    [
      'mild ones sown in place',
      `${lyon}&mild=yes&only-start=direct-seed`,
      ['Lyon', '--mild', '--start', 'direct-seed'],
    ],
    ['a list of names', `${lyon}&have=copra,Walla+Walla`, ['Lyon', '--have', 'copra, Walla Walla']],
    [
      'the southern half',
      `${wellington}&only-class=intermediate`,
      ['--at', '-41.286,174.776', '--class', 'intermediate'],
    ],
  ])('ranks %s as the command line does', async (_, hash, args) => {
    const page = await app.at(hash);
    const all = page.getByRole('button', { name: /^Show all/ });
    if (await all.count()) await all.click();
    await ready(page);
    expect(sorted(await rowsOf(page))).toEqual(sorted(await rowsOfCommand(...args)));
  });

  test('leads with what to get, draws every kind, and puts those that nothing tells apart under one head', async () => {
    const page = await app.at(lyon);
    expect(await page.locator('h1.answer').textContent()).toMatch(/^Lyon, France: /);
    const kinds = await page.locator('.kind').count();
    const numbers = page.locator('[aria-labelledby=sections] tbody tr');
    expect(await numbers.count()).toBe(kinds);
    const levels = await page.locator('.level').evaluateAll((found) =>
      found.map((level) => ({
        head: level.querySelector('h3')?.textContent ?? '',
        ranks: [...level.querySelectorAll('.kind')].map(
          (kind) => kind.querySelector<HTMLElement>('.names')?.dataset.rank,
        ),
      })),
    );
    for (const { head, ranks } of levels) {
      expect(new Set(ranks).size).toBe(1);
      expect(/one as good as the other/.test(head)).toBe(ranks.length > 1);
    }
    const text = await textOf(page);
    expect(text).toContain('at least');
  });

  test('leads with names sold in the country of the place, and says where there are none', async () => {
    const page = await app.at(lyon);
    // sold in France: memory, as the catalogue says of each
    const lead = await page.locator('.said p.because').textContent();
    expect(cultivars.some(({ name, soldIn }) => soldIn.includes('FR') && lead?.includes(name))).toBe(true);
    expect(await textOf(page)).not.toContain('(France) is not known');
    const ulaanbaatar = await app.at('#/which?at=47.908,106.883&name=Ulan+Bator&today=2027-05-03');
    expect(await textOf(ulaanbaatar)).toContain('sold here (Mongolia) is not known');
  });

  test('shows first rows before the years are tried, stops when told, and goes on', async () => {
    const page = await app.page(lyon.replace('which', 'about'));
    // pressed as early as can be
    await page.evaluate(() => {
      new MutationObserver((_, observer) => {
        // the first look is there when the years begin to be tried
        const row = (document.querySelector('.progress progress') as HTMLProgressElement | null)?.value;
        const stop = [...document.querySelectorAll('button')].find((one) => one.textContent === 'Stop here');
        if (!row || !stop) return;
        observer.disconnect();
        stop.click();
      }).observe(document.body, { childList: true, subtree: true, attributes: true });
      location.hash = location.hash.replace('#/about', '#/which');
    });
    await page.getByText('Stopped after the first look').waitFor();
    await ready(page);
    expect(await page.locator('.first-look').count()).toBeGreaterThan(3);
    expect(await page.locator('.kind').count()).toBe(0);
    await page.getByRole('button', { name: 'Try the years after all' }).click();
    await page.locator('.kind').first().waitFor({ state: 'attached' });
    await page.close();
  });

  test('narrows by skin, keeping and taste, tells it in a sentence, and keeps it in the address', async () => {
    const page = await app.at(lyon);
    await page.getByText('Narrow it down').click();
    await page.getByLabel('Skin').selectOption('red');
    await page.getByLabel('Keeps at least').fill('5');
    await page.getByLabel('Keeps at least').press('Tab');
    await ready(page);
    expect(page.url()).toContain('colour=red&keeps=5');
    expect(await page.locator('.narrow summary').textContent()).toContain(
      'Only: red and keeps 5 months or more.',
    );
    await page.getByLabel('Only mild ones').check();
    await page.getByLabel('Day length on the packet').selectOption('short');
    await page.getByLabel('Keeps at least').fill('12');
    await page.getByLabel('Keeps at least').press('Tab');
    expect(await page.getByRole('alert').textContent()).toContain('No onion we know is all of that');
    await page.getByRole('button', { name: 'All onions again' }).click();
    await page.locator('.kind').first().waitFor({ state: 'attached' });
    expect(page.url()).not.toContain('colour');
  });

  test('tells names it does not know, and takes the others', async () => {
    const page = await app.at(`${lyon}&have=Stutgarter,Copra`);
    expect(await page.getByRole('alert').textContent()).toMatch(/“Stutgarter”.+Did you mean .*Stuttgarter/);
    expect((await rowsOf(page)).every(({ names }) => names === 'Copra')).toBe(true);
  });

  test('sets up to four side by side in one table, keeps them in the link, and takes them away', async () => {
    const page = await app.at(lyon);
    // of the best alone there may be no more than four
    await page.getByRole('button', { name: /^Show all/ }).click();
    await ready(page);
    await openFolds(page);
    const put = page.getByRole('button', { name: /^Set beside others/ });
    for (let i = 0; i < 4; i++) await put.first().click();
    const heads = page.locator('.beside thead th');
    expect(await heads.count()).toBe(5);
    expect(await put.first().isDisabled()).toBe(true);
    expect(page.url()).toContain('beside=');
    const shown = await heads.allTextContents();
    await app.at(page.url().slice(page.url().indexOf('#')));
    expect(await heads.allTextContents()).toEqual(shown);
    for (const cells of await page.locator('.beside tbody tr').all())
      expect(await cells.locator('td').count()).toBe(4);
    await page
      .locator('.beside')
      .getByRole('button', { name: /^Take it away/ })
      .first()
      .click();
    expect(await heads.count()).toBe(4);
  });

  test('goes on to the weeks and the season with the onion and its start in the address', async () => {
    const page = await app.at(lyon);
    const kind = page.locator('.kind').first();
    const [name] = ((await kind.locator('.names').first().getAttribute('data-names')) ?? '').split(';');
    const start = await kind.getAttribute('data-start');
    await openFolds(page);
    await kind.getByRole('link', { name: /^Season: / }).click();
    await page.waitForFunction(() => location.hash.startsWith('#/season'));
    const params = new URLSearchParams(page.url().split('?')[1]);
    expect({ name: params.get('cultivar'), start: params.get('start') }).toEqual({ name, start });
    expect(params.get('date')).toMatch(/^\d{4}-\d\d-\d\d$/);
    await page.goBack();
    await page.locator('.kind').first().waitFor({ state: 'attached' });
  });

  test('shows names of the address as text, whatever they are', async () => {
    const nasty = '<img src=x onerror="document.title=1"><script>document.title=2</script>';
    const written = encodeURIComponent(nasty);
    for (const asked of [`cultivar=${written}`, `have=${written}&beside=sets~${written}`]) {
      const page = await app.at(`${lyon}&${asked}`);
      expect(await textOf(page)).toContain(nasty);
      expect(await page.locator('main img, main script').count()).toBe(0);
      expect(await page.title()).toMatch(/^Which: Lyon/);
    }
  });

  test('speaks to Americans in inches and in their words', async () => {
    const page = await app.page(`${lyon}&cultivar=Copra`, { locale: 'en-US' });
    const text = await textOf(page);
    expect(text).toMatch(/\d\.\d–\d\.\d in/);
    expect(text).not.toMatch(/\d mm/);
    expect(text).toMatch(/tops fall/i);
    expect(text).not.toMatch(/tops go over/i);
    await page.close();
  });

  test('says what to grow where nothing does well, and answers in the tropics and beyond the polar circle', async () => {
    for (const at of [
      'at=69.649,18.956&name=Troms%C3%B8',
      'at=14.604,120.982&name=Manila',
      'at=-0.22,-78.51&name=Quito',
    ]) {
      const page = await app.at(`#/which?${at}&today=2027-05-03`);
      expect((await page.locator('h1').textContent())?.length).toBeGreaterThan(20);
      expect(await page.locator('.kind').count()).toBeGreaterThan(0);
    }
  });

  test.each([
    [360, false],
    [1280, true],
  ])('at %i px, dark %s, has nothing for axe to find, and no sideways scrolling', async (width, dark) => {
    const hashes = [
      `${lyon}&beside=sets~Stuttgarter,bought-transplants~Copra`,
      `${lyon}&cultivar=Copra&start=bought-transplants`,
      `${lyon}&packet=yes`,
    ];
    for (const hash of hashes) {
      const page = await app.at(hash, { width, dark });
      await openDetails(page);
      expect({ hash, found: await axe(page) }).toEqual({ hash, found: [] });
      if (width === 360) await page.setViewportSize({ width: 320, height: 700 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
    }
    app.expectClean();
  });
});

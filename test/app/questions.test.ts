import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { commonQuestions } from '../../packages/engine/src/index.ts';
import { neckfall } from './command-line.ts';
import { type App, hasChromium, openApp, ready } from './open-app.ts';

const plain = (text: string | null) => (text ?? '').replace(/\s+/g, ' ').trim();
const day = 'today=2026-03-10';

/** Readers of ten countries, in the towns they write from. */
const readers: [string, string][] = [
  ['Leeds', '53.8,-1.55'],
  ['Nairobi', '-1.29,36.82'],
  ['Austin', '30.27,-97.74'],
  ['Oslo', '59.91,10.75'],
  ['Lisbon', '38.72,-9.14'],
  ['Delhi', '28.65,77.23'],
  ['Dunedin', '-45.87,170.5'],
  ['Buenos Aires', '-34.61,-58.38'],
  ['Cairo', '30.04,31.24'],
  ['Sapporo', '43.06,141.35'],
];

describe.each(readers)('the command line at %s', (_, at) => {
  test('answers all ten with a figure each, and leaves no value out', async () => {
    const told = JSON.parse(await neckfall('answer', `--at=${at}`, '--today', '2026-03-10', '--json'));
    expect(told.answers.map(({ question }: { question: string }) => question)).toEqual([...commonQuestions]);
    for (const { answer, because, cautions } of told.answers) {
      expect([answer, ...because].join(' ')).toMatch(/\d/);
      for (const sentence of [answer, ...because, ...cautions])
        expect(sentence).not.toMatch(/[{}]|undefined|NaN| {2}/);
    }
  });
});

describe.skipIf(!hasChromium)('the page of ten questions', () => {
  let app: App;
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => {
    app.expectClean();
    return app.close();
  });

  test('says of each question what the command line says, with a picture and its numbers', async () => {
    const at = '--at=-1.29,36.82';
    const told = JSON.parse(await neckfall('answer', at, '--today', '2026-03-10', '--json'));
    const page = await app.page(`#/questions?at=-1.29,36.82&name=Nairobi&${day}&units=metric`, {
      width: 360,
    });
    for (const { question, answer } of told.answers) {
      const link = page.locator('.question-list a').nth(commonQuestions.indexOf(question));
      await link.click();
      await ready(page);
      expect(page.url()).toContain(`shows=${question}`);
      const heading = plain(await page.locator('h1.answer').textContent());
      // the place is named by the address here, by its point there
      expect(heading.slice(heading.indexOf(':'))).toBe(plain(answer).slice(answer.indexOf(':')));
      expect(await page.locator('.picture-svg').count()).toBeGreaterThan(0);
      expect(await page.locator('details table').count()).toBeGreaterThan(0);
    }
    await page.close();
  });

  test('a link opens its question, and another place keeps it', async () => {
    const page = await app.at(`#/questions?at=53.8,-1.55&name=Leeds&${day}&shows=kitchen-onions`);
    expect(await page.locator('.question').textContent()).toBe('Can I plant supermarket onions?');
    await page.evaluate(() => {
      location.hash = location.hash.replace('53.8,-1.55&name=Leeds', '-45.87,170.5&name=Dunedin');
    });
    await ready(page);
    expect(await page.locator('.question').textContent()).toBe('Can I plant supermarket onions?');
    expect(await page.locator('section ul').allTextContents()).toEqual(
      expect.arrayContaining([expect.stringContaining('white rot')]),
    );
  });

  test('a question that is none opens the first', async () => {
    const page = await app.at(`#/questions?at=53.8,-1.55&name=Leeds&${day}&shows=xyzzyq`);
    expect(await page.locator('.question').textContent()).toBe('Why did mine never bulb?');
  });

  test('leads on with the plan filled in', async () => {
    const page = await app.at(`#/questions?at=53.8,-1.55&name=Leeds&${day}&shows=sets-flower`);
    const hrefs = await page
      .locator('.onward a')
      .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
    expect(hrefs[0]).toMatch(/#\/why\?.*saw=flowered/);
    expect(hrefs[1]).toMatch(/#\/season\?.*start=sets.*set-size=26|#\/season\?.*set-size=26.*start=sets/);
  });

  test('fits a narrow phone', async () => {
    for (const question of ['never-bulbed', 'how-many', 'start-indoors']) {
      const page = await app.at(`#/questions?at=53.8,-1.55&name=Leeds&${day}&shows=${question}`, {
        width: 320,
      });
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0);
    }
  });
});

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type App, hasChromium, openApp, openDetails, ready } from './open-app.ts';

const towns = {
  London: 'at=51.50853,-0.12574&name=London&today=2027-05-03',
  Nashik: 'at=19.99727,73.79096&name=Nashik&today=2027-08-10',
  Oslo: 'at=59.91273,10.74609&name=Oslo&today=2027-03-20',
  Denver: 'at=39.73915,-104.9847&name=Denver&today=2027-02-10',
} as const;
const pages = [
  'where',
  'which',
  'which?cultivar=Zebrune',
  'which?mild=yes',
  'which?packet=yes',
  'which?packet=yes&holds=sets',
  'when',
  'season',
  'keep',
  'about',
  'kept',
];
const answers = [
  'where',
  'which',
  'which?packet=yes&holds=sets',
  'which?cultivar=Sturon',
  'when',
  'season',
  'keep',
];
const hashOf = (page: string, town: keyof typeof towns) =>
  `#/${page}${page.includes('?') ? '&' : '?'}${towns[town]}`;

/** More is not read on a phone. */
const mostWords = 350;
/** The picture begins on the first screen of a phone of 740 px, and enough of it to be made out; Season has its work there. */
const lowestPicture = 580;
const pictured = answers.filter((name) => name !== 'season');

/** The reader's text at twice its usual size. */
async function doubleText(page: Page): Promise<void> {
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '225%';
  });
  // pictures are laid out anew
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve))));
  await ready(page);
}

describe.skipIf(!hasChromium)('the look of every page', () => {
  let app: App;
  const phoneLooks = new Map<string, { words: number; pictureY: number }>();
  beforeAll(async () => {
    app = await openApp();
  });
  afterAll(() => app.close());

  /** What stands on the first screen of a phone; more than one test asks. */
  async function onPhone(name: string, town: keyof typeof towns) {
    const hash = hashOf(name, town);
    const known = phoneLooks.get(hash);
    if (known) return known;
    const page = await app.at(hash, { width: 360, height: 740 });
    // biome-ignore lint/performance/useDomNodeTextContent: what is folded away is not counted
    const text = await page.locator('main').innerText();
    const box = await page.evaluate(() =>
      document.querySelector('.seen figure, .seen svg')?.getBoundingClientRect().toJSON(),
    );
    const look = {
      words: text.split(/\s+/).filter((word) => word !== '').length,
      pictureY: Number(box?.y ?? Number.NaN),
    };
    phoneLooks.set(hash, look);
    return look;
  }

  test.each(Object.keys(towns) as (keyof typeof towns)[])(
    'on a phone it says no more than is read, until something is opened: %s',
    async (town) => {
      for (const name of pages) {
        const { words } = await onPhone(name, town);
        expect({ name, isShort: words <= mostWords, words }).toMatchObject({ isShort: true });
      }
    },
  );

  test.each(pages)('%s does not scroll sideways at 320 px with text of twice the size', async (name) => {
    const page = await app.at(hashOf(name, 'Nashik'), { width: 320, height: 740 });
    await doubleText(page);
    const wide = () =>
      page.evaluate(() => ({
        over: document.documentElement.scrollWidth - innerWidth,
        out: [...document.querySelectorAll('main *, header *, footer *')]
          .filter(
            (element) =>
              element.checkVisibility() && element.getBoundingClientRect().right > innerWidth + 0.5,
          )
          .map((element) => `${element.tagName} ${element.textContent?.slice(0, 40)}`)
          .slice(0, 3),
      }));
    expect(await wide()).toMatchObject({ over: 0 });
    await openDetails(page);
    expect(await wide()).toMatchObject({ over: 0 });
  });

  test.each(answers)(
    'words in the pictures of %s are 14 px or more, and grow with the text',
    async (name) => {
      const page = await app.at(hashOf(name, 'London'), { width: 360, height: 740 });
      // as drawn: what is written in a picture, times what the page makes of it
      const least = () =>
        page.evaluate(() =>
          Math.min(
            ...[...document.querySelectorAll<SVGTextElement>('.picture-svg text')].map((text) => {
              const svg = text.ownerSVGElement!;
              const scale = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
              return Number.parseFloat(getComputedStyle(text).fontSize) * scale;
            }),
          ),
        );
      expect(await least()).toBeGreaterThanOrEqual(13.99);
      await doubleText(page);
      expect(await least()).toBeGreaterThanOrEqual(27.9);
    },
  );

  test.each(answers)('%s has its picture beside the answer on a desk, under it on a phone', async (name) => {
    const page = await app.at(hashOf(name, 'Denver'), { width: 1000, height: 800 });
    const boxes = () =>
      Promise.all(['h1', '.seen figure'].map((what) => page.locator(what).first().boundingBox()));
    const [said, seen] = await boxes();
    expect(seen!.x).toBeGreaterThan(said!.x + said!.width);
    expect(seen!.y).toBeLessThan(said!.y + 120);
    await page.setViewportSize({ width: 600, height: 800 });
    const [above, below] = await boxes();
    expect(below!.y).toBeGreaterThan(above!.y + above!.height);
  });

  test.each(Object.keys(towns) as (keyof typeof towns)[])(
    'on a phone the first screen has the answer and its picture: %s',
    async (town) => {
      for (const name of pictured) {
        const { pictureY } = await onPhone(name, town);
        expect(pictureY).toBeGreaterThan(0);
        expect({ name, isSeen: pictureY <= lowestPicture, pictureY }).toMatchObject({ isSeen: true });
      }
    },
  );

  test.each(answers)('%s leads on by one button and at most two links', async (name) => {
    const page = await app.at(hashOf(name, 'Oslo'));
    const ways = page.locator('main nav[aria-label="Go on"]').first();
    expect(await ways.locator('a.next').count()).toBe(1);
    expect(await ways.locator('a:not(.next)').count()).toBeLessThanOrEqual(2);
  });

  test('folds open and close by keys, and say what they hold', async () => {
    const page = await app.at(hashOf('where', 'London'));
    const fold = page.locator('details:has(#how)');
    await fold.locator('summary').focus();
    await page.keyboard.press('Enter');
    expect(await fold.locator('li').first().isVisible()).toBe(true);
    await page.keyboard.press('Space');
    expect(await fold.locator('li').first().isVisible()).toBe(false);
    expect(await page.getByRole('heading', { name: 'How we know' }).count()).toBe(1);
    app.expectClean();
  });
});

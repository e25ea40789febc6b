import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { buildElement } from '../../tools/setup/build-element.mjs';
import { neckfall } from './command-line.ts';
import { type App, axe, hasChromium, openApp } from './open-app.ts';

/** What was promised to those who put it into their page, gzipped. */
const mostBytes = 60_000;
/** Nothing but files of the same host; W3C Content Security Policy Level 3. */
const policy = "default-src 'none'; script-src 'self'; connect-src 'self'; style-src 'self'";

const example = readFileSync(new URL('../../docs/examples/element.html', import.meta.url), 'utf8');
const lyon = 'latitude="45.748" longitude="4.847" today="2027-05-03"';
const one = (attributes: string, lang = 'en') =>
  `<!doctype html><html lang="${lang}"><title>x</title><main><script type="module" src="neckfall-year-line.js"></script><neckfall-year-line ${attributes}></neckfall-year-line></main></html>`;

describe.skipIf(!hasChromium)('<neckfall-year-line> in a blank page under a strict policy', () => {
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-element-'));
  const outfile = join(folder, 'neckfall-year-line.js');
  const asked: string[] = [];
  let html = '';
  let json = '';
  let app: App;
  let server: Server;
  let url: string;

  beforeAll(async () => {
    await buildElement({ outfile });
    app = await openApp();
    json = await neckfall('draw', 'Lyon', '--today', '2027-05-03', '--years', '3', '--json');
    const files: Record<string, (() => [type: string, body: string]) | undefined> = {
      '/': () => ['text/html; charset=utf-8', html],
      '/neckfall-year-line.js': () => ['text/javascript', readFileSync(outfile, 'utf8')],
      '/lyon.json': () => ['application/json', json],
      '/other.json': () => ['application/json', '{"schema":"neckfall/season@1"}'],
      '/favicon.ico': () => ['image/x-icon', ''],
    };
    server = createServer((request, response) => {
      const file = files[request.url ?? ''];
      if (request.url !== '/favicon.ico') asked.push(request.url ?? '');
      const [type, body] = file?.() ?? ['text/plain', ''];
      response.writeHead(file ? 200 : 404, { 'Content-Type': type, 'Content-Security-Policy': policy });
      response.end(body);
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  });
  afterAll(async () => {
    await app.close();
    server.close();
    rmSync(folder, { recursive: true });
  });

  /** Opens a page, waits for its pictures, and looks at what the policy refused. */
  async function open(text: string, look: Parameters<App['context']>[0] = {}): Promise<Page> {
    html = text;
    asked.length = 0;
    const page = await (await app.context(look)).newPage();
    await page.addInitScript(`
      window.refused = [];
      addEventListener('securitypolicyviolation', (event) => refused.push(event.violatedDirective + event.blockedURI));
      window.failed = [];
      addEventListener('error', (event) => failed.push(event.message));
    `);
    await page.goto(url);
    await page.locator('neckfall-year-line').first().getByText(/\S/).first().waitFor();
    return page;
  }

  async function close(page: Page): Promise<void> {
    expect(await page.evaluate('[refused, failed]')).toEqual([[], []]);
    await page.context().close();
  }

  const told = (page: Page) =>
    page.locator('neckfall-year-line').evaluate((element) => element.shadowRoot?.textContent ?? '');
  const summary = (page: Page) => page.getByRole('img').first().getAttribute('aria-label');

  test('is one small file', () => {
    const bytes = readFileSync(outfile);
    expect(gzipSync(bytes).length).toBeGreaterThan(10_000);
    expect(gzipSync(bytes).length).toBeLessThanOrEqual(mostBytes);
    // either is refused under the policy
    expect(/\beval\(|new Function/.test(bytes.toString())).toBe(false);
  });

  test('asks nobody without data, and draws days and what onions ask of them', async () => {
    const page = await open(one(`${lyon} name="Lyon" class="long"`));
    await page.getByText('Neckfall').waitFor();
    expect(asked).toEqual(['/', '/neckfall-year-line.js']);
    // the almanac's longest day at 45°45′ N: 15 h 43 min (US Naval Observatory's rule, see sky tests)
    expect(await summary(page)).toContain('15 h 43 min');
    expect(await told(page)).toContain('long enough: 14');
    expect(await told(page)).toContain('Lyon, 45.75° N, 4.85° E');
    expect(await page.locator('neckfall-year-line details td').count()).toBe(6);
    await close(page);
  });

  test('asks once for its data, and says what the command line says', async () => {
    const page = await open(one('data="lyon.json" today="2027-05-03"'));
    await page.getByText('CHELSA').waitFor();
    expect(asked).toEqual(['/', '/neckfall-year-line.js', '/lyon.json']);
    const svg = await neckfall('draw', 'Lyon', '--today', '2027-05-03', '--years', '3');
    const desc = /<desc>([^<]*)/.exec(svg)?.[1];
    expect(await summary(page)).toBe(desc);
    // the element is told a name, and no country
    const source = /<metadata>([^<]*)/.exec(svg)?.[1].replace(', France', '');
    expect(await told(page)).toContain(source);
    // another name or day is no reason to ask again
    await page.locator('neckfall-year-line').evaluate((element) => {
      element.setAttribute('name', 'Our field');
      element.setAttribute('units', 'us');
    });
    await page.getByText('Our field').waitFor();
    expect(asked).toHaveLength(3);
    expect(await told(page)).toContain('°F');
    await close(page);
  });

  test.each([
    [`${lyon} class="longish"`, 'class “longish”: expected short, intermediate or long.'],
    ['latitude="95" longitude="0"', 'latitude “95”: expected degrees from −90 to 90'],
    [`${lyon} date="25 March"`, 'date “25 March”: expected a day'],
    ['', 'Say where: latitude and longitude'],
    ['data="other.json"', 'other.json: no weather and no crop'],
    ['data="gone.json"', '404'],
    ['data="https://elsewhere.invalid/x.json"', 'no weather and no crop'],
    ['data="lyon.json" latitude="-33"', 'latitude is not that of the data'],
    ['data="lyon.json" class="short"', 'class is not that of the data'],
  ])('tells in words what is wrong with %s', async (attributes, words) => {
    const page = await open(one(attributes));
    await page.getByText(words).waitFor();
    expect(await page.evaluate('failed')).toEqual([]);
    await page.context().close();
  });

  test('keeps markup in its attributes for words', async () => {
    const page = await open(one(`${lyon} name="&lt;img src=x onerror=alert(1)&gt;"`));
    await page.getByText('<img src=x').waitFor();
    expect(await page.locator('neckfall-year-line img').count()).toBe(0);
    await close(page);
  });

  test.each([0, -34.6, 69.65, 90])('draws the days of latitude %s', async (latitude) => {
    const page = await open(
      one(`latitude="${latitude}" longitude="20" class="long" start="sets" date="2027-03-25"`),
    );
    await page.getByText('sets planted 25 March').first().waitFor();
    await close(page);
  });

  test('speaks the language of its page or its own', async () => {
    const page = await open(one(`${lyon} class="long"`, 'es-MX'));
    await page.getByText('Los números').waitFor();
    await page.locator('neckfall-year-line').evaluate((element) => element.setAttribute('lang', 'en'));
    await page.getByText('The numbers').waitFor();
    await close(page);
  });

  test.each([{ dark: false }, { dark: true, width: 320 }])(
    'stands twice on a page that anybody can read: the example, %o',
    async (look) => {
      const page = await open(example, look);
      await page.getByText('CHELSA').waitFor();
      expect(asked).toEqual(['/', '/neckfall-year-line.js', '/lyon.json']);
      expect(await page.getByRole('img').count()).toBe(2);
      expect(await axe(page)).toEqual([]);
      expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
      await close(page);
    },
  );

  test('takes the colours of its page', async () => {
    const page = await open(one(lyon));
    await page.locator('neckfall-year-line').evaluate((element) => {
      element.attributeStyleMap.set('--neckfall-paper', 'rgb(1, 2, 3)');
    });
    const paper = await page
      .locator('neckfall-year-line')
      .evaluate((element) => getComputedStyle(element).backgroundColor);
    expect(paper).toBe('rgb(1, 2, 3)');
    await page.context().close();
  });
});

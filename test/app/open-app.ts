import { existsSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright-core';
import { expect, inject } from 'vitest';
import { type Sent, serve } from '../../tools/setup/serve-app.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    appFolder: string;
  }
}

const chromiumPath = process.env.CHROMIUM_PATH ?? '/usr/bin/chromium';
export const hasChromium = existsSync(chromiumPath);

const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

type Look = { width?: number; height?: number; dark?: boolean; locale?: string };

type PageOptions = Look & {
  /** Service workers are let in only where a test is about them. */
  offline?: boolean;
  /** A window to share with other pages; else each page has its own. */
  context?: BrowserContext;
  /** The processor slowed so many times once the page stands, as on an old phone. */
  slowed?: number;
  /** Runs before anything of the app. */
  before?: string;
};

export type App = {
  url: string;
  browser: Browser;
  /** Files sent since it was opened. */
  sent: Sent[];
  context: (options?: PageOptions) => Promise<BrowserContext>;
  /** Opens an address of the app, such as `#/where?at=45.7485,4.8467&name=Lyon`, and waits until it stands. */
  page: (hash?: string, options?: PageOptions) => Promise<Page>;
  /**
   * The same in a page that stands open and goes on to each address: for tests of what is there, whoever came before.
   * What they did to the page itself they undo, or close it.
   */
  at: (hash: string, look?: Look & { context?: BrowserContext }) => Promise<Page>;
  /** Fails where a page had an error, or asked anything of another origin. */
  expectClean: () => void;
  /** The server goes: nothing can be fetched any more. (Chromium's own switch cuts workers off from what is kept.) */
  cut: () => void;
  close: () => Promise<void>;
};

/** The built app on a server of this machine, in Chromium. `mayAsk`: the one other origin that it was built to ask. */
export async function openApp(
  folder: string = inject('appFolder'),
  mayAsk: string | null = null,
): Promise<App> {
  const { server, url, sent } = await serve(folder, 0, mayAsk);
  const browser = await chromium.launch({ executablePath: chromiumPath, args: flags });
  const faults: string[] = [];
  /** Pages that go on from address to address: one for each locale, and for each window of a test's own. */
  const standing = new Map<string | BrowserContext, Page>();

  async function context(options: PageOptions = {}): Promise<BrowserContext> {
    const { locale = 'en-GB', offline = false } = options;
    const settings: BrowserContextOptions = {
      viewport: viewportOf(options),
      colorScheme: schemeOf(options),
      locale,
      serviceWorkers: offline ? 'allow' : 'block',
      reducedMotion: 'reduce',
    };
    const opened = await browser.newContext(settings);
    // tsx marks functions with their names, those too that a page is given to run
    await opened.addInitScript('globalThis.__name = (marked) => marked');
    opened.on('request', (request) => {
      const asked = request.url();
      const isOurs = asked.startsWith(url) || (mayAsk !== null && asked.startsWith(mayAsk));
      if (!isOurs && !/^(data|blob):/.test(asked)) faults.push(`asked ${asked}`);
    });
    return opened;
  }

  async function page(hash = '', options: PageOptions = {}): Promise<Page> {
    const opened = await (options.context ?? (await context(options))).newPage();
    if (options.before) await opened.addInitScript(options.before);
    const here = () => opened.url().slice(url.length);
    opened.on('pageerror', (error) => faults.push(`${here()}: ${error.message}`));
    opened.on('console', (message) => {
      if (message.type() === 'error') faults.push(`${here()}: ${message.text()}`);
    });
    await opened.goto(url + hash);
    await ready(opened);
    if (options.slowed !== undefined) {
      const session = await opened.context().newCDPSession(opened);
      await session.send('Emulation.setCPUThrottlingRate', { rate: options.slowed });
    }
    return opened;
  }

  async function at(hash: string, look: Look & { context?: BrowserContext } = {}): Promise<Page> {
    const window = look.context ?? look.locale ?? 'en-GB';
    const opened = standing.get(window);
    if (!opened || opened.isClosed()) {
      const fresh = await page(hash, look);
      standing.set(window, fresh);
      return fresh;
    }
    if (!look.context || look.width) await opened.setViewportSize(viewportOf(look));
    await opened.emulateMedia({ media: null, colorScheme: look.context ? null : schemeOf(look) });
    await goOn(opened, hash);
    return opened;
  }

  function cut(): void {
    server.close();
    server.closeAllConnections();
  }

  return {
    url,
    browser,
    sent,
    context,
    page,
    at,
    expectClean: () => expect(faults).toEqual([]),
    cut,
    async close() {
      await browser.close();
      cut();
    },
  };
}

const viewportOf = ({ width = 1280, height = 800 }: Look) => ({ width, height });
const schemeOf = ({ dark = false }: Look) => (dark ? 'dark' : 'light');

/**
 * Goes on to another address in a page that stands open. Another page of the app comes between, which takes the whole
 * of the old answer away, folds opened and all.
 */
async function goOn(page: Page, hash: string): Promise<void> {
  await page.evaluate(async (wanted) => {
    document.documentElement.removeAttribute('style');
    const others = ['#/about', '#/kept', '#/where'];
    const between = others.find((other) => ![location.hash, wanted].some((hash) => hash.startsWith(other)))!;
    for (const next of [between, wanted]) {
      const old = document.querySelector('main')?.firstElementChild;
      await new Promise<void>((resolve) => {
        // the app listens too, and draws before the next task
        addEventListener('hashchange', () => setTimeout(resolve), { once: true });
        location.hash = next;
      });
      if (old?.isConnected) throw new Error(`the page before ${next} still stands`);
    }
  }, hash);
  await ready(page);
  // what follows a drawing, such as the title; then as on arrival, at the head of the page and nothing in focus
  await page.evaluate(async () => {
    await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
    (document.activeElement as HTMLElement | null)?.blur();
    scrollTo(0, 0);
  });
}

/** Waits until nothing on the page is still being worked out. */
export async function ready(page: Page): Promise<void> {
  await page.locator('main :is(h1, [role=alert])').first().waitFor();
  // what was just done has its turn first
  await page.evaluate(() => new Promise((resolve) => setTimeout(() => setTimeout(resolve))));
  await page.waitForFunction(() => document.querySelector('[data-waiting]') === null);
}

/** Opens all that is folded away. */
export async function openFolds(page: Page): Promise<void> {
  await page.locator('main details.fold').evaluateAll((folds) => {
    for (const fold of folds as HTMLDetailsElement[]) fold.open = true;
  });
}

/** Opens all that can be opened, and waits for what that shows. */
export async function openDetails(page: Page): Promise<void> {
  await page.locator('main details').evaluateAll((all) => {
    for (const details of all as HTMLDetailsElement[]) details.open = true;
  });
  await ready(page);
}

/** What axe finds wrong on a page as it stands: rule and element. */
export async function axe(page: Page): Promise<string[]> {
  // the app has no frames, and what is right need not be told at length
  const builder = new AxeBuilder({ page }).setLegacyMode(true).options({ resultTypes: ['violations'] });
  const { violations } = await builder.analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
}

/** What a page says, spaces single. */
export async function textOf(page: Page): Promise<string> {
  return ((await page.locator('main').textContent()) ?? '').replace(/\s+/g, ' ');
}

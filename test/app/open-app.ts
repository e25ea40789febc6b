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

type PageOptions = {
  width?: number;
  height?: number;
  dark?: boolean;
  locale?: string;
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
  /** Fails where a page had an error, or asked anything of another origin. */
  expectClean: () => void;
  /** The server goes: nothing can be fetched any more. (Chromium's own switch cuts workers off from what is kept.) */
  cut: () => void;
  close: () => Promise<void>;
};

/** The built app on a server of this machine, in Chromium. */
export async function openApp(folder: string = inject('appFolder')): Promise<App> {
  const { server, url, sent } = await serve(folder);
  const browser = await chromium.launch({ executablePath: chromiumPath, args: flags });
  const faults: string[] = [];

  async function context(options: PageOptions = {}): Promise<BrowserContext> {
    const { width = 1280, height = 800, dark = false, locale = 'en-GB', offline = false } = options;
    const settings: BrowserContextOptions = {
      viewport: { width, height },
      colorScheme: dark ? 'dark' : 'light',
      locale,
      serviceWorkers: offline ? 'allow' : 'block',
      reducedMotion: 'reduce',
    };
    const opened = await browser.newContext(settings);
    opened.on('request', (request) => {
      const asked = request.url();
      if (!asked.startsWith(url) && !/^(data|blob):/.test(asked)) faults.push(`asked ${asked}`);
    });
    return opened;
  }

  async function page(hash = '', options: PageOptions = {}): Promise<Page> {
    const opened = await (options.context ?? (await context(options))).newPage();
    if (options.before) await opened.addInitScript(options.before);
    opened.on('pageerror', (error) => faults.push(`${hash}: ${error.message}`));
    opened.on('console', (message) => {
      if (message.type() === 'error') faults.push(`${hash}: ${message.text()}`);
    });
    await opened.goto(url + hash);
    await ready(opened);
    if (options.slowed !== undefined) {
      const session = await opened.context().newCDPSession(opened);
      await session.send('Emulation.setCPUThrottlingRate', { rate: options.slowed });
    }
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
    expectClean: () => expect(faults).toEqual([]),
    cut,
    async close() {
      await browser.close();
      cut();
    },
  };
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

/** What axe finds wrong on a page as it stands: rule and element. */
export async function axe(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
}

/** What a page says, spaces single. */
export async function textOf(page: Page): Promise<string> {
  return ((await page.locator('main').textContent()) ?? '').replace(/\s+/g, ' ');
}

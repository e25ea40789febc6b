import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { type Browser, chromium, type Page } from 'playwright-core';
import { buildApp } from '../setup/build-app.mjs';
import { findChromium } from '../setup/chromium.mjs';
import { serve } from '../setup/serve-app.mjs';
import type { Round } from './worker.ts';

const hash =
  '#/season?at=52.08,-3.13&name=Pencarreg+Bank&class=long&start=sets&date=2027-03-20&today=2027-02-20';

/** Kills the browser while sowings are kept: what the page has shown as kept is there when it is opened again. */
export async function killPages(kills: number, random: () => number): Promise<Round> {
  const name = 'browser killed while the page keeps sowings';
  const program = findChromium();
  if (!program) throw new Error('no Chromium found: set CHROMIUM_PATH');
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-kills-'));
  await buildApp(join(folder, 'app'));
  const { server, url } = await serve(join(folder, 'app'));
  const failures: string[] = [];
  let shown: string[] = [];
  try {
    for (let kill = 0; kill < kills; kill++) {
      const { child, browser } = await open(program, join(folder, 'profile'));
      const page = await browser.contexts()[0].newPage();
      await page.goto(`${url}#/kept`);
      const found = await keptNames(page);
      const lost = shown.filter((one) => !found.includes(one));
      if (lost.length > 0) failures.push(`kill ${kill}: lost ${lost.join(', ')}`);
      shown = found;
      const killed = new Promise((resolve) => child.on('exit', resolve));
      setTimeout(() => child.kill('SIGKILL'), 1500 + random() * 4000);
      await keepOneAfterAnother(page, `${url}${hash}`, kill, shown).catch(() => {});
      await killed;
      await browser.close().catch(() => {});
    }
    if (shown.length === 0) failures.push('nothing was ever kept: the moments are badly chosen');
  } finally {
    server.close();
    server.closeAllConnections();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
  return { name, cases: kills, failures, slowestMs: null };
}

async function open(program: string, profile: string): Promise<{ child: ChildProcess; browser: Browser }> {
  const child = spawn(
    program,
    [
      '--headless=new',
      '--no-sandbox',
      '--disable-gpu',
      '--no-first-run',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      'about:blank',
    ],
    { stdio: ['ignore', 'ignore', 'pipe'] },
  );
  for await (const line of createInterface({ input: child.stderr! })) {
    const at = /DevTools listening on (ws:\S+)/.exec(line)?.[1];
    if (at) return { child, browser: await chromium.connectOverCDP(at) };
  }
  throw new Error('Chromium did not start');
}

async function keptNames(page: Page): Promise<string[]> {
  await page.locator('main h1').waitFor();
  await page.locator('[data-waiting]').first().waitFor({ state: 'detached' });
  return page.locator('main a[href*="#/season"]').allTextContents();
}

/** Keeps sowings under new names until the browser is gone; those told of as kept go to `shown`. */
async function keepOneAfterAnother(
  page: Page,
  address: string,
  kill: number,
  shown: string[],
): Promise<void> {
  for (let number = 0; ; number++) {
    const name = `Bed ${kill}-${number}`;
    await page.goto('about:blank');
    await page.goto(address);
    const called = page.getByLabel('What you call it');
    await called.waitFor({ state: 'attached' });
    await page.locator('main details.fold').evaluateAll((folds) => {
      for (const fold of folds) fold.setAttribute('open', '');
    });
    await called.fill(name);
    await page.getByRole('button', { name: 'Keep it on this device' }).click();
    await page.getByText(`Kept on this device as “${name}”.`).first().waitFor();
    shown.push(name);
  }
}

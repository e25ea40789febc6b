import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { findChromium } from '../tools/setup/chromium.mjs';
import { serve } from '../tools/setup/serve-app.mjs';
import type { SaveTimes } from './kept-garden-entry.ts';
import { median, type Row } from './timing.ts';

const opens = 5;
/** With the other three changes of each, more than the steps that are kept: the oldest are let go meanwhile. */
const saves = 20;

/** A garden of twenty years in Chromium: opened, changed and held; nothing where there is no Chromium. */
export async function keptGardenRows(): Promise<Row[]> {
  const executablePath = findChromium();
  if (!executablePath) return [];
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-bench-kept-'));
  await build({
    entryPoints: [fileURLToPath(new URL('./kept-garden-entry.ts', import.meta.url))],
    outfile: join(folder, 'entry.js'),
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    logLevel: 'warning',
  });
  writeFileSync(join(folder, 'index.html'), '<script type="module" src="entry.js"></script>');
  const { server, url } = await serve(folder);
  const context = await chromium.launchPersistentContext(join(folder, 'profile'), {
    executablePath,
    args: ['--no-sandbox', '--disable-gpu', '--no-first-run'],
  });
  try {
    const filled = await inPage(context, url, (page) => page.evaluate(() => keptGarden.fill()));
    const opened: number[] = [];
    let heapMB = 0;
    for (let run = 0; run < opens; run++) {
      await inPage(context, url, async (page) => {
        opened.push(await page.evaluate(() => keptGarden.open()));
        heapMB = Math.max(heapMB, await heapOf(page));
      });
    }
    const took: SaveTimes = await inPage(context, url, (page) =>
      page.evaluate((times) => keptGarden.save(times), saves),
    );
    const row = (what: string, value: number, limit: number | null, unit = 'ms'): Row => ({
      what: `a garden of 20 years, ${what}`,
      value,
      unit,
      limit,
    });
    return [
      row('opened from the browser', median(opened), 500),
      row('an observation kept', median(took.seen), 30),
      row('the same, the slowest', Math.max(...took.seen), null),
      row('a piece of work marked', median(took.work), 30),
      row('a day of weather kept', median(took.weather), 30),
      row('a planting changed', median(took.planting), 30),
      row('a step taken back', median(took.back), null),
      row('kept whole, as a file is opened', filled, null),
      row('memory of the page', heapMB, 200, 'MB'),
    ];
  } finally {
    await context.close();
    server.close();
    server.closeAllConnections();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

async function inPage<Result>(
  context: BrowserContext,
  url: string,
  work: (page: Page) => Promise<Result>,
): Promise<Result> {
  const page = await context.newPage();
  await page.goto(url);
  await page.waitForFunction(() => 'keptGarden' in globalThis);
  const result = await work(page);
  await page.close();
  return result;
}

/** What the page's own objects take once the rest was cleared away. */
async function heapOf(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  await session.detach();
  return usedSize / 1e6;
}

import { rmSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { firstAnswer, limits } from '../test/app/first-answer.ts';
import { hasChromium, openApp } from '../test/app/open-app.ts';
import { buildApp } from '../tools/setup/build-app.mjs';
import { draggedDays, phoneSlowdown } from './dragged-days.ts';
import { keptGardenRows } from './kept-garden.ts';
import { pageOpenings } from './page-openings.ts';
import { median, type Row } from './timing.ts';

const visits = 5;
const kB = 1000;

/** First visits to the built app in Chromium, each in a window of its own; nothing where there is no Chromium. */
async function appRows(): Promise<Row[]> {
  if (!hasChromium) return [];
  const folder = await mkdtemp(join(tmpdir(), 'neckfall-bench-app-'));
  try {
    await buildApp(folder);
    const found = [];
    for (let visit = 0; visit < visits; visit++) {
      const app = await openApp(folder);
      found.push(await firstAnswer(app));
      await app.close();
    }
    const [{ scriptBytes, totalBytes }] = found;
    const dragged = await openApp(folder);
    const desk = await draggedDays(dragged, 1);
    const phone = await draggedDays(dragged, phoneSlowdown);
    await dragged.close();
    const opened = await openApp(folder);
    const openings = await pageOpenings(opened);
    await opened.close();
    return [
      {
        what: 'app, script before the first answer, gzipped',
        value: scriptBytes / kB,
        unit: 'kB',
        limit: limits.scriptBytes / kB,
      },
      {
        what: 'app, all before the first answer',
        value: totalBytes / kB,
        unit: 'kB',
        limit: limits.totalBytes / kB,
      },
      {
        what: 'app, from town chosen to answer, first visit',
        value: median(found.map(({ waitMs }) => waitMs)),
        unit: 'ms',
        limit: 150,
      },
      {
        what: 'app, a start dragged by a day, to its season painted',
        value: median(desk.map(({ paintedMs }) => paintedMs)),
        unit: 'ms',
        limit: 60,
      },
      {
        what: `the same on a phone ${phoneSlowdown} times slower`,
        value: median(phone.map(({ paintedMs }) => paintedMs)),
        unit: 'ms',
        limit: null,
      },
      {
        what: 'the page busy at a stretch there, for most days (0: never over 50 ms)',
        value: median(phone.map(({ longestTaskMs }) => longestTaskMs)),
        unit: 'ms',
        limit: 50,
      },
      ...openings.map(({ page, longestTaskMs }) => ({
        what: `the page busy at a stretch there, working time: ${page}`,
        value: longestTaskMs,
        unit: 'ms',
        limit: 50,
      })),
      ...(await keptGardenRows()),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

process.stdout.write(JSON.stringify(await appRows()));
process.exit();

import type { CDPSession, Page } from 'playwright-core';
import type { App } from '../test/app/open-app.ts';
import { phoneSlowdown } from './dragged-days.ts';
import { median } from './timing.ts';

const place = 'at=45.748,4.847&name=Lyon&today=2027-05-03';
const crop = 'class=long&start=sets';

/** Each page by its link, in a window that has seen nothing of the app; then from each to the next. */
const links: Record<string, string> = {
  Where: `#/where?${place}`,
  Which: `#/which?${place}`,
  When: `#/when?${place}&${crop}`,
  Season: `#/season?${place}&${crop}&date=2027-02-01`,
  About: '#/about',
};
const runs = 3;

export type Opening = {
  page: string;
  /** Longest task of the page's thread while it opened: time the thread worked, ms of a phone so much slower. */
  longestTaskMs: number;
};

/**
 * How long pages are busy at a stretch while they open. Taken is the time that the page's thread worked, which other
 * programs on the machine hardly change, times what a phone is slower: a browser told to be slow would count its own
 * waiting as work.
 */
export async function pageOpenings(app: App): Promise<Opening[]> {
  const openings: Opening[] = [];
  const typed = [];
  for (let run = 0; run < runs; run++) typed.push(await longestTask(app, firstVisit(app)));
  openings.push({ page: 'a first visit, a town typed', longestTaskMs: median(typed) });
  for (const [page, hash] of Object.entries(links)) {
    const found = [];
    for (let run = 0; run < runs; run++) {
      found.push(await longestTask(app, (window) => window.goto(app.url + hash).then(() => stands(window))));
    }
    openings.push({ page: `${page} by a link`, longestTaskMs: median(found) });
  }
  const onward = [];
  for (let run = 0; run < runs; run++) {
    const window = await app.page(links.Where, { width: 360 });
    for (const hash of [links.Which, links.When, links.Season, links.About]) {
      onward.push(
        await longestTaskIn(app, window, async () => {
          await evaluate(window, `location.hash = ${JSON.stringify(hash)}; null`);
          await stands(window);
        }),
      );
    }
    await window.close();
  }
  openings.push({ page: 'one page after another', longestTaskMs: Math.max(...onward) });
  return openings;
}

/** The page's own code waits for its town, so that no tool adds to its tasks. */
function firstVisit(app: App) {
  return async (window: Page) => {
    await window.goto(app.url);
    await evaluate(
      window,
      `(async () => {
        const until = (seen) => new Promise((resolve) => {
          const look = () => (seen() ? resolve(seen()) : requestAnimationFrame(look));
          look();
        });
        const field = await until(() => document.querySelector('[role=combobox]'));
        field.value = 'Lyon';
        field.dispatchEvent(new InputEvent('input', { bubbles: true }));
        (await until(() => document.querySelector('[role=option]'))).click();
        await until(() => document.querySelector('h1.answer'));
      })()`,
    );
    await stands(window);
  };
}

/** Waits until nothing on the page is still being worked out. */
async function stands(window: Page): Promise<void> {
  await evaluate(
    window,
    `new Promise((resolve) => {
      const seen = () => document.querySelector('main :is(h1, [role=alert])') && !document.querySelector('[data-waiting]');
      const look = () => (seen() ? requestIdleCallback(() => resolve(null)) : requestAnimationFrame(look));
      requestAnimationFrame(look);
    })`,
  );
}

async function evaluate(window: Page, expression: string): Promise<void> {
  const session = await sessionOf(window);
  const { exceptionDetails } = await session.send('Runtime.evaluate', { expression, awaitPromise: true });
  if (exceptionDetails) throw new Error(exceptionDetails.text);
}

const sessions = new WeakMap<Page, Promise<CDPSession>>();

function sessionOf(window: Page): Promise<CDPSession> {
  const session = sessions.get(window) ?? window.context().newCDPSession(window);
  sessions.set(window, session);
  return session;
}

async function longestTask(app: App, open: (window: Page) => Promise<void>): Promise<number> {
  const window = await (await app.context({ width: 360, height: 740 })).newPage();
  const longest = await longestTaskIn(app, window, () => open(window));
  await window.context().close();
  return longest;
}

type TraceEvent = {
  name: string;
  ph: string;
  pid: number;
  tid: number;
  /** µs that the thread worked. */
  tdur?: number;
  args?: { name?: string; data?: { url?: string } };
};

async function longestTaskIn(app: App, window: Page, work: () => Promise<void>): Promise<number> {
  await sessionOf(window);
  const tracing = await app.browser.newBrowserCDPSession();
  const events: TraceEvent[] = [];
  tracing.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])));
  const complete = new Promise((resolve) => tracing.once('Tracing.tracingComplete', resolve));
  await tracing.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['toplevel', 'devtools.timeline', 'v8'] },
  });
  await work();
  await tracing.send('Tracing.end');
  await complete;
  await tracing.detach();
  // the browser has pages of its own: ours is where our code runs
  const ours = new Set(
    events.filter(({ args }) => args?.data?.url?.startsWith(app.url)).map(({ pid }) => pid),
  );
  const threads = events.filter(
    ({ name, pid, args }) => name === 'thread_name' && args?.name === 'CrRendererMain' && ours.has(pid),
  );
  const tasks = events.filter(
    ({ name, ph, pid, tid }) =>
      ph === 'X' &&
      name.endsWith('RunTask') &&
      threads.some((thread) => thread.pid === pid && thread.tid === tid),
  );
  if (tasks.length === 0) throw new Error('the browser told of no task of the page');
  return (Math.max(...tasks.map(({ tdur = 0 }) => tdur)) / 1000) * phoneSlowdown;
}

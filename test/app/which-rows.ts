import type { Page } from 'playwright-core';
import { neckfall } from './command-line.ts';

export const lyon = '#/which?at=45.748,4.847&name=Lyon&today=2027-05-03';

export type Row = { rank: number; start: string; names: string };

/** What the command line answers, as the page has it. */
export async function rowsOfCommand(...args: string[]): Promise<Row[]> {
  const out = await neckfall('which', ...args, '--today', '2027-05-03', '--json', '--limit', '1000');
  const { choices } = JSON.parse(out) as { choices: { rank: number; start: string; cultivars: string[] }[] };
  return choices.map(({ rank, start, cultivars }) => ({ rank, start, names: cultivars.join(';') }));
}

export function rowsOf(page: Page): Promise<Row[]> {
  return page.locator('.kind .names').evaluateAll((found) =>
    found.map((element) => {
      const { rank, start, names } = (element as HTMLElement).dataset;
      return { rank: Number(rank), start: start ?? '', names: names ?? '' };
    }),
  );
}

/** In an order of their own, since a page groups what a list does not. */
export function sorted(rows: Row[]): Row[] {
  return [...rows].sort(
    (a, b) => a.rank - b.rank || a.start.localeCompare(b.start) || a.names.localeCompare(b.names),
  );
}

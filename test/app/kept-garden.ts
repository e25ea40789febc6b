import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import { download } from './download.ts';
import { type App, openFolds } from './open-app.ts';

export const bank =
  '#/season?at=52.08,-3.13&name=Pencarreg+Bank&class=long&start=raised-seedlings&date=2027-02-20&row-cm=30&plants=250&today=2027-06-20';
export const kept = '#/kept?at=52.08,-3.13&name=Pencarreg+Bank&today=2027-06-20';

/** An invented garden, with fields that no version knows. */
export const garden = {
  schema: 'neckfall/garden@1',
  keeper: 'Ines Tarrant',
  places: [{ id: 'bank', name: 'Pencarreg Bank', latitudeDeg: 52.08, longitudeDeg: -3.13, slope: 'south' }],
  cultivars: [
    { id: 'tin', name: 'Ines’s Tin', class: 'long', packetHours: 15, keepsMonths: [7, 9] },
    { id: 'jar', name: 'Out of the jar' },
  ],
  plantings: [
    { id: 'a', name: 'The long bed', placeId: 'bank', cultivar: 'Ines’s Tin', start: 'raised-seedlings' },
    { id: 'b', name: 'By the wall', placeId: 'bank', class: 'long', start: 'sets', startDate: '2027-03-20' },
  ],
};

export async function openFile(page: Page, content: object, name = 'bank.neckfall.json'): Promise<void> {
  await openFolds(page);
  const buffer = Buffer.from(JSON.stringify(content));
  await page.getByLabel('Open a garden file').setInputFiles({ name, mimeType: 'application/json', buffer });
  await page.locator('.opened', { hasText: `${name} is open` }).waitFor();
}

export type View = { width?: number; locale?: string };

/** Windows that keep a garden and go on from test to test, one for each locale. */
const windows = new WeakMap<App, Map<string, Promise<BrowserContext>>>();

/**
 * An address where this garden of one crop is kept and no other, in a page that goes on from address to address; what a
 * test leaves in its window the next garden takes the place of.
 */
export async function withKept(
  app: App,
  held: object,
  hash: string,
  { locale = 'en-GB', width = 1280 }: View = {},
): Promise<Page> {
  const known = windows.get(app) ?? new Map<string, Promise<BrowserContext>>();
  windows.set(app, known);
  const window = known.get(locale) ?? app.context({ locale });
  known.set(locale, window);
  const look = { context: await window, width };
  const day = new URLSearchParams(hash).get('today');
  const page = await app.at(kept.replace(/today=.*/, `today=${day}`), look);
  await openFile(page, held);
  // the season of its crop tells that it is open, whatever was opened before
  await page.waitForURL(/#\/season/);
  return app.at(hash, look);
}

export async function press(page: Page, name: string | RegExp): Promise<void> {
  await openFolds(page);
  await page.getByRole('button', { name }).click();
}
export const heading = (page: Page) => page.locator('h1');
export const told = (page: Page, text: string) => page.getByText(text).first().waitFor();

const isAsPublished = new Ajv({ strict: true, allErrors: true }).compile(
  JSON.parse(readFileSync(new URL('../../packages/cli/schemas/garden@1.json', import.meta.url), 'utf8')),
);

/** The kept garden as it is saved, which is always as the published schema says. */
export async function whole(page: Page): Promise<typeof garden> {
  const saved = JSON.parse((await download(page, 'Save the whole garden')).bytes.toString());
  isAsPublished(saved);
  expect(isAsPublished.errors).toBeNull();
  return saved;
}

import type { Page } from 'playwright-core';
import { type View, withKept } from './kept-garden.ts';
import type { App } from './open-app.ts';

const place = 'at=52.08,-3.13&name=Pencarreg+Bank';
const plan = `${place}&class=long&start=raised-seedlings&date=2027-02-20&plants=250&row-cm=30`;
export const season = (day: string, planting: string | null = 'bed') =>
  `#/season?${plan}${planting === null ? '' : `&planting=${planting}`}&today=${day}`;

/** An invented garden with one crop under way. */
export const garden = {
  schema: 'neckfall/garden@1',
  places: [{ id: 'bank', name: 'Pencarreg Bank', latitudeDeg: 52.08, longitudeDeg: -3.13 }],
  cultivars: [],
  plantings: [
    {
      id: 'bed',
      name: 'The long bed',
      placeId: 'bank',
      class: 'long',
      start: 'raised-seedlings',
      startDate: '2027-02-20',
      rowDistanceCm: 30,
      plants: 250,
    },
  ],
  observations: [] as object[],
};
export const counted = (date: string, leavesGreen: number, more: object = {}) => ({
  id: `on-${date}`,
  plantingId: 'bed',
  date,
  leavesGreen,
  lookedAt: 5,
  ...more,
});

export const asked = (page: Page) => page.locator('.thumbs input');
export const noteIt = (page: Page) => page.locator('.quick .note-it');
export const entries = (page: Page) => page.locator('.saw li');
export const lead = async (page: Page) =>
  ((await page.locator('.today').textContent()) ?? '').replace(/\s+/g, ' ');

export type HowSeen = [day: string, observations?: object[], look?: View];

/** A page at a day of the season, where the garden is kept with what was seen. */
export function pageWith(app: App, ...[day, observations = [], look]: HowSeen): Promise<Page> {
  return withKept(app, { ...garden, observations }, season(day), look);
}

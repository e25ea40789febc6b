import {
  dayNumber,
  type MonthlyClimate,
  openSite,
  planDefaults,
  storeClimateOf,
  type WhyAsked,
  whyOf,
} from '../packages/engine/src/index.ts';
import { medianMs, type Row } from './timing.ts';

/** Promised of an answer, ms. */
const answerMs = 1000;

/** Why a crop failed, at a place of which nothing has been run: something seen in the bed, and in store. */
export function whyRows(climate: MonthlyClimate, years: number, today: number): Row[] {
  const asked: WhyAsked = {
    plan: { ...planDefaults, type: 'northern-long', start: 'sets', startDay: dayNumber(2026, 4, 5) },
    said: new Set(['type', 'start', 'startDay']),
    isAbout: false,
    today,
    symptoms: ['small', 'flowered'],
    noticed: null,
    store: storeClimateOf(climate, 'cellar'),
    isStoreSaid: false,
    keepsMonths: [5, 7],
    answers: {},
  };
  const row = (what: string, of: Partial<WhyAsked>): Row => ({
    what,
    value: medianMs(5, () => whyOf(openSite({ climate, years, seed: 1 }), { ...asked, ...of })),
    unit: 'ms',
    limit: answerMs,
  });
  return [
    row('why, seen in the bed, new place', {}),
    row('why, seen in store, new place', { symptoms: ['rotted-in-store'] }),
    row('why, dates as remembered, new place', { isAbout: true }),
  ];
}

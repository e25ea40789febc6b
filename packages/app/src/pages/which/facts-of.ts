import { keepingWords } from '@neckfall/answers';
import { type StartTopic, startFacts } from '@neckfall/data';
import type { DateSpread, Kind, SeasonSummary, Spread } from '@neckfall/engine';
import type { MessageKey, Speaker } from '@neckfall/words';
import { startDayWords } from './start-day.ts';

/** A row of facts on a crop, to be set beside others. */
export type FactRow = Extract<MessageKey, `app.which.row.${string}`>;
export type Crop = { kind: Kind; summary: SeasonSummary };

type Words = (crop: Crop, speaker: Speaker) => string;

/** What gardeners compare onions by, in their order. */
export const factRows: readonly (readonly [FactRow, Words])[] = [
  [
    'app.which.row.start',
    ({ kind, summary }, { say }) =>
      say('where.start', {
        start: say(`start.${kind.start}`),
        date: startDayWords(summary.plan.startDay),
      }),
  ],
  ['app.which.row.good', ({ summary }, { years }) => years(summary.seasonShares.good, summary.years)],
  ['app.which.row.flower', ({ summary }, { plants }) => plants(summary.boltedPlantsShare?.p50 ?? 0)],
  [
    'app.which.row.onset',
    ({ summary: { onset } }, { say, day }) => (onset.days ? day(onset.days.p50) : say('never')),
  ],
  ['app.which.row.neck-fall', ({ summary }, speaker) => dates(summary.neckFall, speaker)],
  ['app.which.row.weeks', weeks],
  ['app.which.row.across', ({ summary }, speaker) => sizes(summary.bulbDiameterMm, speaker)],
  ['app.which.row.leaves', ({ summary }, speaker) => leaves(summary.leavesGreenAtOnset, speaker)],
  ['app.which.row.keeps', keepingWords],
  ['app.which.row.choice', level('choice')],
  ['app.which.row.losses', level('losses')],
  ['app.which.row.work', level('work')],
];

/** The same for ways of starting, which stand at the head themselves, and what only they differ in. */
export const startFactRows: readonly (readonly [FactRow, Words])[] = [
  ['app.which.row.start', ({ summary }) => startDayWords(summary.plan.startDay)],
  ...factRows.filter(([row]) => row !== 'app.which.row.start'),
  ['app.which.row.bolting', level('bolting')],
  ['app.which.row.cost', level('cost')],
];

/** Where they come in less than half of the seasons, dates would say too much: how often, then. */
const mostShare = 0.5;

function dates({ days, share }: DateSpread, { say, dayRange, years }: Speaker): string {
  if (days === null) return say('never');
  return share < mostShare ? years(share, null) : dayRange(days.p10, days.p90);
}

function sizes(of: Spread | null, { say, quantityRange }: Speaker): string {
  return of ? quantityRange('bulbLength', of.p10, of.p90) : say('none');
}

function leaves(of: Spread | null, { say, numberRange }: Speaker): string {
  return of ? numberRange(of.p10, of.p90) : say('none');
}

/** Weeks from the start to the middle date on which tops go over. */
function weeks({ summary: { neckFall, plan } }: Crop, { say }: Speaker): string {
  if (neckFall.days === null) return say('none');
  return say('which.weeks', { weeks: Math.round((neckFall.days.p50 - plan.startDay) / 7) });
}

function level(topic: Exclude<StartTopic, 'time' | 'cautions'>): Words {
  return ({ kind }, { say }) => say(`start-level.${topic}.${startFacts[kind.start].levels[topic]}`);
}

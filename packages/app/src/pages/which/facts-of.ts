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
  ['app.which.row.flower', ({ summary }, { plants }) => plants(summary.boltedPlantsShare.p50 ?? 0)],
  [
    'app.which.row.onset',
    ({ summary }, { say, day }) => (summary.onset.p50 === null ? say('never') : day(summary.onset.p50)),
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

function dates({ p10, p90, share }: DateSpread, { say, dayRange, years }: Speaker): string {
  if (p10 === null || p90 === null) return say('never');
  return share < mostShare ? years(share, null) : dayRange(p10, p90);
}

function sizes({ p10, p90 }: Spread, { say, quantityRange }: Speaker): string {
  return p10 === null || p90 === null ? say('none') : quantityRange('bulbLength', p10, p90);
}

function leaves({ p10, p90 }: Spread, { say, numberRange }: Speaker): string {
  return p10 === null || p90 === null ? say('none') : numberRange(p10, p90);
}

/** Weeks from the start to the middle date on which tops go over. */
function weeks({ summary: { neckFall, plan } }: Crop, { say }: Speaker): string {
  if (neckFall.p50 === null) return say('none');
  return say('which.weeks', { weeks: Math.round((neckFall.p50 - plan.startDay) / 7) });
}

function level(topic: Exclude<StartTopic, 'time' | 'cautions'>): Words {
  return ({ kind }, { say }) => say(`start-level.${topic}.${startFacts[kind.start].levels[topic]}`);
}

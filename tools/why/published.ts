import {
  type Cause,
  defaultPlantValues,
  type Plan,
  type PlanForm,
  planDefaults,
  type Site,
  type Symptom,
  startedOn,
  storeClimateOf,
  typeForClass,
  type Verdict,
  type WhyAnswer,
  whyOf,
} from '../../packages/engine/src/index.ts';
import type { CalendarRow, Window } from '../score/calendar-rows.ts';
import { planOf, publishedSite } from '../score/published-plan.ts';
import { scoreSite } from '../score/sites.ts';
import { trialFailures } from './trial-failures.ts';

/** A published failure asked why, with the causes that say what its source says. */
export type PublishedFailure = {
  id: string;
  seen: Symptom;
  stated: readonly Cause[];
  answer: WhyAnswer;
};

const seenOf: Partial<Record<Verdict, Symptom>> = {
  bolts: 'flowered',
  'winter-killed': 'died-in-winter',
  'no-bulb': 'no-bulb',
  'not-ripe': 'tops-stood',
  small: 'small',
};

/** Seedlings whose sowing no source gives were sown so long before they were planted, days (common practice, no source). */
const raisedDays = 60;

/** Failures of published calendars. @param causeOf what the source states of a row */
export function calendarFailures(
  rows: readonly CalendarRow[],
  statedOf: ReadonlyMap<string, readonly Cause[]>,
): PublishedFailure[] {
  return rows.flatMap((row) => {
    const seen = row.outcome && seenOf[row.outcome];
    const stated = statedOf.get(row.id);
    if (!seen || !stated) return [];
    const site = scoreSite(row, defaultPlantValues);
    return [{ id: row.id, seen, stated, answer: why(site, planOfRow(site, row), saidOf(row), seen) }];
  });
}

export function failuresOfTrials(): PublishedFailure[] {
  return trialFailures.map((trial) => {
    const site = publishedSite(trial, defaultPlantValues);
    const { id, seen, stated } = trial;
    return { id, seen, stated, answer: why(site, planOf(site, trial), saidOf(trial), seen) };
  });
}

const middle = ({ from, to }: Window) => Math.round((from + to) / 2);

function planOfRow(site: Site, row: CalendarRow): Plan {
  const plantOutDay = row.plantOutWindow && middle(row.plantOutWindow);
  const startDay = row.startWindow ? middle(row.startWindow) : (plantOutDay ?? 0) - raisedDays;
  return startedOn(
    {
      ...planDefaults,
      type: typeForClass(site, row.class, row.start, startDay),
      start: row.start,
      densityPerM2: row.densityPerM2 ?? planDefaults.densityPerM2,
      setSizeMm: row.setSizeMm ?? planDefaults.setSizeMm,
    },
    startDay,
    plantOutDay,
  );
}

function saidOf(row: {
  densityPerM2?: number | null;
  setSizeMm?: number | null;
}): ReadonlySet<keyof PlanForm> {
  const said = new Set<keyof PlanForm>(['type', 'start', 'startDay']);
  if (row.densityPerM2) said.add('densityPerM2');
  if (row.setSizeMm) said.add('setSizeMm');
  return said;
}

function why(site: Site, plan: Plan, said: ReadonlySet<keyof PlanForm>, seen: Symptom): WhyAnswer {
  return whyOf(site, {
    plan,
    said,
    isAbout: false,
    today: plan.startDay,
    symptoms: [seen],
    noticed: null,
    store: storeClimateOf(site.climate, 'shed'),
    isStoreSaid: false,
    keepsMonths: [3, 4],
    answers: {},
  });
}

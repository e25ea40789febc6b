import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import {
  medianSeasonDays,
  openSite,
  planDefaults,
  runnerOf,
  runPlan,
  stage,
} from '../../src/season/index.ts';
import { type DailyRecord, emptyRecord } from '../../src/weather/index.ts';
import { wetWinterCoast } from '../weather/climates.ts';

const years = 8;
const open = (record: DailyRecord | null) => openSite({ climate: wetWinterCoast, years, seed: 3, record });

/** Days of one minimum and maximum throughout. */
function steady(from: number, to: number, minC: number, maxC: number): DailyRecord {
  const record = emptyRecord(from, to - from + 1);
  for (const [field, value] of [
    ['tempMinC', minC],
    ['tempMaxC', maxC],
  ] as const) {
    record[field].fill(value);
    record.known[field].fill(1);
  }
  return record;
}

const plan = {
  ...planDefaults,
  type: 'northern-long',
  start: 'direct-seed',
  startDay: dayNumber(2025, 3, 25),
  plantOutDay: null,
} as const;
const frozen = steady(dayNumber(2025, 1, 1), dayNumber(2026, 12, 31), -12, -4);

describe('a season with a weather record', () => {
  it('meets the measured days in every weather year', () => {
    // 12 °C day and night: every year sees the same seed come up on the same day
    const runner = runnerOf(open(steady(dayNumber(2025, 1, 1), dayNumber(2025, 12, 31), 12, 12)), plan);
    const emerged = Array.from({ length: years }, (_, year) => runner.season(year).emergedOn);
    expect(emerged[0]).toBeGreaterThan(0);
    expect(new Set(emerged).size).toBe(1);
    const without = runnerOf(open(null), plan);
    const generated = Array.from({ length: years }, (_, year) => without.season(year).emergedOn);
    expect(new Set(generated).size).toBeGreaterThan(1);
  });

  it('shows the measured days day by day', () => {
    const site = open(steady(dayNumber(2025, 6, 1), dayNumber(2025, 6, 30), 10, 18));
    const june = medianSeasonDays(site, plan).filter(
      ({ day }) => day >= dayNumber(2025, 6, 1) && day <= dayNumber(2025, 6, 30),
    );
    expect(june.map(({ tempMeanC }) => tempMeanC)).toEqual(new Array(30).fill(14));
  });

  it('takes them from its own calendar year, also once the site served another', () => {
    const site = open(frozen);
    expect(runPlan(site, plan).emergence.share).toBe(0);
    const later = { ...plan, startDay: dayNumber(2028, 3, 25) };
    expect(runPlan(site, later)).toEqual(runPlan(open(null), later));
    const runner = runnerOf(site, later);
    runner.moveTo(dayNumber(2026, 3, 25), null);
    expect(runner.season(0).reached).toBe(stage.started);
  });

  it('changes nothing where the record ends before it begins', () => {
    const before = steady(dayNumber(2024, 1, 1), dayNumber(2024, 12, 31), -12, -4);
    expect(runPlan(open(before), plan)).toEqual(runPlan(open(null), plan));
  });
});

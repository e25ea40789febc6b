import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { bulbMassG } from '../../src/plant/index.ts';
import { openSite, type PlanForm, planDefaults, runnerOf, summarise } from '../../src/season/index.ts';
import { emptyOutcome, type Outcome, stage } from '../../src/season/outcome.ts';
import { climateOf } from '../weather/climates.ts';

const mean = [4, 5, 7, 10, 13, 16, 18, 18, 15, 11, 7, 4];
const climate = climateOf({ latitudeDeg: 52, mean });
const startDay = dayNumber(2027, 3, 20);
const ripe: Outcome = {
  ...emptyOutcome(),
  reached: stage.fallen,
  emergedOn: 20,
  plantedOn: 20,
  onsetOn: 100,
  fellOn: 150,
  leavesMade: 10,
  leavesGreen: 8,
  shootG: 9,
};

/** What is said of seasons that went so, at 40 plants per m²; bulbs are given by their fresh mass. */
function told(seasons: readonly (Partial<Outcome> & { massG?: number })[], plan: Partial<PlanForm> = {}) {
  const site = openSite({ climate, years: seasons.length, seed: 1 });
  const whole: PlanForm = { ...planDefaults, type: 'northern-long', start: 'direct-seed', startDay, ...plan };
  const runner = runnerOf(site, whole);
  const { dryMatterShare } = runner.crop.type;
  const season = (year: number): Outcome => {
    const { massG = 120, ...other } = seasons[year];
    return { ...ripe, bulbDryG: massG * dryMatterShare, ...other };
  };
  return summarise(site, whole, { ...runner, season });
}

describe('the crop of a bed', () => {
  // Bulb masses are log-normal with a coefficient of variation of 40 %: their mean is √1.16 of the median.
  test('is the mean bulb of all that stand', () => {
    expect(told([{ massG: 100 }]).totalKgM2.p50).toBeCloseTo((40 * 100 * Math.sqrt(1.16)) / 1000, 9);
    expect(told([{ massG: 100 }], { densityPerM2: 20 }).totalKgM2.p50).toBeCloseTo(2 * Math.sqrt(1.16), 9);
  });

  test('has no plants that died', () => {
    const [all, left] = [told([{}]), told([{ aliveShare: 0.6 }])];
    expect(left.totalKgM2.p50! / all.totalKgM2.p50!).toBeCloseTo(0.6, 12);
    expect(left.marketableKgM2.p50! / all.marketableKgM2.p50!).toBeCloseTo(0.6, 12);
    expect(left.winterKilledPlantsShare!.p50).toBeCloseTo(0.4, 12);
  });

  test('to keep has no bolters', () => {
    const [all, left] = [told([{}]), told([{ boltedShare: 0.2 }])];
    expect(left.marketableKgM2.p50! / all.marketableKgM2.p50!).toBeCloseTo(0.8, 12);
    expect(left.boltedPlantsShare!.p50).toBe(0.2);
  });

  test('to keep has only bulbs of 38 mm and more (7 CFR 51.2832)', () => {
    // of log-normal masses about that size the upper half holds Φ(σ) of all mass, σ = √ln 1.16 = 0.385; Φ = 0.650
    const { marketableKgM2, totalKgM2 } = told([{ massG: bulbMassG(38) }]);
    expect(marketableKgM2.p50! / totalKgM2.p50!).toBeCloseTo(0.65, 3);
    const large = told([{ massG: 400 }]);
    expect(large.marketableKgM2.p50! / large.totalKgM2.p50!).toBeGreaterThan(0.999);
  });

  test('is nothing where no bulbs start', () => {
    const { totalKgM2, marketableKgM2, bulbMassG: mass } = told([{ reached: stage.planted, massG: 0 }]);
    expect([totalKgM2.p50, marketableKgM2.p50, mass]).toEqual([0, 0, null]);
  });

  test('counts the years without bulbs as nothing', () => {
    const none = { reached: stage.planted, massG: 0 };
    expect(told([{}, none, none]).totalKgM2.p50).toBe(0);
    expect(told([{}, {}, none]).totalKgM2.p50).toBeGreaterThan(4);
  });
});

describe('a date', () => {
  const seasons = [
    { fellOn: 140 },
    { fellOn: 160 },
    { reached: stage.onset, onsetOn: 130 },
    { reached: stage.started, massG: 0 },
  ];
  const { emergence, onset, neckFall, seasonShares } = told(seasons);

  test('is the middle of the seasons in which it came, with their share', () => {
    expect(neckFall).toMatchObject({ days: { p50: startDay + 150 }, share: 0.5 });
    expect(onset).toMatchObject({ days: { p50: startDay + 100 }, share: 0.75 });
    expect(emergence).toMatchObject({ days: { p50: startDay + 20 }, share: 0.75 });
  });

  test('has the span of 8 years in 10', () => {
    expect(neckFall.days!.p10).toBe(startDay + 142);
    expect(neckFall.days!.p90).toBe(startDay + 158);
  });

  test('of seasons without it leaves them what they were', () => {
    expect(seasonShares).toMatchObject({ good: 0.5, 'not-ripe': 0.25, 'no-bulb': 0.25, small: 0 });
  });

  test('of onset comes with the day length there, longer to twilight than to sunset', () => {
    const { sunUpH, photoperiodH } = onset.days!;
    // 28 June at 52°: about 16.7 h (memory)
    expect(sunUpH).toBeCloseTo(16.7, 0);
    expect(photoperiodH).toBeGreaterThan(sunUpH + 1);
  });
});

describe('the whole', () => {
  const small = { massG: 20 };
  const none = { reached: stage.planted, massG: 0 };

  test('is good where half of the seasons are, without a gamble', () => {
    expect(told([{}, small])).toMatchObject({ outcome: 'good', gamble: false });
  });

  test('is a gamble where good is as likely as any one failure', () => {
    expect(told([{}, {}, small, small, none])).toMatchObject({ outcome: 'small', gamble: true });
    expect(told([{}, small, small, none])).toMatchObject({ outcome: 'small', gamble: false });
    expect(told([small, none])).toMatchObject({ gamble: false });
  });

  test('says how many of the seeds stand, over all years', () => {
    expect(told([{ emergedShare: 0.6 }, { emergedShare: 0.8 }]).emergedShare).toBeCloseTo(0.7, 12);
  });

  test('tells thirst, heave and leaves of the plants that stood', () => {
    const { thirstyDays, frostLiftedPlantsShare, leavesMadeAtOnset, leavesGreenAtOnset, shootGAtOnset } =
      told([
        { thirstyDays: 4, liftedShare: 0.1 },
        { thirstyDays: 6, liftedShare: 0.3 },
      ]);
    expect(thirstyDays!.p50).toBe(5);
    expect(frostLiftedPlantsShare!.p50).toBeCloseTo(0.2, 12);
    expect([leavesMadeAtOnset!.p50, leavesGreenAtOnset!.p50, shootGAtOnset!.p50]).toEqual([10, 8, 9]);
  });

  test('has a day of planting out for raised seedlings only', () => {
    expect(told([{ plantedOn: 60 }]).plantOut).toBeNull();
    expect(told([{ plantedOn: 60 }], { start: 'raised-seedlings' }).plantOut?.days?.p50).toBe(startDay + 60);
  });
});

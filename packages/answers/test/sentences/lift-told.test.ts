import type { LiftAdvice } from '@neckfall/engine';
import { loadLanguage, loadLater, speaker } from '@neckfall/words';
import { beforeAll, expect, test } from 'vitest';
import { liftTold } from '../../src/sentences/index.ts';

const advice: LiftAdvice = {
  verdict: 'wait',
  best: 21_046,
  topsOverShare: 0.32,
  topsFrom: 'seen',
  rainMm: 4,
  rainFrom: 'forecast',
  lossTodayShare: 0.09,
  lossBestShare: 0.02,
  thickNeckShare: 0.02,
  boltedShare: 0.1,
  drying: [
    { place: 'outdoors', p10: 15, p50: 22, p90: null, lossShare: 0.06 },
    { place: 'under-roof', p10: 12, p50: 16, p90: 22, lossShare: 0.05 },
    { place: 'warm-room', p10: null, p50: null, p90: null, lossShare: 0.05 },
  ],
};
const standing = { liftedOn: null };

beforeAll(async () => {
  await loadLater();
  await loadLanguage('es');
});

test('waiting is told with tops, weather, the best day and what either choice loses', () => {
  const { headline, lines } = liftTold(speaker('metric'), advice, standing);
  expect(headline).toBe(
    'Wait: about 3 in 10 tops have fallen, and the days ahead are dry. The best day to harvest is about 16 August.',
  );
  expect(lines[0]).toMatch(/^Go by your hands first/);
  expect(lines).toContain('Under a roof, airy: about 16 days, 12–22; 5 % lighter when dry.');
  expect(lines.join(' ')).toContain('about 9 %');
  expect(lines.join(' ')).toContain('not dry within 60 days');
  expect(lines.join(' ')).toContain('do not get dry there');
  expect(lines.join(' ')).toContain('flower stalks, 1 plant in 10');
  expect(lines.at(-2)).toContain('carbon monoxide');
});

test.each(['lift', 'wait', 'before-rain', 'too-early', 'lifted'] as const)(
  '%s is told in every language and system of units',
  (verdict) => {
    for (const own of [speaker('metric'), speaker('us'), speaker('metric', 'es')]) {
      const liftedOn = verdict === 'lifted' ? 21_000 : null;
      const { headline, lines } = liftTold(own, { ...advice, verdict, rainMm: 40 }, { liftedOn });
      for (const line of [headline, ...lines]) expect(line).toMatch(/^\S.*\.$/);
      expect(new Set(lines).size).toBe(lines.length);
      if (verdict === 'lifted') expect(headline).toContain(own.day(21_000));
      expect(lines.some((line) => line === own.say('lift.wet'))).toBe(verdict !== 'too-early');
    }
  },
);

test('tops that nobody has counted are looked at before anything is pulled', () => {
  const own = speaker('metric');
  const reckoned = { ...advice, topsFrom: 'run', topsOverShare: 0.7 } as const;
  const lead = (verdict: LiftAdvice['verdict']) => liftTold(own, { ...reckoned, verdict }, standing).headline;
  expect(lead('lift')).toBe(
    'Look at them today: by the reckoning, about 7 in 10 tops have fallen. If six in ten or more are down, harvest on a dry day.',
  );
  expect(lead('before-rain')).toMatch(/^Look at them today, wet days are ahead/);
  expect(lead('wait')).toMatch(/^Wait/);
  expect(liftTold(own, { ...advice, verdict: 'lift' }, standing).headline).toMatch(/^Harvest now/);
});

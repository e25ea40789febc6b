import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { randomSource } from '../../packages/engine/src/index.ts';
import { demoSeason } from './demo.ts';
import { learningFigure } from './figure.ts';
import { figuresOf } from './figures.ts';
import { learningPage } from './page.ts';
import { settings } from './places.ts';
import { allowed, hidden, knowns, studyOf } from './study.ts';
import { liveThrough, notesOf, recordUntil } from './twin.ts';

const all = settings();
const chosen = ['Sacramento', 'Auckland'].map((name) => {
  const at = all.findIndex((setting) => setting.name === name);
  const setting = all[at];
  const twins = studyOf(setting, at, 2, allowed);
  return { setting, allowed: twins, plantsAlone: twins };
});
const demo = demoSeason();

describe('a twin', () => {
  const setting = all[1];
  const draw = hidden(allowed, randomSource(3))();
  const twin = liveThrough(setting, 2027, draw, 77);
  if (!twin) throw new Error('no twin');

  test('is looked at every ten days, by counts that lie about what stands there', () => {
    const { leaves } = notesOf(twin, randomSource(5));
    expect(leaves.length).toBeGreaterThan(5);
    for (const { date, leavesGreen, lookedAt } of leaves) {
      const green = twin.trace.leavesGreen[Date.parse(date) / 86_400_000 - twin.plan.startDay];
      expect(Math.abs((leavesGreen as number) - green)).toBeLessThan(1.5);
      expect(lookedAt).toBe(10);
    }
    expect(leaves.some(({ leavesGreen }) => !Number.isInteger(leavesGreen))).toBe(true);
  });

  test('shows its weather up to a day and no further', () => {
    const cut = recordUntil(twin.record, twin.onsetDay);
    expect(cut.firstDay + cut.days).toBe(twin.onsetDay);
    expect(cut.tempMinC.every((value, at) => value === twin.record.tempMinC[at])).toBe(true);
  });
});

describe('forecasts of twins', () => {
  const figures = figuresOf(chosen.flatMap((of) => of.allowed));

  // where the day length needed rules onset, callipers tell it
  test('are nearer with callipers than without anything seen, and nearer still with last year', () => {
    expect(figures.widths.meanErrorDays).toBeLessThan(figures.weather.meanErrorDays);
    expect(figures['second-year'].meanErrorDays).toBeLessThan(0.7 * figures.weather.meanErrorDays);
    expect(figures['second-year'].widthDays).toBeLessThan(0.75 * figures.weather.widthDays);
  });

  test('are the same again', () => {
    const at = all.indexOf(chosen[0].setting);
    expect(studyOf(chosen[0].setting, at, 1, allowed)).toEqual(chosen[0].allowed.slice(0, 1));
  });

  test('stand in the page, each with its error', () => {
    const page = learningPage(chosen, demo);
    for (const known of knowns) expect(page).toContain(`| ${figures[known].meanErrorDays.toFixed(1)} | `);
    for (const { setting } of chosen) expect(page).toContain(`${setting.name}, ${setting.words}`);
  });
});

describe('the demo season', () => {
  const { steps, fellDay } = demo;
  const widthOf = ({ fall }: (typeof steps)[number]) => fall.p90 - fall.p10;

  test('draws in from visit to visit, on the day that tops went over', () => {
    expect(widthOf(steps[0])).toBeGreaterThan(25);
    expect(widthOf(steps.at(-1)!)).toBeLessThan(10);
    const first = Math.abs(steps[0].fall.p50 - fellDay);
    expect(Math.abs(steps.at(-1)!.fall.p50 - fellDay)).toBeLessThan(Math.min(4, first));
  });

  test('is the picture of the docs', () => {
    const kept = readFileSync(new URL('../../docs/learning.svg', import.meta.url), 'utf8');
    expect(learningFigure(demo)).toBe(kept);
  });
});

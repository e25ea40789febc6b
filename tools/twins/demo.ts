import { readClimateNodes } from '../../packages/data/src/node.ts';
import {
  climateAt,
  type DayNumber,
  dayNumber,
  drawOf,
  formatDay,
  landWarmingSinceNormalsC,
  learnSeason,
  learntSite,
  type Plan,
  parseDay,
  planDefaults,
  randomSource,
  runPlan,
  warmed,
} from '../../packages/engine/src/index.ts';
import type { Setting } from './places.ts';
import { siteWith } from './study.ts';
import { liveThrough, notesOf, recordUntil, visitDays } from './twin.ts';

/** The forecast after one visit to the bed. */
export type Step = {
  day: DayNumber;
  /** What was noted; null: before the first visit. */
  noted: 'leaves' | 'widths' | 'tops' | null;
  fall: { p10: DayNumber; p50: DayNumber; p90: DayNumber };
};

export type DemoSeason = { steps: Step[]; onsetDay: DayNumber; fellDay: DayNumber };

const assets = new URL('../../packages/data/assets/climate.bin', import.meta.url);
const hiddenPlants = drawOf({ criticalH: 0.2, ripening: 1.2, phyllochron: 1.12, growth: 0.9 });
const weatherSeed = 4242;

/** A season at the invented garden above the Wye, looked at every ten days until its tops are over. */
export function demoSeason(): DemoSeason {
  const climate = warmed(
    climateAt(readClimateNodes(assets.pathname), 52.08, -3.13, 160),
    landWarmingSinceNormalsC,
  );
  const setting: Setting = {
    name: 'Pencarreg Bank',
    words: 'long-day seedlings',
    climate,
    planIn: (year) =>
      ({
        ...planDefaults,
        type: 'northern-long',
        start: 'raised-seedlings',
        startDay: dayNumber(year, 2, 20),
        soil: 'silt-loam',
      }) as Plan,
  };
  const twin = liveThrough(setting, 2027, hiddenPlants, weatherSeed);
  if (!twin) throw new Error('the demo season has no fall of tops');
  const { leaves, widths, tops } = notesOf(twin, randomSource(7));
  const { plan, onsetDay, fellDay } = twin;
  const dayOf = ({ date }: { date: string }) => parseDay(date) ?? 0;
  const steps = [plan.startDay + 60, ...visitDays(twin)].map((day, at): Step => {
    const seen = [
      ...leaves.filter((note) => dayOf(note) <= Math.min(day, onsetDay)),
      ...widths.filter((note) => dayOf(note) <= day && dayOf(note) > onsetDay),
      // that none is over yet is told too, once bulbs are there
      ...tops.filter((note) => dayOf(note) <= day && dayOf(note) > onsetDay),
    ];
    const site = siteWith(setting, recordUntil(twin.record, day));
    const { days } = runPlan(learntSite(site, learnSeason(site, plan, seen, day)), plan).neckFall;
    if (!days) throw new Error(`no fall of tops is forecast on ${formatDay(day)}`);
    const onDay = seen.filter((note) => dayOf(note) === day);
    const isTops = onDay.some(({ topsOverShare }) => (topsOverShare ?? 0) > 0);
    return {
      day,
      noted: at === 0 ? null : isTops ? 'tops' : day > onsetDay ? 'widths' : 'leaves',
      fall: days,
    };
  });
  return { steps, onsetDay, fellDay };
}

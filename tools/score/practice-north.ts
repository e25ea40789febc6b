import { isWorkable } from '../../packages/engine/src/choice/workable.ts';
import {
  type GrowingOptions,
  isAutumnStart,
  type Plan,
  type PlantValues,
  planDefaults,
  runPlan,
  type SeasonSummary,
  type Site,
  type StartMethod,
  startMethods,
  worth,
} from '../../packages/engine/src/index.ts';
import {
  bedReaches,
  isOpenOn,
  type PracticeTest,
  percent,
  practiceDay,
  practiceTest,
  sayRange,
  sayStart,
  siteOfPractice,
  typeMeant,
  yearOf,
} from './practice-check.ts';
import { northernPlaces } from './practice-places.ts';

const weeksFrom = (day: number, weeks: number) => Array.from({ length: weeks }, (_, week) => day + 7 * week);

function northernSites(values: PlantValues): [name: string, site: Site][] {
  return northernPlaces.map((place) => [place[0], siteOfPractice(place, values)]);
}

function placesOf(misses: readonly string[]): string {
  return `${northernPlaces.length - misses.length} of ${northernPlaces.length} places`;
}

function planOf(site: Site, start: StartMethod, startDay: number, options: GrowingOptions = {}): Plan {
  return { ...planDefaults, ...options, type: typeMeant(site, 'long', start, startDay), start, startDay };
}

/** In the north seed in place, own seedlings, bought plants and sets all work somewhen in the year. */
export function northernWindows(values: PlantValues): PracticeTest[] {
  return startMethods.map((start) => {
    const misses: string[] = [];
    const onlyAutumn: string[] = [];
    for (const [place, site] of northernSites(values)) {
      const { starts, windows, reason } = yearOf(site, 'long', start);
      if (windows.length === 0) {
        const summaries = starts.map(({ summary }) => summary);
        const best = bestBy(summaries, (summary) => worth(site, summary));
        misses.push(`${place}: ${reason.code}; best ${sayStart(best)}`);
      } else {
        const open = starts.filter(({ dayOfYear }) => isOpenOn(windows, dayOfYear));
        if (open.every(({ summary }) => isAutumnStart(summary.plan.startDay, site.climate.latitudeDeg)))
          onlyAutumn.push(place);
      }
    }
    return practiceTest(
      `northern places: ${start} of the long class has a window`,
      `${placesOf(misses)}; of these in autumn only: ${onlyAutumn.join(', ') || 'none'}`,
      misses,
    );
  });
}

/** Sets go in when the bed has warmed a little, give a crop nearly every year, and few small ones flower. */
const setSizesMm = [14, 16] as const;
const setsBedC = 7.5;
const setsGoodShare = 0.8;
const setsFlowerShare = 0.12;

export function northernSets(values: PlantValues): PracticeTest[] {
  return setSizesMm.map((setSizeMm) => {
    const misses: string[] = [];
    const seen: SeasonSummary[] = [];
    for (const [place, site] of northernSites(values)) {
      const summaries = weeksFrom(bedReaches(site, setsBedC), 3).map((day) =>
        runPlan(site, planOf(site, 'sets', day, { setSizeMm })),
      );
      const good = middle(summaries.map(({ seasonShares }) => seasonShares.good));
      const flower = middle(summaries.map(flowerShare));
      seen.push(summaries[1]);
      if (good < setsGoodShare || flower > setsFlowerShare)
        misses.push(`${place}: good ${percent(good)}, flower ${percent(flower)}; ${sayStart(summaries[1])}`);
    }
    const shares = (of: (summary: SeasonSummary) => number) => sayRange(seen.map((s) => 100 * of(s)));
    return practiceTest(
      `northern places: sets of ${setSizeMm} mm in the usual weeks are good in 8 years of 10, at most 12 % flower`,
      `${placesOf(misses)}; good ${shares((s) => s.seasonShares.good)} %, flower ${shares(flowerShare)} %, ${sayRange(seen.map(diameter))} mm`,
      misses,
    );
  });
}

/** What a bulb of a crop fed, watered and weeded measures across at 30 to 40 plants a square metre, mm. */
const grownMm = [55, 90] as const;
const densitiesPerM2 = [30, 40] as const;

/** Starts that growers choose, by way. */
const chosenStarts: readonly [StartMethod, (site: Site) => number[]][] = [
  ['direct-seed', (site) => [6, 7, 8].map((bedC) => bedReaches(site, bedC))],
  ['raised-seedlings', () => weeksFrom(practiceDay(2, 21), 5)],
  ['bought-transplants', aprilPlanting],
];

/** April; where beds are still cold all month, the first three weeks in which they are not. */
function aprilPlanting(site: Site): number[] {
  const april = weeksFrom(practiceDay(4, 1), 5).filter((day) => isWorkable(site, 'bought-transplants', day));
  return april.length > 0 ? april : weeksFrom(bedReaches(site, 7), 3);
}

export function northernSizes(values: PlantValues): PracticeTest[] {
  return chosenStarts.flatMap(([start, daysOf]) =>
    densitiesPerM2.map((densityPerM2) => {
      const misses: string[] = [];
      const found = northernSites(values).map(([place, site]) => {
        const summaries = daysOf(site).map((day) =>
          runPlan(site, planOf(site, start, day, { densityPerM2 })),
        );
        const best = bestBy(summaries, (summary) => worth(site, summary));
        const mm = diameter(best);
        if (mm < grownMm[0] || mm > grownMm[1]) misses.push(`${place}: ${sayStart(best)}`);
        return mm;
      });
      return practiceTest(
        `northern places: ${start} at ${densityPerM2}/m² makes bulbs of ${grownMm.join('–')} mm`,
        `${placesOf(misses)}; ${sayRange(found)} mm`,
        misses,
      );
    }),
  );
}

function diameter({ bulbDiameterMm }: SeasonSummary): number {
  return bulbDiameterMm?.p50 ?? 0;
}

function flowerShare({ boltedPlantsShare }: SeasonSummary): number {
  return boltedPlantsShare?.p50 ?? 0;
}

function middle(figures: number[]): number {
  return figures.toSorted((a, b) => a - b)[figures.length >> 1];
}

function bestBy<Item>(items: readonly Item[], worthOf: (item: Item) => number): Item {
  return items.reduce((a, b) => (worthOf(b) > worthOf(a) ? b : a));
}

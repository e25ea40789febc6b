import {
  type DayLengthClass,
  dayNumber,
  formatDay,
  indoorNurseryC,
  type OnionType,
  type PlantValues,
  planDefaults,
  runnerOf,
  runPlan,
  type SeasonSummary,
  type Site,
  type StartMethod,
  stage,
  summarise,
} from '../../packages/engine/src/index.ts';
import {
  isOpenOn,
  type PracticeTest,
  percent,
  practiceDay,
  practiceTest,
  practiceYear,
  sayRange,
  sayStart,
  siteOfPractice,
  yearOf,
} from './practice-check.ts';
import { mildPlaces, northernPlaces, tropicalPlaces } from './practice-places.ts';

const shortTypes: readonly OnionType[] = ['short', 'tropical-short'];
const longTypes: readonly OnionType[] = ['early-long', 'northern-long'];

/** Farther from the equator short-day kinds bulb with the first long days, early and small. */
const traysFromDeg = 48;
const trayDays = [
  dayNumber(practiceYear - 1, 11, 1),
  dayNumber(practiceYear - 1, 12, 1),
  dayNumber(practiceYear - 1, 12, 15),
  practiceDay(1, 1),
  practiceDay(2, 1),
];

export function shortDayTrays(values: PlantValues): PracticeTest[] {
  const places = northernPlaces.filter(([, latitudeDeg]) => latitudeDeg > traysFromDeg);
  return shortTypes.map((type) => {
    const tried = places.map((place) => ({
      place,
      summaries: trayDays.map((startDay) =>
        runPlan(siteOfPractice(place, values), {
          ...planDefaults,
          type,
          start: 'raised-seedlings',
          startDay,
          // mild autumns would put the tray outdoors
          nurseryTempC: indoorNurseryC,
        }),
      ),
    }));
    const misses = tried.flatMap(({ place, summaries }) => {
      const good = summaries.filter(({ outcome }) => outcome === 'good');
      const best = bestOf(good, ({ seasonShares }) => seasonShares.good);
      return best ? [`${place[0]}: ${good.length} of ${trayDays.length} dates; ${sayStart(best)}`] : [];
    });
    const mm = tried.flatMap(({ summaries }) =>
      summaries.map(({ bulbDiameterMm }) => bulbDiameterMm?.p50 ?? 0),
    );
    return practiceTest(
      `${type} onions from winter trays are never good above ${traysFromDeg}° N`,
      `good at ${misses.length} of ${places.length} places; ${sayRange(mm)} mm`,
      misses,
    );
  });
}

/** What packets of overwintering kinds say, where they say anything. */
const autumnClasses: readonly DayLengthClass[] = ['long', 'intermediate'];

/** When overwintering kinds are started, by way: days of the year. */
const autumnStarts: readonly [StartMethod, from: number, to: number][] = [
  ['direct-seed', practiceDay(8, 8), practiceDay(9, 20)],
  ['raised-seedlings', practiceDay(8, 8), practiceDay(9, 20)],
  ['sets', practiceDay(9, 1), practiceDay(10, 31)],
];

/** Winters are mild there, and onions of autumn are everyday (common practice, no source). */
export function autumnStartsInTime(values: PlantValues): PracticeTest[] {
  return autumnStarts.map(([start, from, to]) => {
    const misses: string[] = [];
    const found: string[] = [];
    for (const place of mildPlaces) {
      const site = siteOfPractice(place, values);
      const open = autumnClasses.map((name) => autumnWeeks(site, name, start, from, to));
      const inTime = open.filter(({ weeks }) => weeks.length > 0);
      if (inTime.length > 0) found.push(`${place[0]} ${inTime.map(({ says }) => says).join(' and ')}`);
      else misses.push(`${place[0]}: ${open.map(({ best }) => sayStart(best)).join(' | ')}`);
    }
    return practiceTest(
      `mild north: ${start} from ${say(from)} to ${say(to)} is in time`,
      `${found.length} of ${mildPlaces.length} places${found.length > 0 ? `: ${found.join('; ')}` : ''}`,
      misses,
    );
  });
}

/** Week starts of the stretch that lie in a window of the year, and the stretch's best. */
function autumnWeeks(
  site: Site,
  dayLengthClass: DayLengthClass,
  start: StartMethod,
  from: number,
  to: number,
) {
  const { starts, windows } = yearOf(site, dayLengthClass, start);
  const tried = starts.filter(({ summary }) => summary.plan.startDay >= from && summary.plan.startDay <= to);
  const weeks = tried.filter(({ dayOfYear }) => isOpenOn(windows, dayOfYear));
  const best = bestOf(
    tried.map(({ summary }) => summary),
    ({ seasonShares }) => seasonShares.good,
  ) as SeasonSummary;
  const says = `${dayLengthClass} ${weeks.length} of ${tried.length} weeks`;
  return { weeks, best, says };
}

/** Days never grow long enough for them there. */
export function tropicalSets(values: PlantValues): PracticeTest[] {
  return longTypes.map((type) => {
    const misses: string[] = [];
    let most = 0;
    for (const place of tropicalPlaces) {
      const site = siteOfPractice(place, values);
      const plan = { ...planDefaults, type, start: 'sets' as const, startDay: practiceDay(1, 1) };
      const runner = runnerOf(site, plan);
      const began: string[] = [];
      for (let month = 1; month <= 12; month++) {
        const startDay = practiceDay(month, 1);
        runner.moveTo(startDay, null);
        if (runner.meanSeason().reached >= stage.onset) began.push(say(startDay));
        most = Math.max(most, summarise(site, { ...plan, startDay }, runner).onset.share);
      }
      if (began.length > 0) misses.push(`${place[0]}: bulbs begin when planted ${began.join(', ')}`);
    }
    return practiceTest(
      `${type} sets never begin bulbs within 20° of the equator, in the mean climate`,
      `at ${misses.length} of ${tropicalPlaces.length} places; in weather years with draws of the kind at most ${percent(most)}`,
      misses,
    );
  });
}

function say(day: number): string {
  return formatDay(day).slice(5);
}

function bestOf<Item>(items: readonly Item[], worthOf: (item: Item) => number): Item | null {
  return items.reduce<Item | null>((a, b) => (a !== null && worthOf(a) >= worthOf(b) ? a : b), null);
}

import {
  climateDayOf,
  dayNumber,
  emptyRecord,
  formatDay,
  learnSeason,
  learntSite,
  type MonthlyClimate,
  type Observation,
  openSite,
  type Plan,
  planDefaults,
  runPlan,
  weatherYears,
} from '../packages/engine/src/index.ts';
import { medianMs, type Row } from './timing.ts';

const startDay = dayNumber(2027, 3, 1);
const firstCount = dayNumber(2027, 4, 20);
const asOf = dayNumber(2027, 7, 1);
const seen = 20;

/** What it takes to say anew what a season will be once something more was seen of it, weather and site at hand or new. */
export function learnRows(climate: MonthlyClimate, years: number): Row[] {
  const plan = { ...planDefaults, type: 'intermediate', start: 'direct-seed', startDay } as Plan;
  const record = emptyRecord(dayNumber(2027, 1, 1), asOf - dayNumber(2027, 1, 1));
  const weather = weatherYears(climate, 1, 99);
  for (let at = 0; at < record.days; at++)
    for (const field of ['tempMinC', 'tempMaxC', 'rainMm'] as const) {
      record[field][at] = weather[field][climateDayOf(record.firstDay + at)];
      record.known[field][at] = 1;
    }
  const observations = Array.from({ length: seen }, (_, at): Observation => {
    const date = formatDay(firstCount + 3 * at);
    const what = at < 15 ? { leavesGreen: 3 + 0.3 * at } : { neckMm: 14, bulbMm: 16 + 4 * (at - 15) };
    return { id: `${at}`, plantingId: null, date, lookedAt: 10, ...what };
  });
  const open = () => openSite({ climate, years, seed: 1, record });
  const answer = (site: ReturnType<typeof open>) =>
    runPlan(learntSite(site, learnSeason(site, plan, observations, asOf)), plan);
  const site = open();
  return [
    {
      what: `learn from ${seen} observations, 300 draws`,
      value: medianMs(20, () => answer(site)),
      unit: 'ms',
      limit: 300,
    },
    {
      what: 'the same with new weather',
      value: medianMs(20, () => answer(open())),
      unit: 'ms',
      limit: 300,
    },
  ];
}

import {
  atlasEntries,
  type DayNumber,
  dayLengthClasses,
  leadAt,
  type MonthlyClimate,
  openSite,
  startMethods,
  surveyWays,
  waysOf,
} from '../packages/engine/src/index.ts';
import { medianMs, type Row } from './timing.ts';

/** A point of a map, new each time, beside the plain survey of the same twelve entries. */
export function atlasRows(climate: MonthlyClimate, firstDay: DayNumber): Row[] {
  const years = 10;
  const open = () => openSite({ climate, years, seed: 1 });
  const row = (what: string, work: () => unknown): Row => ({
    what: `map, a point of ${years} years, ${what}`,
    value: medianMs(20, work),
    unit: 'ms',
    limit: null,
  });
  return [
    row('the entry that leads', () => leadAt(open(), firstDay, { class: null, start: null })),
    row('all entries', () => atlasEntries(open(), firstDay)),
    row('all entries by the survey', () => {
      const site = open();
      return dayLengthClasses.flatMap((one) =>
        startMethods.map((start) => surveyWays(site, waysOf(site, { class: one }, [start]), firstDay).best()),
      );
    }),
  ];
}

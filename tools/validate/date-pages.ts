import { byGroup, latitudeBand } from '../score/by-group.ts';
import { type Miss, type TimingScore, timingScore } from '../score/timing.ts';
import type { Score } from './report.ts';
import { percent, table } from './table.ts';

const head = ['', 'rows', 'weight', 'within 7 d', 'within 10 d', 'mean miss, d', 'centre error, d'];
const days = (n: number) => n.toFixed(1);

function row(name: string, s: TimingScore): string[] {
  return [
    name,
    String(s.rows),
    days(s.weight),
    percent(s.within7),
    percent(s.within10),
    days(s.meanMissDays),
    days(s.meanCentreErrorDays),
  ];
}

const read = (m: Miss) => m.row.weight === 1;
const full = (misses: readonly Miss[]) => timingScore(misses.filter(read), () => 1);
const weighted = (misses: readonly Miss[]) => timingScore(misses, (r) => r.weight);

/** Dates against the windows: in all, by group, and the rows that resist. */
export function datePages({ fit, unseen, nothing }: Score): string {
  const { misses } = fit.scored;
  const left = unseen.scored.misses;
  const lower = (of: TimingScore, than: TimingScore) =>
    percent(1 - of.meanCentreErrorDays / than.meanCentreErrorDays);
  return `## Dates

${table(head, [
  row('left out, rows read in full', full(left)),
  row('fit, rows read in full', full(misses)),
  row('null model, rows read in full', full(nothing)),
  row('left out, all rows by weight', weighted(left)),
  row('fit, all rows by weight', weighted(misses)),
  row('null model, all rows by weight', weighted(nothing)),
])}

Centre error against the null model, rows read in full: ${lower(full(left), full(nothing))} lower left out, ${lower(full(misses), full(nothing))} in the fit.

### By class, way of starting and latitude (left out, unweighted)

${table(
  head,
  [...byGroup(left, (r) => r.class), ...byGroup(left, (r) => r.start), ...byGroup(left, latitudeBand)].map(
    ([name, s]) => row(name, s),
  ),
)}

### Rows that resist

More than 10 days outside their window in the fit:

${table(
  ['row', 'place', 'class, start', 'weight', 'miss, d', 'centre, d'],
  misses
    .filter((m) => m.missDays > 10)
    .sort((a, b) => b.missDays - a.missDays)
    .map((m) => [
      m.row.id,
      m.row.place,
      `${m.row.class}, ${m.row.start}`,
      String(m.row.weight),
      String(Math.round(m.missDays)),
      String(Math.round(m.centreDays)),
    ]),
)}
`;
}

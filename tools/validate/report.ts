import { verdicts } from '../../packages/engine/src/index.ts';
import { byGroup, latitudeBand } from '../score/by-group.ts';
import type { HardTest } from '../score/hard-tests.ts';
import { type Miss, type TimingScore, timingScore } from '../score/timing.ts';
import { balancedAccuracy, type VerdictPair } from '../score/verdicts.ts';

export type Score = {
  from: string;
  misses: readonly Miss[];
  nullMisses: readonly Miss[];
  coverage: number;
  pairs: readonly VerdictPair[];
  hardTests: readonly HardTest[];
};

const percent = (share: number) => `${Math.round(100 * share)} %`;
const days = (n: number) => n.toFixed(1);

function row(name: string, s: TimingScore): string {
  return `| ${name} | ${s.rows} | ${days(s.weight)} | ${percent(s.within7)} | ${percent(s.within10)} | ${days(s.meanMissDays)} | ${days(s.meanCentreErrorDays)} |`;
}

/** The score as a page. */
export function report(score: Score): string {
  const { misses, nullMisses, pairs } = score;
  const read = (m: Miss) => m.row.weight === 1;
  const full = timingScore(misses.filter(read), () => 1);
  const fullNull = timingScore(nullMisses.filter(read), () => 1);
  const weighted = timingScore(misses, (r) => r.weight);
  const weightedNull = timingScore(nullMisses, (r) => r.weight);
  const head =
    '| | rows | weight | within 7 d | within 10 d | mean miss, d | centre error, d |\n| --- | --- | --- | --- | --- | --- | --- |';
  const seen = new Set(pairs.map((pair) => pair.published));
  return `# How well the model meets published crops

Written by \`npm run validate\`; don't edit it here. Scored on ${score.from}.

A row is a published calendar or planting-date trial. The model runs from the start, middle and end of its start window in the
built-in climate without any warming; the prediction is the middle of the three neck falls plus one stated lag (5 days; 12 for
long-day types where the harvest month brings under 40 mm). The *miss* is the distance beyond the nearer edge of the harvest
window, the *centre error* the distance to its middle. A row weighs 1 where both windows were read in a source, 0.5 where one was,
0 where none was. Timing parameters were fitted on these rows, so this is a fit and not a test on places left out.

The *null model* is the median duration of the other rows of the same class and way of starting.

## Dates

${head}
${row('model, rows read in full', full)}
${row('null model, rows read in full', fullNull)}
${row('model, all rows by weight', weighted)}
${row('null model, all rows by weight', weightedNull)}

Centre error against the null model: ${percent(1 - full.meanCentreErrorDays / fullNull.meanCentreErrorDays)} lower on the rows read in full, ${percent(1 - weighted.meanCentreErrorDays / weightedNull.meanCentreErrorDays)} by weight.
Middle of the harvest window inside the predicted 10–90 % band (earliest start's p10 to latest start's p90): ${percent(score.coverage)} by weight.

### By class, way of starting and latitude (unweighted)

${head}
${[...byGroup(misses, (r) => r.class), ...byGroup(misses, (r) => r.start), ...byGroup(misses, latitudeBand)].map(([name, s]) => row(name, s)).join('\n')}

## What became of the crop

Rows with a stated outcome, and calendars read in full as good. Columns: what the model says of the middle of the start window.
Balanced accuracy over the outcomes that have rows: **${percent(balancedAccuracy(pairs))}**.

| published | rows | ${verdicts.join(' | ')} |
| --- | --- | ${verdicts.map(() => '---').join(' | ')} |
${verdicts
  .filter((v) => seen.has(v))
  .map((v) => {
    const of = pairs.filter((pair) => pair.published === v);
    return `| ${v} | ${of.length} | ${verdicts.map((p) => of.filter((pair) => pair.predicted === p).length).join(' | ')} |`;
  })
  .join('\n')}

## Hard tests

| | holds | found | source |
| --- | --- | --- | --- |
${score.hardTests.map((t) => `| ${t.name} | ${t.holds ? 'yes' : '**no**'} | ${t.found} | ${t.source} |`).join('\n')}

## What resists

Rows more than 10 days outside their window:

| row | place | class, start | weight | miss, d | centre, d |
| --- | --- | --- | --- | --- | --- |
${[...misses]
  .filter((m) => m.missDays > 10)
  .sort((a, b) => b.missDays - a.missDays)
  .map(
    (m) =>
      `| ${m.row.id} | ${m.row.place} | ${m.row.class}, ${m.row.start} | ${m.row.weight} | ${Math.round(m.missDays)} | ${Math.round(m.centreDays)} |`,
  )
  .join('\n')}
`;
}

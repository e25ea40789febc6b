import { byTrial, type SizeResult, sizeErrors } from '../score/size-scores.ts';
import { percent, table } from './table.ts';

/** Sizes of field trials, published against answered. */
export function sizePages(results: readonly SizeResult[], unseenResults: readonly SizeResult[]): string {
  const unseen = sizeErrors(unseenResults);
  const { levels, shapes, districts } = sizeErrors(results);
  const trialsOff = [...levels.values()].map(offBy);
  const treatmentsOff = [...shapes.values()].flat().map(offBy);
  const districtsOff = [...districts].filter(([, log]) => Math.abs(offBy(log)) > 0.35);
  return `## Bulb mass in field trials

Median bulb, g; answered: the median over weather years. Trials are fed, watered and weeded; a mean bulb is published and turned into the median plant. Level: the mean of a trial's treatments, answered against published; "–" where poor crops or remembered dates leave only the ratios between treatments.
Level: ${within(trialsOff)} of the trials with a level lie within 25 % (left out ${within([...unseen.levels.values()].map(offBy))}); off by more than 35 %: ${
    districtsOff.map(([district, log]) => `${district} (${signed(log)})`).join(', ') || 'no district'
  }. Shape: ${within(treatmentsOff)} of the treatments lie within 25 % of their trial once its level is taken out.

${table(
  ['trial', 'published → answered, g', 'level', 'left out', 'source'],
  [...byTrial(results)].map(([id, treatments]) => [
    id,
    treatments.map((result) => line(id, result)).join('; '),
    signed(levels.get(id)),
    signed(unseen.levels.get(id)),
    [...new Set(treatments.map(({ trial }) => trial.source))].join('; '),
  ]),
)}

${table(
  ['district', 'level', 'left out'],
  [...districts].map(([district, log]) => [district, signed(log), signed(unseen.districts.get(district))]),
)}
`;
}

/** Treatments are told apart by what their id adds to that of the trial. */
function line(id: string, { trial, answeredG }: SizeResult): string {
  const { lowG, highG, publishedG } = trial;
  const range = lowG === undefined || highG === undefined ? '' : ` (${round(lowG)}–${round(highG)})`;
  const name = trial.id.startsWith(`${id}-`) ? `${trial.id.slice(id.length + 1)}: ` : '';
  return `${name}${round(publishedG)}${range} → ${round(answeredG)}`;
}

const round = (n: number) => String(Math.round(n));

const offBy = (log: number) => Math.exp(log) - 1;

function within(off: readonly number[]): string {
  return percent(off.filter((x) => Math.abs(x) <= 0.25).length / off.length);
}

function signed(log: number | undefined): string {
  return log === undefined ? '–' : `${log >= 0 ? '+' : '−'}${percent(Math.abs(offBy(log)))}`;
}

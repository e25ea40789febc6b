import { isTold } from '../score/bolting-pairs.ts';
import { densityErrors } from '../score/density-trials.ts';
import { sapporoSets } from '../score/set-trial.ts';
import type { CropChecks } from './crop-checks.ts';
import { percent, table } from './table.ts';

const round = (n: number) => String(Math.round(n));

/** Sizes, sets, onsets, bolting, hard tests and stories. */
export function cropPages(checks: CropChecks): string {
  return [
    densities(checks),
    sets(checks),
    onsets(checks),
    bolting(checks),
    hard(checks),
    stories(checks),
  ].join('\n');
}

function densities({ densities: fits }: CropChecks): string {
  const { levels, shapes } = densityErrors(fits);
  const off = [...shapes.values()].flat().map((log) => Math.abs(Math.exp(log) - 1));
  return `## Bulb mass and plants per m²

Mean climate; dates of sowing are mostly memory, so a district's mean level is compared apart from the shape of each curve.
Shape: ${percent(off.filter((x) => x <= 0.25).length / off.length)} of the points lie within 25 % of their trial's curve once its level is taken out.

${table(
  ['trial', 'plants per m²: published → model, g', 'source'],
  fits.map(({ trial, predictedG }) => [
    trial.id,
    trial.masses.map(([d, g], i) => `${d}: ${round(g)} → ${round(predictedG[i])}`).join(', '),
    trial.source,
  ]),
)}

${table(
  ['district', 'level, model against published'],
  [...levels].map(([district, log]) => [
    district,
    `${log >= 0 ? '+' : '−'}${percent(Math.abs(Math.exp(log) - 1))}`,
  ]),
)}
`;
}

function sets({ sets: results }: CropChecks): string {
  return `## Sets by size

Sapporo 1949–50, planted 25 April (hro.or.jp 1950012).

${table(
  ['set, mm', 'bolted', 'bulb, g', 'days to ripeness'],
  sapporoSets.map((published, i) => [
    String(published.setSizeMm),
    `${percent(published.bolted)} → ${percent(results[i].bolted)}`,
    `${published.massG} → ${round(results[i].massG)}`,
    `${published.ripeDays} → ${results[i].ripeDays ?? 'never'}`,
  ]),
)}
`;
}

function onsets({ onsets: found }: CropChecks): string {
  return `## When bulbs start

${table(
  ['crop', 'published', 'model, days late', 'source'],
  found.map(({ of, days }) => [
    of.id,
    [...new Set(of.onset)].join(' to '),
    days === null ? 'no bulb' : round(days),
    of.source,
  ]),
)}
`;
}

function bolting({ shares, pairs }: CropChecks): string {
  return `## Bolting

Share of plants, mean climate. "Told": the first bolts by ten points more, or half again as much and five points.

${table(
  ['pair', 'bolts', 'stands', 'told', 'source'],
  pairs.map((result) => [
    result.pair.id,
    percent(result.bolts),
    percent(result.stands),
    isTold(result) ? 'yes' : '**no**',
    result.pair.source,
  ]),
)}

${table(
  ['crop', 'published', 'model', 'source'],
  shares.map(({ of, predicted }) => [of.id, percent(of.bolted), percent(predicted), of.source]),
)}
`;
}

function hard({ hardTests }: CropChecks): string {
  return `## Hard tests

${table(
  ['', 'holds', 'found', 'source'],
  hardTests.map((t) => [t.name, t.holds ? 'yes' : '**no**', t.found, t.source]),
)}
`;
}

function stories({ stories: told }: CropChecks): string {
  return `## Stories an expert would tell (memory, with tolerance)

${table(
  ['story', 'told'],
  told.map(({ id, misses }) => [id, misses.length === 0 ? 'yes' : `no: ${misses.join('; ')}`]),
)}
`;
}

import { isTold } from '../score/bolting-pairs.ts';
import { sapporoSets } from '../score/set-trial.ts';
import type { CropChecks } from './crop-checks.ts';
import { sizePages } from './size-pages.ts';
import { percent, table } from './table.ts';

const round = (n: number) => String(Math.round(n));

/** Sizes, sets, onsets, bolting, hard tests and stories. */
export function cropPages(checks: CropChecks): string {
  return [
    sizePages(checks.sizes, checks.unseenSizes),
    sets(checks),
    dated(checks),
    bolting(checks),
    hard(checks),
    practice(checks),
    stories(checks),
  ].join('\n');
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

function dated({ dated: found, unseenDated }: CropChecks): string {
  const unseen = new Map(unseenDated.map(({ of, days }) => [of.id, days]));
  const say = (days: number | null | undefined) =>
    days === null || days === undefined ? 'never' : round(days);
  return `## When bulbs start and tops go over

${table(
  ['crop', 'seen', 'published', 'answered, days late', 'left out', 'source'],
  found.map(({ of, days }) => [
    of.id,
    of.seen === 'onset' ? 'bulbs start' : 'tops over',
    [...new Set(of.on)].join(' to '),
    say(days),
    say(unseen.get(of.id)),
    of.source,
  ]),
)}
`;
}

function bolting({ shares, pairs }: CropChecks): string {
  return `## Bolting

Share of plants, median over weather years. "Told": the first bolts by ten points more, or half again as much and five points.

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

function practice({ practice: tests }: CropChecks): string {
  return `## What growers of a place know (common practice, no source)

${table(
  ['', 'holds', 'found', 'misses'],
  tests.map((t) => [t.name, t.holds ? 'yes' : '**no**', t.found, t.misses.join('; ') || '–']),
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

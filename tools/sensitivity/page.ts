import { table } from '../validate/table.ts';
import type { Place } from './places.ts';
import { cropWords, dateWords, laterWords, signed } from './say.ts';
import type { Change, FactorChange, Study } from './study.ts';

/** The page docs/sensitivity.md. */
export function sensitivityPage(studies: readonly Study[]): string {
  return `${[
    '# What moves the answer most',
    "Written by `npm run sensitivity` (`tools/sensitivity`); don't edit it here.",
    [
      'At each of six places the best crop that the survey finds was grown again over the same thirty years of weather with one',
      'thing made otherwise. Figures are changes of the middle of those years, in the terms of [how it works](how-it-works.md).',
      'Steps of the day length needed, leaf pace and ripening are about the errors that every answer already allows for; ten days,',
      'half or twice the plants, and no watering are what a grower may do; a degree is what sets a warm year from a cool one.',
    ].join('\n'),
    '![Bars of what each step does to the day tops go over and to the width of the bulb, at six places](sensitivity.svg)',
    '## Over all six',
    overall(studies),
    overallTable(studies),
    'Each cell: the larger of the two steps, without its sign, as the mean of the six places and, in brackets, the largest.',
    ...studies.flatMap(placeSection),
    '## How this is used',
    usage(studies),
    '## What it does not tell',
    [
      '- One thing is moved at a time, from one crop a place. Another type or start hangs on other things: an autumn sowing on its',
      '  winter, sets on their size and store.',
      '- A degree is added to every day of the year. A warm spring alone moves bulbing, a warm summer alone ripening.',
      '- Parameters of the model that stand in no row (growth, leaf area, cold) are told by [parameters](parameters.md); what the',
      '  model misses altogether is told by [validation](validation.md), not by this page.',
      '- *Good seasons* has edges: a bulb a millimetre under the limit of *small* turns a season over.',
    ].join('\n'),
  ].join('\n\n')}\n`;
}

function overall(studies: readonly Study[]): string {
  const [fall] = ranked(studies, daysOf);
  const [size] = ranked(studies, mmOf);
  const names = [...new Set(studies.map((study) => strongest(study, daysOf).name))];
  const leads = names.map((name) => {
    const at = studies.filter((study) => strongest(study, daysOf).name === name);
    return `${name} at ${at.map(({ place }) => place.name).join(', ')}`;
  });
  return [
    `Taken together, **${fall.name}** moves the day tops go over most (${fall.mean.toFixed(1)} days in the mean of the places)`,
    `and **${size.name}** the width of the bulb (${size.mean.toFixed(1)} mm).`,
    `By days, what leads is ${leads.join('; ')}.`,
  ].join('\n');
}

function overallTable(studies: readonly Study[]): string {
  const figures = [
    { head: 'onset, days', of: (change: Change) => change.onsetDays, digits: 1 },
    { head: 'neck fall, days', of: (change: Change) => change.neckFallDays, digits: 1 },
    { head: 'bulb, mm', of: (change: Change) => change.diameterMm, digits: 1 },
    { head: 'bolted, plants in 100', of: (change: Change) => 100 * change.boltedShare, digits: 1 },
    { head: 'good seasons in 30', of: (change: Change) => 30 * change.goodShare, digits: 1 },
  ];
  const rows = studies[0].changes.map(({ factor }, row) => [
    factor.label,
    ...figures.map(({ of, digits }) => {
      const sizes = studies.map((study) => larger(study.changes[row], of));
      const known = sizes.filter(Number.isFinite);
      if (known.length === 0) return 'never';
      const mean = known.reduce((a, b) => a + b, 0) / known.length;
      const never = sizes.length - known.length;
      const most = never > 0 ? `never at ${never}` : Math.max(...known).toFixed(digits);
      return `${mean.toFixed(digits)} (${most})`;
    }),
  ]);
  return table(['', ...figures.map(({ head }) => head)], rows);
}

function placeSection(study: Study): string[] {
  const { place, plan, usual, changes } = study;
  const rows = changes.flatMap(({ less, more }) => (less ? [less, more] : [more]).map(cells));
  return [
    `## ${place.name}`,
    [
      `${capital(place.what)}: ${pointWords(place)}. Usual crop: ${cropWords(plan)}, ${dateWords(plan.startDay)};`,
      `onset ${dateWords(usual.onsetDay)}, neck fall ${dateWords(usual.neckFallDay)}, ${millimetres(usual.diameterMm)},`,
      `bolted ${(100 * usual.boltedShare).toFixed(0)} in 100, good seasons ${(30 * usual.goodShare).toFixed(0)} in 30.`,
    ].join('\n'),
    sentences(study),
    table(['', 'onset, days', 'neck fall, days', 'bulb, mm', 'bolted, in 100', 'good, in 30'], rows),
  ];
}

function cells({ shift, onsetDays, neckFallDays, diameterMm, boltedShare, goodShare }: Change): string[] {
  return [
    shift.words,
    signed(onsetDays),
    signed(neckFallDays),
    signed(diameterMm, 1),
    signed(100 * boltedShare, 1),
    signed(30 * goodShare),
  ];
}

/** What matters most here, for dates, size and luck. */
function sentences(study: Study): string {
  const days = strongestChange(study, daysOf);
  const size = strongestChange(study, mmOf);
  const luck = strongestChange(study, seasonsOf);
  const seasons = seasonsOf(luck.change) ?? 0;
  const parts = [
    `The day tops go over moves most with **${days.factor.name}**: ${days.change.shift.words}, ${laterWords(days.change.neckFallDays)}.`,
    `The bulb changes most with **${size.factor.name}**: ${size.change.shift.words}, ${signed(size.change.diameterMm, 1)} mm.`,
    Math.round(seasons) === 0
      ? 'No step costs or brings a good season.'
      : `Good seasons change most with **${luck.factor.name}**: ${luck.change.shift.words}, ${signed(seasons)} in 30.`,
  ];
  const { outcome } = study.usual;
  const turned = study.changes
    .flatMap(({ less, more }) => (less ? [less, more] : [more]))
    .filter(({ answer }) => answer.outcome !== outcome)
    .map(({ shift, answer }) => `${shift.words} (${answer.outcome})`);
  if (turned.length > 0) parts.push(`No longer *${outcome}*: ${turned.join(', ')}.`);
  return parts.join('\n');
}

const causes = ['warmth', 'day-length', 'start'] as const;

function usage(studies: readonly Study[]): string {
  const differing = studies.flatMap((study) => {
    const { place, pulls } = study;
    const said = pulls?.[0].cause ?? null;
    const found = causes[leadOfThree(study)];
    return said === found ? [] : [`${place.name} (said: ${said ?? 'nothing'}; over thirty years: ${found})`];
  });
  return [
    'The line *What the tops hang on most here* in *How we know* is worked out afresh for every answer by `whatMovesIt`',
    '(`packages/engine/src/choice`): seven seasons of the mean climate, as it is and with a degree, 0.3 h and ten days more and',
    `less. Of these three it names the one that leads in the tables above at ${studies.length - differing.length} of the ${studies.length} places`,
    differing.length === 0 ? '.' : `; it differs at ${differing.join(', ')}.`,
  ]
    .join('\n')
    .replace(/\n([.;])/, '$1');
}

/** Which of the first three factors leads over the thirty years. */
function leadOfThree({ changes }: Study): number {
  const sizes = changes.slice(0, causes.length).map((change) => larger(change, daysOf));
  return sizes.indexOf(Math.max(...sizes));
}

type Measure = (change: Change) => number | null;
const daysOf: Measure = (change) => change.neckFallDays;
const mmOf: Measure = (change) => change.diameterMm;
const seasonsOf: Measure = (change) => 30 * change.goodShare;

/** Size of a change; one after which the thing never happens is larger than any. */
function sizeOf(change: Change | null, of: Measure): number {
  if (change === null) return 0;
  const value = of(change);
  return value === null ? Number.POSITIVE_INFINITY : Math.abs(value);
}

function larger({ less, more }: FactorChange, of: Measure): number {
  return Math.max(sizeOf(less, of), sizeOf(more, of));
}

function strongest({ changes }: Study, of: Measure): FactorChange['factor'] {
  return changes.reduce((a, b) => (larger(b, of) > larger(a, of) ? b : a)).factor;
}

function strongestChange(study: Study, of: Measure): { factor: FactorChange['factor']; change: Change } {
  const factor = strongest(study, of);
  const { less, more } = study.changes.find((change) => change.factor === factor) as FactorChange;
  return { factor, change: less !== null && sizeOf(less, of) > sizeOf(more, of) ? less : more };
}

function ranked(studies: readonly Study[], of: Measure): { name: string; mean: number }[] {
  return studies[0].changes
    .map(({ factor }, row) => {
      const sizes = studies.map((study) => larger(study.changes[row], of)).filter(Number.isFinite);
      return { name: factor.name, mean: sizes.reduce((a, b) => a + b, 0) / Math.max(1, sizes.length) };
    })
    .toSorted((a, b) => b.mean - a.mean);
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function pointWords({ latitudeDeg, longitudeDeg, elevationM }: Place): string {
  const latitude = `${Math.abs(latitudeDeg).toFixed(1)}° ${latitudeDeg < 0 ? 'S' : 'N'}`;
  const longitude = `${Math.abs(longitudeDeg).toFixed(1)}° ${longitudeDeg < 0 ? 'W' : 'E'}`;
  return `${latitude}, ${longitude}, ${elevationM} m`;
}

function millimetres(diameterMm: number | null): string {
  return diameterMm === null ? 'no bulb' : `${diameterMm.toFixed(0)} mm`;
}

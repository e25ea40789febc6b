import { table } from '../validate/table.ts';
import type { DemoSeason } from './demo.ts';
import { dayWords } from './figure.ts';
import { figuresOf } from './figures.ts';
import type { Setting } from './places.ts';
import { type Known, knowns, type TwinForecasts } from './study.ts';

export type Studied = { setting: Setting; allowed: TwinForecasts[]; plantsAlone: TwinForecasts[] };

const heads: Record<Known, string> = {
  plan: 'the plan alone',
  weather: 'and the weather till then',
  'leaves-alone': 'leaf counts, no weather',
  leaves: 'leaf counts and weather',
  widths: 'and callipers, till bulbs are seen',
  'second-year': 'leaf counts, weather and last year',
  'all-but-ripening': 'all but ripening and what comes',
};

/** The page docs/learning.md. */
export function learningPage(studied: readonly Studied[], demo: DemoSeason): string {
  const allowed = studied.flatMap((of) => of.allowed);
  const alone = studied.flatMap((of) => of.plantsAlone);
  const { steps, fellDay } = demo;
  const first = steps[0].fall;
  const last = steps[steps.length - 1].fall;
  return `${[
    '# A forecast that learns',
    "Written by `npm run twins` (`tools/twins`); don't edit it here.",
    [
      'What is noted of a crop weighs 300 draws of its plants (`packages/engine/src/learn`): how many °C d a leaf takes, the day',
      'length bulbs need, how fast they ripen and, once bulbs are measured or weighed, how much they grow. Each draw is grown in',
      'the weather that came and then in a made-up year; those that would have looked like what was seen count for more. Where',
      'few of them do, new ones are drawn near those (population Monte Carlo), so that the answer never hangs on a handful; how',
      'many equal draws it is worth is told (`effectiveDraws`). Nothing noted: the answer is the ordinary one, to the last digit.',
    ].join('\n'),
    '![The forecast of the day tops go over at the demo garden, drawing in from visit to visit](learning.svg)',
    `There the 8 seasons in 10 lie ${first.p90 - first.p10} days apart before the first visit and ${last.p90 - last.p10} at the end; tops went over on ${dayWords(fellDay)}.`,
    '## Twins',
    [
      `Seasons of the model with hidden plants in hidden weather stand for real ones: ${allowed.length} twins at eight places. Every ten days from`,
      'three weeks after planting a grower counts the leaves of ten plants, which differ by 8 in 100, gets one count in five wrong',
      'by a leaf, and rounds; with callipers, neck and bulb of ten plants as well. The forecasts are those made the day bulbs',
      'start (with callipers, of the first visit that sees bulbs, at most ten days later): how many days they are out in the',
      'mean of when tops go over, and how often their 8 in 10 hold the day. *Last year* is a season of the same plants, but for',
      'what the year brought, whose leaves were counted and whose tops were seen to go over.',
    ].join('\n'),
    '### As far apart as answers allow',
    [
      'Plants as far from the middle of their kind as every answer allows for (day length needed 0.4 h, ripening 30 in 100,',
      'leaf pace 10 in 100, growth 25 in 100, one standard deviation each), of which four tenths come anew each year.',
    ].join('\n'),
    overall(allowed),
    placesTable(studied, ({ allowed: twins }) => twins),
    reading(allowed),
    '### As far apart as plants of a kind are by themselves',
    [
      'The same with hidden plants that differ less (0.25 h, 6, 8 and 25 in 100: memory), while answers go on allowing for all',
      'that they do not know, so that their bands hold nearly every day.',
    ].join('\n'),
    overall(alone),
    placesTable(studied, ({ plantsAlone: twins }) => twins),
    '## What it does not tell',
    [
      '- A twin obeys the model. Real crops differ from it in ways that no draw has: pests, hail, a bed that is not as described.',
      '- Leaves and bulbs before they ripen say next to nothing of how fast they will: only tops that go over do. What was seen of',
      '  them last year is the best guess for the same onion in the same place, which is why it is carried over.',
      '- What lasts from year to year and what each year brings anew (six and four tenths) is set by hand: two published sources',
      '  of one district agree within ten days in 83 of 100 crops.',
      '- Spreads between plants and of counts are common practice and memory; no trial of leaf counts was found.',
    ].join('\n'),
  ].join('\n\n')}\n`;
}

function overall(twins: readonly TwinForecasts[]): string {
  const figures = figuresOf(twins);
  const below = (known: Known, than: Known) =>
    `${Math.round(100 * (1 - figures[known].meanErrorDays / figures[than].meanErrorDays))}%`;
  const rows = knowns.map((known) => {
    const { meanErrorDays, holds, widthDays } = figures[known];
    return [
      heads[known],
      meanErrorDays.toFixed(1),
      known === 'plan' ? '' : below(known, 'plan'),
      known === 'plan' || known === 'weather' ? '' : below(known, 'weather'),
      `${Math.round(100 * holds)}%`,
      widthDays.toFixed(0),
    ];
  });
  return table(
    [
      'what is known',
      'days out',
      'less than by the plan',
      'less than by plan and weather',
      'held by 8 in 10',
      'days wide',
    ],
    rows,
  );
}

function placesTable(studied: readonly Studied[], of: (studied: Studied) => TwinForecasts[]): string {
  const shown = ['plan', 'weather', 'leaves', 'widths', 'second-year', 'all-but-ripening'] as const;
  const rows = studied.map((place) => {
    const figures = figuresOf(of(place));
    return [
      `${place.setting.name}, ${place.setting.words}`,
      ...shown.map((known) => figures[known].meanErrorDays.toFixed(1)),
    ];
  });
  return table(['days out', ...shown.map((known) => heads[known])], rows);
}

function reading(twins: readonly TwinForecasts[]): string {
  const figures = figuresOf(twins);
  const less = (known: Known) =>
    Math.round(100 * (1 - figures[known].meanErrorDays / figures.weather.meanErrorDays));
  const most = Math.round(
    100 * (1 - figures['all-but-ripening'].meanErrorDays / figures.weather.meanErrorDays),
  );
  return [
    `In a first year leaf counts make forecasts ${less('leaves')}% better than the weather alone, and with callipers ${less('widths')}%; who knew`,
    `everything but how fast bulbs ripen would gain ${most}%, so little is left to learn before tops go over. From the second year`,
    `on, with what the first told, it is ${less('second-year')}%.`,
  ].join('\n');
}

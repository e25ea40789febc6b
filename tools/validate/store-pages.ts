import { type ScoredCase, scoreStore } from '../store/score-store.ts';
import { earlyLooks, type StoreTwin, storeStudy, storeTwinFigures } from '../twins/store-study.ts';
import { percent, table } from './table.ts';

/** Twins of each kind in each store and place. */
export const storeTwinsEach = 3;

/** Published losses in store against the model, and what a grower's own looks teach it. */
export function storePages(
  cases = scoreStore(),
  twins = storeStudy(storeTwinsEach),
  early = storeStudy(storeTwinsEach, earlyLooks),
): string {
  const misses = cases.filter(({ isIn }) => !isIn);
  return `## The store

Losses in store that were read in a source, beside the model's with the usual rates and, in brackets, 8 in 10 of the draws of stores
and lots. Kinds keep as long as the catalogue says (memory). Three rates (rot at 2 °C, water lost a kPa, what warmth does in deep rest) and the spread of the draws
were set by hand on these very rows, and one (how much faster rest ends at 15 °C than at 1 °C) is a published ratio, so this is a fit and
no test: ${cases.length - misses.length} of ${cases.length} rows lie in their band, to half of one per cent as they are printed. Rows of one trial are not independent.

${table(['row', 'what', 'published', 'model', 'in band', 'not printed there'], cases.map(caseRow))}

### What it misses

${misses.map(({ of }) => `- ${of.name} (${of.measure}): ${why(of.name)}`).join('\n')}

Left out, since too little of the conditions is printed: winter stores at Kitami (neither length nor warmth), three months in Korea,
onion sets at Lublin (no length), controlled air in Denmark, and how storage is said to be in India (memory). What was read of one
Danish trial fixes the pace of sprouting and is not in the table: ten days at 15 °C do as much as a month at 1 °C (Sorensen & Grevsen
2001, J. Hort. Sci. Biotech. 76:501–506).

### Looks at the store

${twinText(twins, early)}
`;
}

function caseRow({ of, usual, band, isIn }: ScoredCase): string[] {
  const text = of.measure === 'lasts' ? (days: number) => `${Math.round(days)} d` : percent;
  const [low, high] = of.published;
  return [
    `${of.name} (${of.source})`,
    of.measure,
    low === high ? text(low) : `${text(low)}–${text(high)}`,
    `${text(usual)} (${text(band.p10)}–${text(band.p90)})`,
    isIn ? 'yes' : 'no',
    of.told,
  ];
}

const reasons: readonly (readonly [start: string, why: string])[] = [
  [
    'Bangladesh',
    'bought onions of unknown age lost five times as much a month as those of Tandojam did in hotter air; no one rate meets both.',
  ],
  [
    'Denmark',
    'tops were cut 8 cm above the bulb at lifting, before necks were dry, which may let rot in (our guess); the model is told of no such cut.',
  ],
  [
    'Tandojam',
    'the best of three ways of keeping; air moved through the rack, which the model does not know.',
  ],
  [
    'England',
    'our guess: drying at 30 °C held sprouting, and the kind kept longer than the catalogue says of those that stand the winter.',
  ],
  ['mild', 'a shop calls them over long before half are lost, which is what is computed.'],
];

function why(name: string): string {
  return reasons.find(([start]) => name.startsWith(start))?.[1] ?? 'no reason known.';
}

function twinText(twins: readonly StoreTwin[], early: readonly StoreTwin[]): string {
  const all = storeTwinFigures(twins);
  const soon = storeTwinFigures(early);
  const rows = [...new Set(twins.map(({ store }) => store))].map((store) => {
    const of = storeTwinFigures(twins.filter((twin) => twin.store === store));
    return [
      store,
      of.untaughtDays.toFixed(1),
      of.taughtDays.toFixed(1),
      percent(of.lessShare),
      percent(of.heldShare),
    ];
  });
  return `${twins.length} made-up growers, of four kinds in four stores at three places, have a store that differs from the usual as the draws
allow. Each looks at 150 bulbs three times, after a quarter, half and three quarters of the time in which half are lost in a usual store, and
takes the bad ones out; those whose lot was over by then are not counted, since nothing was left to forecast. How many days the forecast of the day on which fewer than half are sound is out falls from ${all.untaughtDays.toFixed(1)} to ${all.taughtDays.toFixed(1)}, by ${percent(all.lessShare)}. Looks after ${percent(earlyLooks[0])}, ${percent(earlyLooks[1])} and ${percent(earlyLooks[2])} of it teach less,
from ${soon.untaughtDays.toFixed(1)} to ${soon.taughtDays.toFixed(1)} days, by ${percent(soon.lessShare)}: most is learnt once the first bulbs sprout.

${table(['store', 'untaught, days out', 'after three looks', 'less', 'held by 8 in 10'], rows)}

These growers obey the model; a real store differs from it in ways that no draw has.`;
}

import type { Figures, Scored } from '../score/score.ts';
import type { CropChecks } from './crop-checks.ts';
import { cropPages } from './crop-pages.ts';
import { datePages } from './date-pages.ts';
import { type LeadChecks, leadPages } from './lead-pages.ts';
import { percent, table } from './table.ts';
import { verdictPages } from './verdict-pages.ts';

type Intervals = Record<keyof Figures, [number, number]>;

export type Score = {
  from: string;
  /** The values in use, fitted on these very rows. */
  fit: { scored: Scored; figures: Figures };
  /** Each row under the values fitted without its neighbourhood; null where the folds are of other rows. */
  unseen: { scored: Scored; figures: Figures; intervals: Intervals };
  nothing: Scored['misses'];
  crops: CropChecks;
  leads: LeadChecks;
  /** What each fitted number buys, as a page. */
  numbers: string;
  /** What becomes of onions in store, as a page. */
  store: string;
};

/** The score as a page. */
export function report(score: Score): string {
  return `# How well the model meets published crops

Written by \`npm run validate\`; don't edit it here. Scored on ${score.from}.

A row is a published calendar or planting-date trial. The model runs from the start, middle and end of its start window in thirty
weather years of the built-in climate without any warming, each with a draw of the kind; what is compared is what a reader is told:
the median over the years, the middle one of the three neck falls, plus one stated lag (5 days; 12 for
long-day types where the harvest month brings under 40 mm). The *miss* is the distance beyond the nearer edge of the harvest
window, the *centre error* the distance to its middle. A row weighs 1 where both windows were read in a source, 0.5 where one was,
0 where none was.

The *fit* uses the parameters in use, which were fitted on these rows. *Left out* judges each row by parameters fitted without
any place of its neighbourhood (cells of 2°, ten folds; tools/calibrate/fold-values.json), with 90 % bootstrap intervals over rows.
The *null model* is the median duration of the other rows of the same class and way of starting.

## In short

${summary(score)}

${datePages(score)}
${verdictPages(score)}
${leadPages(score.leads)}
${cropPages(score.crops)}

${score.store}
${score.numbers}`;
}

/** What the project aims at, on places left out. */
const aims: Record<keyof Figures, { aim: string; text: (n: number) => string; name: string }> = {
  within10: { name: 'within 10 days', aim: '≥ 88 %', text: percent },
  within7: { name: 'within 7 days', aim: '≥ 82 %', text: percent },
  meanMissDays: { name: 'mean miss, days', aim: '–', text: (n) => n.toFixed(1) },
  centreErrorDays: {
    name: 'centre error, days',
    aim: '55 % below the null model',
    text: (n) => n.toFixed(1),
  },
  coverage: { name: 'in the 10–90 % band', aim: '70–90 %', text: percent },
  balancedAccuracy: { name: 'balanced accuracy of what became of the crop', aim: '≥ 70 %', text: percent },
};

function summary({ fit, unseen }: Score): string {
  return table(
    ['', 'fit', 'left out', '90 % interval', 'aim'],
    (Object.keys(aims) as (keyof Figures)[]).map((name) => {
      const { text, aim } = aims[name];
      const [low, high] = unseen.intervals[name];
      return [
        aims[name].name,
        text(fit.figures[name]),
        text(unseen.figures[name]),
        `${text(low)} – ${text(high)}`,
        aim,
      ];
    }),
  );
}

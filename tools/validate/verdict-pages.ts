import { verdicts } from '../../packages/engine/src/index.ts';
import { balancedAccuracy, type VerdictPair } from '../score/verdicts.ts';
import type { Score } from './report.ts';
import { percent, table } from './table.ts';

/** What became of the crop, published against predicted. */
export function verdictPages({ fit, unseen }: Score): string {
  const wrong = fit.scored.pairs.filter((pair) => pair.published !== pair.predicted);
  return `## What became of the crop

Rows with a stated outcome, and calendars read in full as good. Columns: what the model says of the middle of the start window.

Left out, balanced accuracy over the outcomes that have rows: **${percent(balancedAccuracy(unseen.scored.pairs))}**.

${matrix(unseen.scored.pairs)}

Fit: **${percent(balancedAccuracy(fit.scored.pairs))}**.

${matrix(fit.scored.pairs)}

Rows told otherwise in the fit: ${wrong.map(({ row, published, predicted }) => `${row.id} (${published}, told ${predicted})`).join('; ')}.
`;
}

function matrix(pairs: readonly VerdictPair[]): string {
  const seen = verdicts.filter((verdict) => pairs.some((pair) => pair.published === verdict));
  return table(
    ['published', 'rows', ...verdicts],
    seen.map((verdict) => {
      const of = pairs.filter((pair) => pair.published === verdict);
      return [
        verdict,
        String(of.length),
        ...verdicts.map((told) => String(of.filter((pair) => pair.predicted === told).length)),
      ];
    }),
  );
}

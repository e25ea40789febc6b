import { whyOf } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { symptomList, whyDocument } from '../documents/why-document.ts';
import { csv } from '../output/csv.ts';
import { refuse } from '../refusal/refusal.ts';
import { symptomsText, whyText } from '../text/why-text.ts';
import type { Answer } from './answer.ts';
import { openWhy, type RawWhy } from './why-asked.ts';

/** Why a crop came to what was seen of it. @param target a garden file with `--planting`, else a place */
export function whyAnswer(target: string | undefined, raw: RawWhy, speaker: Speaker): Answer {
  const open = openWhy(target, raw, speaker);
  const told = { ...open, answer: whyOf(open.frame.site, open.asked) };
  return {
    text: () => whyText(told),
    json: () => whyDocument(told),
    csv: () => {
      throw refuse('no-table', { field: '--csv', expected: '--list' });
    },
    warnings: open.frame.warnings,
  };
}

/** What may be seen of a crop. */
export function symptomsAnswer(speaker: Speaker): Answer {
  return {
    text: () => symptomsText(speaker),
    json: () => symptomList(speaker),
    csv: () => csv(symptomList(speaker)),
    warnings: [],
  };
}

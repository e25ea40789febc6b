import { type HandoutFacts, namedOf } from '@neckfall/answers';
import type { Speaker } from '@neckfall/words';
import { cropLineOf, yearLineOf } from '../year-line/index.ts';
import type { SheetYear } from './fit-sheet.ts';

/** The year line of a sheet: without today, since a sheet hangs for long. */
export function handoutYear(facts: HandoutFacts, speaker: Speaker): SheetYear {
  const { year, needSunUpH, days } = facts.picture;
  const { summary } = namedOf(facts);
  const crop = facts.crop && days.length > 0 ? cropLineOf(summary, days, speaker) : null;
  return yearLineOf({ year, needSunUpH, today: null, crop, speaker });
}

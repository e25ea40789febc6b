import { type HandoutOwn, handoutLimits, measuredOwn } from '@neckfall/answers';
import { type Paper, papers } from '@neckfall/pictures';
import type { Speaker, Units } from '@neckfall/words';
import { refuse } from '../refusal/refusal.ts';
import { parseChoice } from '../values/choice.ts';

/** What is said of a sheet, be it by options or in a row. */
export type RawSheet = {
  heading?: string | undefined;
  note?: string | undefined;
  paper?: string | undefined;
};

/** @param flag how a field is called where it was said */
export function readSheet(
  { heading, note, paper }: RawSheet,
  units: Units,
  speaker: Pick<Speaker, 'any'>,
  flag: (name: keyof RawSheet) => string,
): { own: HandoutOwn; paper: Paper } {
  return {
    own: {
      heading: ownWords('heading', heading, flag('heading')),
      note: ownWords('note', note, flag('note')),
    },
    paper:
      paper === undefined
        ? units === 'us'
          ? 'letter'
          : 'a4'
        : parseChoice(paper, flag('paper'), Object.keys(papers) as Paper[], speaker),
  };
}

function ownWords(name: keyof typeof handoutLimits, text: string | undefined, field: string): string | null {
  if (text === undefined) return null;
  const { words, characters, isTooLong } = measuredOwn(name, text);
  const most = handoutLimits[name];
  const values = { words, characters, mostWords: most.words, mostCharacters: most.characters };
  if (isTooLong) throw refuse('sheet-too-long', { field, values });
  return text;
}

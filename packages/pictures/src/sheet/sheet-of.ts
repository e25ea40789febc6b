import type { Handout, HandoutLine } from '@neckfall/answers';
import type { Block, Part, Sheet } from './sheet.ts';

type Told = Pick<Sheet, 'heading' | 'top' | 'note' | 'caption' | 'columns' | 'cautions' | 'foot'>;

/** Shares of a column that the cells of its rows take. */
const whenShares = [0.33, 0.3, 0.37];
const workShares = [0.4, 0.6];

const text = (look: 'dateline' | 'verdict' | 'because' | 'small', words: string): Block => ({
  kind: 'text',
  look,
  text: words,
});
const list = (items: readonly string[]): Block => ({ kind: 'list', look: 'body', items });

/** Numbers of what may be left out of a sheet, the first to go first. @param caption may go too, in its turn */
export function sparesOf({ because, work, sure, sources }: Handout, caption: string | null): number[] {
  const found = [...because, ...work, ...sure, ...sources].flatMap(({ spare }) => spare ?? []);
  return [...new Set(caption === null ? found : [...found, captionSpare])].sort((a, b) => a - b);
}

const captionSpare = 45;

/** What stands where, once the lines of some numbers are left out. */
export function toldOn(handout: Handout, caption: string | null, leftOut: ReadonlySet<number>): Told {
  const { buy, when, whenHead, signs, year, work, cautions, titles } = handout;
  const kept = <Line extends HandoutLine>(lines: readonly Line[]) =>
    lines.filter(({ spare }) => spare === null || !leftOut.has(spare));
  const words = (lines: readonly HandoutLine[]) => kept(lines).map((line) => line.text);
  const part = (title: string, items: number, block: Block): Part[] =>
    items > 0 ? [{ title, blocks: [block] }] : [];
  return {
    heading: handout.heading,
    top: [
      text('dateline', handout.dateline),
      text('verdict', handout.verdict),
      ...words(handout.because).map((sentence) => text('because', sentence)),
    ],
    note: handout.note,
    caption: leftOut.has(captionSpare) ? null : caption,
    columns: [
      [
        ...part(titles.buy, buy.length, list(buy)),
        ...part(titles.when, when.length, {
          kind: 'rows',
          head: [whenHead.what, whenHead.middle, whenHead.range],
          rows: when.map(({ what, middle, range }) => [what, middle, range]),
          shares: whenShares,
        }),
        ...part(titles.signs, signs.length, list(signs)),
        ...part(titles.year, year.length, list(year)),
      ],
      part(titles.work, work.length, {
        kind: 'rows',
        head: null,
        rows: kept(work).map(({ days, text: what }) => [days, what]),
        shares: workShares,
      }),
    ],
    cautions: { title: titles.cautions, blocks: [list(cautions)] },
    foot: {
      title: titles.sure,
      blocks: [list(words(handout.sure)), text('small', words(handout.sources).join(' '))],
    },
  };
}

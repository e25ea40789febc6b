import type { Block, Measure, Part, Sheet } from './sheet.ts';
import { gaps, type Look, looks, papers } from './sheet-look.ts';
import { wrapWords } from './wrap-words.ts';

/** Something set on a page, in points from its upper left corner. */
export type Placed =
  | { kind: 'line'; look: Look; x: number; y: number; text: string; group: number }
  | { kind: 'rule'; x: number; y: number; width: number }
  | { kind: 'dot'; x: number; y: number }
  | { kind: 'tint'; x: number; y: number; width: number; height: number }
  | { kind: 'picture'; x: number; y: number; width: number; height: number };

/** What a group of lines is to those who listen; cells of one row have its number. */
export type Group = { tag: 'H1' | 'H2' | 'P' | 'LI' | 'TH' | 'TD'; row: number };

export type Setting = { placed: Placed[]; groups: Group[]; bottom: number };

/** Sets a sheet: every line with its place. `y` of a line is the top of it; `bottom` may lie below the page. */
export function setSheet(sheet: Omit<Sheet, 'leftOut'>, measure: Measure): Setting {
  const { scale } = sheet;
  const paper = papers[sheet.paper];
  const placed: Placed[] = [];
  const groups: Group[] = [];
  const left = gaps.margin;
  let rowsSet = 0;
  const width = paper.widthPt - 2 * gaps.margin;

  function words(
    text: string,
    look: Look,
    tag: Group['tag'],
    x: number,
    y: number,
    wide: number,
    row = 0,
  ): number {
    const { face, sizePt, line } = looks[look];
    const size = sizePt * scale;
    groups.push({ tag, row });
    const lines = wrapWords(text, wide / size, (some) => measure(some, face));
    for (const [at, some] of lines.entries())
      placed.push({ kind: 'line', look, x, y: y + at * size * line, text: some, group: groups.length - 1 });
    return y + lines.length * size * line;
  }

  function block(one: Block, x: number, y: number, wide: number): number {
    if (one.kind === 'text') return words(one.text, one.look, 'P', x, y, wide);
    if (one.kind === 'list') return list(one, x, y, wide);
    const { head, rows, shares } = one;
    let at = y;
    for (const [index, cells] of [...(head ? [head] : []), ...rows].entries()) {
      const isHead = head !== null && index === 0;
      if (index > 0) {
        placed.push({ kind: 'rule', x, y: at + gaps.rule / 2, width: wide });
        at += gaps.rule;
      }
      const top = at + gaps.row * scale;
      let from = x;
      const rowNumber = ++rowsSet;
      const ends = cells.map((cell, column) => {
        const cellWidth = wide * shares[column];
        const isLast = column === cells.length - 1;
        const look = isHead ? 'head' : column === 0 ? 'first' : 'body';
        const tag = isHead || column === 0 ? 'TH' : 'TD';
        const end = words(
          cell,
          look,
          tag,
          from,
          top,
          cellWidth - (isLast ? 0 : gaps.cell * scale),
          rowNumber,
        );
        from += cellWidth;
        return end;
      });
      at = Math.max(...ends) + gaps.row * scale;
    }
    return at;
  }

  function list({ items, look }: Extract<Block, { kind: 'list' }>, x: number, y: number, wide: number) {
    const { sizePt, line } = looks[look];
    const indent = gaps.indent * scale;
    return items.reduce((at, item, index) => {
      const top = index === 0 ? at : at + gaps.item * scale;
      placed.push({ kind: 'dot', x: x + indent * 0.3, y: top + (sizePt * scale * line) / 2 });
      return words(item, look, 'LI', x + indent, top, wide - indent);
    }, y);
  }

  function part({ title, blocks }: Part, x: number, y: number, wide: number): number {
    const under = words(title, 'title', 'H2', x, y, wide) + 1.5 * scale;
    return blocks.reduce(
      (at, one, index) => block(one, x, index === 0 ? at : at + gaps.block * scale, wide),
      under,
    );
  }

  function parts(all: readonly Part[], x: number, y: number, wide: number): number {
    return all.reduce((at, one, index) => part(one, x, index === 0 ? at : at + gaps.part * scale, wide), y);
  }

  let y = words(sheet.heading, 'heading', 'H1', left, gaps.margin, width);
  for (const one of sheet.top) y = block(one, left, y + gaps.block * scale, width);
  if (sheet.note.length > 0) y = note(y + gaps.part * 0.8 * scale);
  y += gaps.part * scale;
  const tall = (width / sheet.picture.width) * sheet.picture.height;
  placed.push({ kind: 'picture', x: left, y, width, height: tall });
  y += tall;
  if (sheet.caption !== null) y = words(sheet.caption, 'caption', 'P', left, y + gaps.block * scale, width);
  y += gaps.part * scale;
  const columnWidth = (width - gaps.column) / 2;
  const columnTop = y;
  const ends = sheet.columns.map((some, at) =>
    parts(some, left + at * (columnWidth + gaps.column), columnTop, columnWidth),
  );
  y = Math.max(...ends) + gaps.part * 0.5 * scale;
  placed.push({ kind: 'rule', x: left, y: y + gaps.rule / 2, width });
  y += gaps.rule + gaps.part * 0.5 * scale;
  const lower = [sheet.cautions, sheet.foot].map((one, at) =>
    part(one, left + at * (columnWidth + gaps.column), y, columnWidth),
  );
  y = Math.max(...lower);
  return { placed, groups, bottom: y };

  function note(top: number): number {
    const tint: Placed = { kind: 'tint', x: left, y: top, width, height: 0 };
    placed.push(tint);
    const inner = width - 2 * gaps.noteEdge * scale;
    const under = sheet.note.reduce(
      (at, paragraph) => words(paragraph, 'note', 'P', left + gaps.noteEdge * scale, at, inner),
      top + gaps.noteTop * scale,
    );
    tint.height = under + gaps.noteTop * scale - top;
    return top + tint.height;
  }
}

import { paperColours } from '../drawing/paper-colours.ts';

/** Paper, in points of 1/72 inch: ISO 216, and ANSI/ASME Y14.1 size A. */
export const papers = {
  a4: { widthPt: 595.28, heightPt: 841.89 },
  letter: { widthPt: 612, heightPt: 792 },
} as const;
export type Paper = keyof typeof papers;

/** The faces of the look: answers and heads, plain, and plain in bold. */
export type Face = 'answers' | 'text' | 'bold';

/** The light colours, on paper that is white already. */
export const sheetColours = { ...paperColours, paper: '#ffffff' } as const;
export type SheetColour = keyof typeof sheetColours;

type LookOf = { face: Face; sizePt: number; line: number; colour: SheetColour };

/** How each kind of words is set: size in points at full size, and from line to line in sizes. */
export const looks = {
  heading: { face: 'answers', sizePt: 25, line: 1.1, colour: 'ink' },
  dateline: { face: 'text', sizePt: 9, line: 1.3, colour: 'ink-2' },
  verdict: { face: 'answers', sizePt: 15, line: 1.24, colour: 'leaf' },
  because: { face: 'text', sizePt: 9.8, line: 1.32, colour: 'ink' },
  note: { face: 'text', sizePt: 10.4, line: 1.34, colour: 'ink' },
  caption: { face: 'text', sizePt: 8.6, line: 1.3, colour: 'ink-2' },
  title: { face: 'answers', sizePt: 12.6, line: 1.2, colour: 'skin' },
  body: { face: 'text', sizePt: 9.4, line: 1.3, colour: 'ink' },
  head: { face: 'text', sizePt: 8.4, line: 1.3, colour: 'ink-2' },
  first: { face: 'bold', sizePt: 9.4, line: 1.3, colour: 'ink' },
  small: { face: 'text', sizePt: 7.6, line: 1.3, colour: 'ink-2' },
} as const satisfies Record<string, LookOf>;
export type Look = keyof typeof looks;

/** Distances on the page in points at full size; the margin stays whatever the size. */
export const gaps = {
  margin: 31,
  column: 21,
  /** Between two blocks, and over a part. */
  block: 3.2,
  part: 9,
  /** Over and under a row's words. */
  row: 1.5,
  cell: 7,
  /** Thickness of a rule, whatever the size. */
  rule: 0.75,
  /** Of list items. */
  indent: 9,
  item: 1.8,
  noteEdge: 9,
  noteTop: 5,
} as const;

/** The year line is drawn so wide, px, and put on the page as wide as it is. */
export const pictureWidth = 980;

/** Words are set no smaller than this, and on a page with room no larger, of full size. */
export const leastScale = 0.86;
export const mostScale = 1.12;

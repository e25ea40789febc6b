import type { Drawn } from '../drawing/drawn.ts';
import type { Look, Paper } from './sheet-look.ts';

/** A stretch of a sheet: words, a list, or rows with their first cell at the head. */
export type Block =
  | { kind: 'text'; look: Look; text: string }
  | { kind: 'list'; look: Look; items: readonly string[] }
  | {
      kind: 'rows';
      head: readonly string[] | null;
      rows: readonly (readonly string[])[];
      shares: readonly number[];
    };

export type Part = { title: string; blocks: readonly Block[] };

/** One page, ready to be set: what stands where, at what size. */
export type Sheet = {
  language: string;
  paper: Paper;
  /** Of full size. */
  scale: number;
  /** How many lines found no room. */
  leftOut: number;
  heading: string;
  top: readonly Block[];
  note: readonly string[];
  /** Beside it the same for the width of a phone. */
  picture: { summary: string; svg: Drawn; width: number; height: number; narrow: Drawn };
  caption: string | null;
  columns: readonly [readonly Part[], readonly Part[]];
  cautions: Part;
  foot: Part;
};

/** Width of a word, or of a space, in a face, in sizes of it. */
export type Measure = (word: string, face: 'answers' | 'text' | 'bold') => number;

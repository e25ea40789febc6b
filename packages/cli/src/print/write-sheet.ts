import type { Handout } from '@neckfall/answers';
import { fitSheet, type Paper, type Sheet, type SheetYear, sheetHtml } from '@neckfall/pictures';
import { embeddedFaces } from './embedded-faces.ts';
import { lettersMissing, measure } from './faces.ts';
import type { SheetForm } from './sheet-forms.ts';
import { sheetPdf } from './sheet-pdf.ts';

/** What is written: plain data, so that what sets and writes it can be a program of its own, or be in another thread. */
export type SheetAsked = {
  handout: Handout;
  year: SheetYear;
  paper: Paper;
  /** The day it is dated, ms since 1970. */
  dayMs: number;
};

/** Letters that a PDF has no type for, instead of the file. */
export type Unwritten = { missing: readonly string[] };

/** Sets a sheet and writes it, in each of the forms asked for. */
export async function writeSheet(
  { handout, year, paper, dayMs }: SheetAsked,
  forms: readonly SheetForm[],
): Promise<{ form: SheetForm; bytes: Buffer }[] | Unwritten> {
  const sheet = fitSheet(handout, year, paper, measure);
  const words = wordsOf(sheet);
  if (forms.includes('pdf')) {
    const missing = lettersMissing(words);
    if (missing.length > 0) return { missing };
  }
  return Promise.all(
    forms.map(async (form) => ({
      form,
      bytes:
        form === 'pdf'
          ? await sheetPdf(sheet, dayMs)
          : Buffer.from(sheetHtml(sheet, embeddedFaces(words.join('')))),
    })),
  );
}

/** All that stands on it. */
function wordsOf({ heading, top, note, caption, columns, cautions, foot, picture }: Sheet): string[] {
  const ofBlock = (block: Sheet['top'][number]): readonly string[] =>
    block.kind === 'text'
      ? [block.text]
      : block.kind === 'list'
        ? block.items
        : [block.head ?? [], ...block.rows].flat();
  const parts = [...columns.flat(), cautions, foot];
  return [
    heading,
    ...top.flatMap(ofBlock),
    ...note,
    caption ?? '',
    ...parts.flatMap(({ title, blocks }) => [title, ...blocks.flatMap(ofBlock)]),
    ...textsIn(picture.svg),
  ];
}

function textsIn(node: Sheet['picture']['svg'] | string): string[] {
  return typeof node === 'string' ? [node] : node.children.flatMap(textsIn);
}

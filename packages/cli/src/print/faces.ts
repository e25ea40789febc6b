import { readFileSync } from 'node:fs';
import type { Face, Measure } from '@neckfall/pictures';
import { create, type Font } from 'fontkit';
import { fontsFolder } from '../assets-folder.ts';

/** Each face lies in a file a script; a letter is looked for in this order. */
const sets = ['latin', 'latin-ext', 'vietnamese', 'greek', 'cyrillic'] as const;
type FaceSet = (typeof sets)[number];

/** A typeface file: its name among those of a document, its bytes and what is in them. */
export type FaceFile = { name: string; bytes: Buffer; font: Font };

/** Letters of one file, in the order of the line. */
export type Run = { text: string; file: FaceFile };

const files = new Map<string, FaceFile>();

export function faceFile(face: Face, set: FaceSet): FaceFile {
  const name = `${face}-${set}`;
  let file = files.get(name);
  if (!file) {
    const bytes = readFileSync(new URL(`${name}.ttf`, fontsFolder));
    file = { name, bytes, font: create(bytes) as Font };
    files.set(name, file);
  }
  return file;
}

function fileWith(letter: string, face: Face, before: FaceFile | null): FaceFile | null {
  const code = letter.codePointAt(0) ?? 0;
  // a space or an accent stays with the letters before it
  if (before?.font.hasGlyphForCodePoint(code)) return before;
  return sets.map((set) => faceFile(face, set)).find(({ font }) => font.hasGlyphForCodePoint(code)) ?? null;
}

/** A line by the files that have its letters; those that none has go with the file before them. */
export function runsOf(text: string, face: Face): Run[] {
  const runs: Run[] = [];
  for (const letter of text) {
    const last = runs.at(-1);
    const file = fileWith(letter, face, last?.file ?? null) ?? last?.file ?? faceFile(face, 'latin');
    if (last?.file === file) last.text += letter;
    else runs.push({ text: letter, file });
  }
  return runs;
}

/** Letters that no file of the faces has. */
export function lettersMissing(texts: readonly string[]): string[] {
  const all = new Set(texts.join(''));
  return [...all].filter((letter) => letter !== '\n' && fileWith(letter, 'text', null) === null);
}

export function widthOfRun({ text, file }: Run): number {
  return file.font.layout(text).advanceWidth / file.font.unitsPerEm;
}

const known = new Map<string, number>();
/** Words are measured again and again while a sheet is fitted. */
const mostKnown = 20_000;
/** A letter of another script is as wide as it is high at most. */
const strangeWidth = 1;

/** Width of a word in sizes of its face. */
export const measure: Measure = (word, face) => {
  const key = `${face} ${word}`;
  let width = known.get(key);
  if (width === undefined) {
    const strange = lettersMissing([word]).length > 0 ? [...word].length * strangeWidth : 0;
    const own = runsOf(word, face).reduce((sum, run) => sum + widthOfRun(run), 0);
    width = Math.max(strange, own);
    if (known.size >= mostKnown) known.clear();
    known.set(key, width);
  }
  return width;
};

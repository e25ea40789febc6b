import { markupText } from '../drawing/markup-text.ts';
import type { Sheet } from './sheet.ts';
import { sheetBody } from './sheet-body.ts';
import { sheetCss } from './sheet-css.ts';

/** A typeface that travels in the file. */
export type EmbeddedFace = {
  family: 'Answers' | 'Plain';
  weight: 400 | 600;
  /** woff or woff2 in base 64. */
  base64: string;
  format: 'woff' | 'woff2';
  /** As CSS has it; null: all. */
  unicodeRange: string | null;
};

/** A sheet as one HTML file that needs nothing else: its look, its picture and its typefaces are inside, no script is. */
export function sheetHtml(sheet: Sheet, faces: readonly EmbeddedFace[]): string {
  return [
    '<!doctype html>',
    `<html lang="${markupText(sheet.language)}">`,
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="generator" content="Neckfall">',
    `<title>${markupText(sheet.heading)}</title>`,
    `<style>\n${faces.map(faceRule).join('\n')}\n${sheetCss(sheet, 'file')}\n</style>`,
    '</head>',
    '<body>',
    '<main>',
    sheetBody(sheet),
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

function faceRule({ family, weight, base64, format, unicodeRange }: EmbeddedFace): string {
  const range = unicodeRange === null ? '' : `;unicode-range:${unicodeRange}`;
  return `@font-face{font-family:${family};font-weight:${weight};src:url(data:font/${format};base64,${base64}) format("${format}")${range}}`;
}

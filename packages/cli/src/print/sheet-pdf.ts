import { type Group, gaps, looks, type Placed, type Sheet, setSheet, sheetColours } from '@neckfall/pictures';
import { drawPicture } from './draw-picture.ts';
import { faceFile, measure, runsOf, widthOfRun } from './faces.ts';
import { bytesOf, type Document, openDocument, useFace } from './open-document.ts';

type Line = Extract<Placed, { kind: 'line' }>;
type Element = PDFKit.PDFStructureElement;

/** A sheet as a PDF of one page (ISO 32000-1): words that can be searched and read out in their order, faces embedded. */
export async function sheetPdf(sheet: Sheet, dayMs: number): Promise<Buffer> {
  const { heading, language, paper } = sheet;
  const doc = openDocument({ title: heading, language, paper, dayMs });
  const { placed, groups } = setSheet(sheet, measure);
  const root = doc.struct('Document');
  doc.addStructure(root);
  const parents = parentsIn(doc, root);
  for (let at = 0; at < placed.length; ) {
    const one = placed[at];
    if (one.kind !== 'line') {
      if (one.kind === 'picture') drawYear(doc, root, one, sheet.picture);
      else ornament(doc, one, sheet.scale);
      at++;
      continue;
    }
    const lines = linesFrom(placed, at);
    const group = groups[one.group];
    const tag = group.tag === 'LI' ? 'LBody' : group.tag;
    parents(group).add(doc.struct(tag, {}, () => drawLines(doc, lines, sheet.scale)));
    at += lines.length;
  }
  root.end();
  return bytesOf(doc);
}

/** The lines of one group that follow each other. */
function linesFrom(placed: readonly Placed[], from: number): Line[] {
  const lines: Line[] = [];
  for (let at = from; at < placed.length; at++) {
    const one = placed[at];
    if (one.kind !== 'line' || (lines.length > 0 && one.group !== lines[0].group)) break;
    lines.push(one);
  }
  return lines;
}

/** Lists hold items and tables rows: the element that the next group belongs in. */
function parentsIn(doc: Document, root: Element): (group: Group) => Element {
  let list: Element | null = null;
  let table: Element | null = null;
  let row: { element: Element; number: number } | null = null;
  return ({ tag, row: number }) => {
    if (tag === 'LI') {
      table = row = null;
      list ??= child(root, 'L');
      return child(list, 'LI');
    }
    list = null;
    if (tag !== 'TH' && tag !== 'TD') {
      table = row = null;
      return root;
    }
    table ??= child(root, 'Table');
    if (row?.number !== number) row = { element: child(table, 'TR'), number };
    return row.element;
  };

  function child(parent: Element, type: string): Element {
    const element = doc.struct(type as 'L');
    parent.add(element);
    return element;
  }
}

function drawLines(doc: Document, lines: readonly Line[], scale: number): void {
  for (const { look, x, y, text } of lines) {
    const { face, sizePt, line, colour } = looks[look];
    const size = sizePt * scale;
    const { ascent, descent, unitsPerEm } = faceFile(face, 'latin').font;
    // the room of a line lies over and under its letters alike, as on a page of HTML
    const over = (size * line - ((ascent - descent) / unitsPerEm) * size) / 2;
    const baseline = y + over + (ascent / unitsPerEm) * size;
    let from = x;
    for (const run of runsOf(text, face)) {
      useFace(doc, run.file, size);
      doc.fillColor(sheetColours[colour]);
      doc.text(run.text, from, baseline, { lineBreak: false, baseline: 'alphabetic' });
      from += widthOfRun(run) * size;
    }
  }
}

function drawYear(
  doc: Document,
  root: Element,
  { x, y, width }: Extract<Placed, { kind: 'picture' }>,
  { summary, svg }: Sheet['picture'],
): void {
  root.add(doc.struct('Figure', { alt: summary }, () => drawPicture(doc, svg, x, y, width)));
}

/** What is there for the eye alone. */
function ornament(doc: Document, one: Exclude<Placed, { kind: 'line' | 'picture' }>, scale: number): void {
  doc.markContent('Artifact', { type: 'Layout' });
  if (one.kind === 'rule') {
    doc.moveTo(one.x, one.y).lineTo(one.x + one.width, one.y);
    doc.lineWidth(gaps.rule).stroke(sheetColours.line);
  } else if (one.kind === 'dot') doc.circle(one.x, one.y, 1.25 * scale).fill(sheetColours['skin-2']);
  else doc.rect(one.x, one.y, one.width, one.height).fill(sheetColours['paper-2']);
  doc.endMarkedContent();
}

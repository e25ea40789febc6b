import { type Drawn, type DrawnNode, type SheetColour, sheetColours } from '@neckfall/pictures';
import { type Run, runsOf, widthOfRun } from './faces.ts';
import { type Document, useFace } from './open-document.ts';

type Attributes = Readonly<Record<string, string>>;

/** Draws an SVG of our own pictures as vectors and words: groups, paths, rectangles, circles, texts, and frost's hatching. */
export function drawPicture(doc: Document, svg: Drawn, x: number, y: number, width: number): void {
  const [, , own] = svg.attributes.viewBox.split(' ').map(Number);
  doc.save();
  doc.translate(x, y).scale(width / own);
  for (const child of svg.children) draw(doc, child, svg.attributes);
  doc.restore();
}

function draw(doc: Document, node: DrawnNode, inherited: Attributes): void {
  if (typeof node === 'string' || node.type === 'defs') return;
  const { type, attributes, children } = node;
  const look = { ...inherited, ...attributes };
  const number = (name: string) => Number(look[name] ?? 0);
  if (type === 'g') for (const child of children) draw(doc, child, look);
  else if (type === 'text') drawWords(doc, children.join(''), look);
  else if (type === 'path') paint(doc, look, () => doc.path(look.d));
  else if (type === 'circle') paint(doc, look, () => doc.circle(number('cx'), number('cy'), number('r')));
  else if (type === 'rect')
    paint(doc, look, () => doc.rect(number('x'), number('y'), number('width'), number('height')));
  else throw new Error(`a sheet's picture: expected no <${type}>`);
}

function paint(doc: Document, look: Attributes, shape: () => void): void {
  const { fill = '#000', stroke = 'none' } = look;
  if (look.d === '') return;
  doc.save();
  if (fill.startsWith('url(')) hatch(doc, shape);
  else if (fill !== 'none') {
    shape();
    doc.fillOpacity(Number(look['fill-opacity'] ?? 1)).fill(colourOf(fill));
  }
  if (stroke !== 'none') {
    shape();
    doc.lineWidth(Number(look['stroke-width'] ?? 1));
    doc.lineCap((look['stroke-linecap'] ?? 'butt') as 'butt' | 'round');
    doc.lineJoin((look['stroke-linejoin'] ?? 'miter') as 'miter' | 'round');
    const dash = look['stroke-dasharray']?.split(/[ ,]+/).map(Number);
    if (dash) doc.dash(dash[0], { space: dash[1] ?? dash[0] });
    doc.strokeOpacity(Number(look['stroke-opacity'] ?? 1)).stroke(colourOf(stroke));
  }
  doc.restore();
}

/** As the pattern of the page has it: lines 5 px apart that lean by 45°, of 2.4 px, half of which its tile cuts off. */
const hatching = { width: 1.2, apart: 5 } as const;

function hatch(doc: Document, shape: () => void): void {
  doc.save();
  shape();
  doc.clip();
  const step = hatching.apart * Math.SQRT2;
  // a clipped line costs nothing where nothing shows of it: the whole height of any picture is crossed
  const [wide, high] = [1000, 500];
  for (let at = 0; at < wide + high; at += step) doc.moveTo(at, 0).lineTo(at - high, high);
  doc.lineWidth(hatching.width).stroke(sheetColours.sky);
  doc.restore();
}

function colourOf(colour: string): string {
  const name = /^var\(--(.*)\)$/.exec(colour)?.[1];
  return name === undefined ? colour : sheetColours[name as SheetColour];
}

function drawWords(doc: Document, text: string, look: Attributes): void {
  const size = Number(look['font-size']);
  const runs = runsOf(text, Number(look['font-weight'] ?? 400) >= 600 ? 'bold' : 'text');
  const width = runs.reduce((sum, run) => sum + widthOfRun(run), 0) * size;
  const anchor = look['text-anchor'] ?? 'start';
  let x = Number(look.x) - (anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0);
  const y = Number(look.y);
  if (look.stroke) halo(doc, runs, x, y, size, look);
  for (const run of runs) {
    useFace(doc, run.file, size);
    doc.fillColor(colourOf(look.fill));
    doc.text(run.text, x, y, { lineBreak: false, baseline: 'alphabetic' });
    x += widthOfRun(run) * size;
  }
}

/** The ground about letters, drawn by their outlines: the words themselves are set once. */
function halo(doc: Document, runs: readonly Run[], left: number, y: number, size: number, look: Attributes) {
  let x = left;
  for (const { text, file } of runs) {
    const { unitsPerEm } = file.font;
    const { glyphs, positions } = file.font.layout(text);
    const scale = size / unitsPerEm;
    for (const [at, glyph] of glyphs.entries()) {
      const outline = glyph.path.toSVG();
      if (outline !== '') {
        doc.save();
        doc.translate(x, y).scale(scale, -scale);
        doc
          .path(outline)
          .lineJoin('round')
          .lineWidth(Number(look['stroke-width']) / scale);
        doc.stroke(colourOf(look.stroke));
        doc.restore();
      }
      x += positions[at].xAdvance * scale;
    }
  }
}

import type { VNode } from 'preact';
import { type Drawn, type DrawnNode, drawnOf, svgIn } from './drawn.ts';
import { type InkColours, ink } from './ink.ts';
import { markupText } from './markup-text.ts';
import { px } from './path.ts';
import { type as font, lineHeight, type Size } from './picture.tsx';
import { boldWidth, wrapText } from './text-fit.ts';

export type SvgTextOptions = {
  colours: InkColours;
  /** Read out by programs that show the file. */
  title: string;
  /** Words over the picture: what it is of, for those who meet it by itself. */
  head?: string;
  /** What the picture says, for those who don't see it. */
  description?: string;
  /** Where it comes from: paragraphs of small words under the picture, which the file also keeps as its metadata. */
  caption?: readonly string[];
  fontFamily?: string;
};

/** A typeface that looks the same in most programs stands in where ours is not installed. */
const usualFonts = "'Source Sans 3', Helvetica, Arial, sans-serif";

/** Room beside, over and under the words of a caption, px; the first as at the sides of every picture. */
const sidePad = 6;
const captionTop = 12;
const captionFoot = 8;
/** Under a head, over the picture, px. */
const headFoot = 6;
const headLine = 21;

/**
 * A picture as an SVG file that stands alone: colours written out, paper behind, a title, and under it where it comes from.
 * @throws Error naming a colour that is missing
 */
export function svgText(picture: VNode, options: SvgTextOptions): string {
  const svg = svgIn(drawnOf(picture));
  if (svg === null) throw new Error('svgText: expected a picture, got no <svg>');
  return drawnText(svg, options);
}

/** The same of a picture that is drawn already. */
export function drawnText(svg: Drawn, options: SvgTextOptions): string {
  const { colours, title, head = '', description, caption = [], fontFamily = usualFonts } = options;
  const { class: _, 'aria-hidden': __, ...own } = svg.attributes;
  const size = sizeOf(own.viewBox ?? '');
  const lines = caption.flatMap((paragraph) => wrapText(paragraph, size.width - 2 * sidePad, font.small));
  const heads = head === '' ? [] : wrapText(head, size.width - 2 * sidePad, font.text * boldWidth);
  const above = heads.length > 0 ? heads.length * headLine + headFoot : 0;
  const height = px(
    above + size.height + (lines.length > 0 ? captionTop + lines.length * lineHeight + captionFoot : 0),
  );
  const grown = { ...own, height, viewBox: `0 0 ${px(size.width)} ${height}` };
  const picture = svg.children.map(markup).join('');
  const parts = [
    `<svg xmlns="http://www.w3.org/2000/svg" font-family="${markupText(fontFamily)}"${written(grown)}>`,
    `<title>${markupText(title)}</title>`,
    description === undefined ? '' : `<desc>${markupText(description)}</desc>`,
    lines.length === 0 ? '' : `<metadata>${markupText(caption.join('\n'))}</metadata>`,
    `<rect width="100%" height="100%" fill="${ink.paper}"/>`,
    headMarkup(heads),
    above === 0 ? picture : `<g transform="translate(0 ${above})">${picture}</g>`,
    captionMarkup(lines, { ...size, height: above + size.height }),
    '</svg>\n',
  ];
  return withColours(parts.join(''), colours);
}

/** Of a view box that begins at 0 0. */
function sizeOf(viewBox: string): Size {
  const [, , width, height] = viewBox.split(' ').map(Number);
  return { width, height };
}

function headMarkup(lines: readonly string[]): string {
  if (lines.length === 0) return '';
  const texts = lines.map((line, i) => {
    return `<text x="${sidePad}" y="${px((i + 1) * headLine - 4)}">${markupText(line)}</text>`;
  });
  return `<g font-size="${font.text}" font-weight="600" fill="${ink.ink}">${texts.join('')}</g>`;
}

function captionMarkup(lines: readonly string[], { width, height }: Size): string {
  if (lines.length === 0) return '';
  const texts = lines.map((line, i) => {
    const y = height + captionTop + (i + 1) * lineHeight - 4;
    return `<text x="${sidePad}" y="${px(y)}">${markupText(line)}</text>`;
  });
  const rule = `<path d="M${sidePad} ${px(height + captionTop / 2)}H${px(width - sidePad)}" stroke="${ink.line}"/>`;
  return `${rule}<g font-size="${font.small}" fill="${ink.ink2}">${texts.join('')}</g>`;
}

/** Words cannot be taken for a colour: their quotes are escaped. */
function withColours(text: string, colours: InkColours): string {
  return text.replace(/="var\(--([a-z0-9-]+)\)"/g, (_, name: string) => {
    const colour = colours[name];
    if (!colour) throw new Error(`svgText: expected a colour for --${name}, got none`);
    return `="${markupText(colour)}"`;
  });
}

function markup(node: DrawnNode): string {
  if (typeof node === 'string') return markupText(node);
  const { type, attributes, children } = node;
  const inside = children.map(markup).join('');
  return inside === ''
    ? `<${type}${written(attributes)}/>`
    : `<${type}${written(attributes)}>${inside}</${type}>`;
}

function written(attributes: Readonly<Record<string, string>>): string {
  return Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${markupText(value)}"`)
    .join('');
}

import type { VNode } from 'preact';
import { type InkColours, ink } from './ink.ts';
import { escaped, markup } from './markup.ts';
import { px } from './path.ts';
import { type as font, lineHeight } from './picture.tsx';
import { wrapText } from './text-fit.ts';

export type SvgTextOptions = {
  colours: InkColours;
  /** Read out by programs that show the file. */
  title: string;
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

/**
 * A picture as an SVG file that stands alone: colours written out, paper behind, a title, and under it where it comes from.
 * @throws Error naming a colour that is missing
 */
export function svgText(picture: VNode, options: SvgTextOptions): string {
  const { colours, title, description, caption = [], fontFamily = usualFonts } = options;
  const all = markup(picture);
  const [, attributes, inside] = /<svg([^>]*)>([\s\S]*)<\/svg>/.exec(all) ?? [];
  if (inside === undefined) throw new Error('svgText: expected a picture, got no <svg>');
  const drawn = sizeOf(attributes);
  const lines = caption.flatMap((paragraph) => wrapText(paragraph, drawn.width - 2 * sidePad, font.small));
  const height = drawn.height + (lines.length > 0 ? captionTop + lines.length * lineHeight + captionFoot : 0);
  const own = attributes
    .replace(/ (class|aria-hidden)="[^"]*"/g, '')
    .replace(/ height="[^"]*"/, ` height="${px(height)}"`)
    .replace(/ viewBox="[^"]*"/, ` viewBox="0 0 ${px(drawn.width)} ${px(height)}"`);
  const parts = [
    `<svg xmlns="http://www.w3.org/2000/svg" font-family="${escaped(fontFamily)}"${own}>`,
    `<title>${escaped(title)}</title>`,
    description === undefined ? '' : `<desc>${escaped(description)}</desc>`,
    lines.length === 0 ? '' : `<metadata>${escaped(caption.join('\n'))}</metadata>`,
    `<rect width="100%" height="100%" fill="${ink.paper}"/>`,
    inside,
    captionMarkup(lines, drawn),
    '</svg>\n',
  ];
  return withColours(parts.join(''), colours);
}

type Drawn = { width: number; height: number };

function sizeOf(attributes: string): Drawn {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(attributes) ?? [];
  return { width: Number(width), height: Number(height) };
}

function captionMarkup(lines: readonly string[], { width, height }: Drawn): string {
  if (lines.length === 0) return '';
  const texts = lines.map((line, i) => {
    const y = height + captionTop + (i + 1) * lineHeight - 4;
    return `<text x="${sidePad}" y="${px(y)}">${escaped(line)}</text>`;
  });
  const rule = `<path d="M${sidePad} ${px(height + captionTop / 2)}H${px(width - sidePad)}" stroke="${ink.line}"/>`;
  return `${rule}<g font-size="${font.small}" fill="${ink.ink2}">${texts.join('')}</g>`;
}

/** Words cannot be taken for a colour: their quotes are escaped. */
function withColours(text: string, colours: InkColours): string {
  return text.replace(/="var\(--([a-z0-9-]+)\)"/g, (_, name: string) => {
    const colour = colours[name];
    if (!colour) throw new Error(`svgText: expected a colour for --${name}, got none`);
    return `="${escaped(colour)}"`;
  });
}

import type { VNode } from 'preact';
import { type Drawn, type DrawnNode, drawnOf, svgIn } from './drawn.ts';
import type { InkColours } from './ink.ts';
import { markupText } from './markup-text.ts';

export type SvgTextOptions = {
  colours: InkColours;
  /** Read out by programs that show the file. */
  title: string;
  fontFamily?: string;
};

/**
 * A picture as an SVG file that stands alone: colours written out, paper behind, a title.
 * @throws Error naming a colour that is missing
 */
export function svgText(picture: VNode, options: SvgTextOptions): string {
  const svg = svgIn(drawnOf(picture));
  if (svg === null) throw new Error('svgText: expected a picture, got no <svg>');
  return drawnText(svg, options);
}

/** The same of a picture that is drawn already. */
export function drawnText(svg: Drawn, options: SvgTextOptions): string {
  const { colours, title, fontFamily = "'Source Sans 3', Helvetica, Arial, sans-serif" } = options;
  const { class: _, 'aria-hidden': __, ...own } = svg.attributes;
  const inside = svg.children.map(markup).join('');
  const head = `<svg xmlns="http://www.w3.org/2000/svg" font-family="${markupText(fontFamily)}"${written(own)}>`;
  const paper = '<rect width="100%" height="100%" fill="var(--paper)"/>';
  return withColours(`${head}<title>${markupText(title)}</title>${paper}${inside}</svg>\n`, colours);
}

function withColours(text: string, colours: InkColours): string {
  return text.replace(/var\(--([a-z0-9-]+)\)/g, (_, name: string) => {
    const colour = colours[name];
    if (!colour) throw new Error(`svgText: expected a colour for --${name}, got none`);
    return markupText(colour);
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

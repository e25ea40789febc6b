import { type ComponentChildren, isValidElement, type VNode } from 'preact';
import type { InkColours } from './ink.ts';

export type SvgTextOptions = {
  colours: InkColours;
  /** Read out by programs that show the file. */
  title: string;
  fontFamily?: string;
};

/**
 * A picture as an SVG file that stands alone: colours written out, paper behind, a title.
 * Pictures are functions of their props without state, so they can be written without a page.
 * @throws Error naming a colour that is missing
 */
export function svgText(picture: VNode, options: SvgTextOptions): string {
  const { colours, title, fontFamily = "'Source Sans 3', Helvetica, Arial, sans-serif" } = options;
  const all = markup(picture);
  const [, attributes, inside] = /<svg([^>]*)>([\s\S]*)<\/svg>/.exec(all) ?? [];
  if (inside === undefined) throw new Error('svgText: expected a picture, got no <svg>');
  const own = attributes.replace(/ (class|aria-hidden)="[^"]*"/g, '');
  const head = `<svg xmlns="http://www.w3.org/2000/svg" font-family="${escaped(fontFamily)}"${own}>`;
  const paper = '<rect width="100%" height="100%" fill="var(--paper)"/>';
  return withColours(`${head}<title>${escaped(title)}</title>${paper}${inside}</svg>\n`, colours);
}

function withColours(text: string, colours: InkColours): string {
  return text.replace(/var\(--([a-z0-9-]+)\)/g, (_, name: string) => {
    const colour = colours[name];
    if (!colour) throw new Error(`svgText: expected a colour for --${name}, got none`);
    return escaped(colour);
  });
}

function markup(node: ComponentChildren): string {
  if (node === null || node === undefined || typeof node === 'boolean') return '';
  if (Array.isArray(node)) return node.map(markup).join('');
  if (!isValidElement(node)) return escaped(String(node));
  const { type, props } = node as VNode<Record<string, unknown>>;
  if (typeof type === 'function') return markup((type as (props: unknown) => ComponentChildren)(props));
  const attributes = Object.entries(props)
    .filter(
      ([name, value]) =>
        name !== 'children' && name !== 'style' && value !== undefined && value !== null && value !== false,
    )
    .map(([name, value]) => ` ${name}="${escaped(String(value))}"`)
    .join('');
  const inside = markup(props.children as ComponentChildren);
  return inside === '' ? `<${type}${attributes}/>` : `<${type}${attributes}>${inside}</${type}>`;
}

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
}

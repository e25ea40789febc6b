import { type ComponentChildren, isValidElement, type VNode } from 'preact';

/**
 * A picture as text. Pictures are functions of their props without state, so they can be written without a page; what
 * a page's own style sheet would do (`style`) is left out.
 */
export function markup(node: ComponentChildren): string {
  if (node === null || node === undefined || typeof node === 'boolean') return '';
  if (Array.isArray(node)) return node.map(markup).join('');
  if (!isValidElement(node)) return escaped(String(node));
  const { type, props } = node as VNode<Record<string, unknown>>;
  if (typeof type === 'function') return markup((type as (props: unknown) => ComponentChildren)(props));
  const attributes = attributesOf(props)
    .map(([name, value]) => ` ${name}="${escaped(value)}"`)
    .join('');
  const inside = markup(props.children as ComponentChildren);
  return inside === '' ? `<${type}${attributes}/>` : `<${type}${attributes}>${inside}</${type}>`;
}

function attributesOf(props: Readonly<Record<string, unknown>>): [string, string][] {
  return Object.entries(props).flatMap(([name, value]): [string, string][] =>
    name === 'children' || name === 'style' || value === undefined || value === null || value === false
      ? []
      : [[name, String(value)]],
  );
}

/** Text as it may stand in XML and HTML, between tags and in attributes; what XML knows no character for is left out. */
export function escaped(text: string): string {
  return text
    .replace(unspeakable, '')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
}

/** Control characters and halves of a letter, which no XML may hold (XML 1.0, production 2). */
const unspeakable = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

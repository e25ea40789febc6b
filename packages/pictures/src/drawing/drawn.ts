import { type ComponentChildren, isValidElement, type VNode } from 'preact';

/** A piece of a picture as SVG has it, for those who draw it without a page. */
export type Drawn = { type: string; attributes: Readonly<Record<string, string>>; children: DrawnNode[] };
export type DrawnNode = Drawn | string;

/** What a picture draws. Pictures are functions of their props without state, so that no page is needed. */
export function drawnOf(node: ComponentChildren): DrawnNode[] {
  if (node === null || node === undefined || typeof node === 'boolean') return [];
  if (Array.isArray(node)) return node.flatMap(drawnOf);
  if (!isValidElement(node)) return [String(node)];
  const { type, props } = node as VNode<Record<string, unknown>>;
  if (typeof type === 'function') return drawnOf((type as (props: unknown) => ComponentChildren)(props));
  const attributes = Object.entries(props)
    .filter(
      ([name, value]) =>
        name !== 'children' && name !== 'style' && value !== undefined && value !== null && value !== false,
    )
    .map(([name, value]) => [name, String(value)]);
  const children = drawnOf(props.children as ComponentChildren);
  // an element without a name holds others together
  return type ? [{ type, attributes: Object.fromEntries(attributes), children }] : children;
}

/** The first SVG of what is drawn; null where there is none. */
export function svgIn(nodes: readonly DrawnNode[]): Drawn | null {
  for (const node of nodes) {
    if (typeof node === 'string') continue;
    const found = node.type === 'svg' ? node : svgIn(node.children);
    if (found) return found;
  }
  return null;
}

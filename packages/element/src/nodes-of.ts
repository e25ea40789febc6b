import { type ComponentChildren, isValidElement, type VNode } from 'preact';

const svgSpace = 'http://www.w3.org/2000/svg';

/**
 * Drawn things as nodes of a page. Pictures are functions of their props without state, so they need no renderer; their
 * `style` is left out, which a strict policy of the page would refuse.
 */
export function nodesOf(drawn: ComponentChildren, page: Document, space: string | null = null): Node[] {
  if (drawn === null || drawn === undefined || typeof drawn === 'boolean') return [];
  if (Array.isArray(drawn)) return drawn.flatMap((one) => nodesOf(one, page, space));
  if (!isValidElement(drawn)) return [page.createTextNode(String(drawn))];
  const { type, props } = drawn as VNode<Record<string, unknown>>;
  if (typeof type === 'function')
    return nodesOf((type as (props: unknown) => ComponentChildren)(props), page, space);
  const own = type === 'svg' ? svgSpace : space;
  const element = own === null ? page.createElement(type) : page.createElementNS(own, type);
  for (const [name, value] of Object.entries(props)) {
    if (name === 'children' || name === 'style' || value === undefined || value === null || value === false)
      continue;
    element.setAttribute(name, String(value));
  }
  element.append(...nodesOf(props.children as ComponentChildren, page, own));
  return [element];
}

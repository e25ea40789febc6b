import type { Plugin } from 'vite';

type Node = { type: string; start: number; end: number; [key: string]: unknown };

/** Where the prose starts and ends: the last argument of each `p(value, unit, low, high, origin)`. */
function originsIn(node: unknown): Node[] {
  if (Array.isArray(node)) return node.flatMap(originsIn);
  if (typeof node !== 'object' || node === null) return [];
  const {
    type,
    callee,
    arguments: given,
  } = node as Node & { callee?: { name?: string }; arguments?: Node[] };
  if (type === 'CallExpression' && callee?.name === 'p' && given?.length === 5) return given.slice(4);
  return Object.values(node).flatMap(originsIn);
}

/** Leaves out of what is sent to a phone where each number of the model comes from; docs/parameters.md says it. */
export function withoutOrigins(): Plugin {
  return {
    name: 'without-origins',
    enforce: 'post',
    apply: 'build',
    transform: {
      filter: { id: /plant\/parameters\.ts$/ },
      handler(code) {
        const origins = originsIn(this.parse(code)).sort((a, b) => b.start - a.start);
        if (origins.length === 0) this.error('parameters.ts: no origins found to leave out');
        return {
          code: origins.reduce((kept, { start, end }) => `${kept.slice(0, start)}''${kept.slice(end)}`, code),
          map: null,
        };
      },
    },
  };
}

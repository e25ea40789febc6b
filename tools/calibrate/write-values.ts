import type { PlantValues } from '../../packages/engine/src/index.ts';
import type { Knob } from './knobs.ts';

/** The text of parameters.ts with the knobs' values in place of its own. Throws, changing nothing, where one is not found. */
export function writeValues(text: string, knobs: readonly Knob[], values: PlantValues): string {
  let out = text;
  for (const knob of knobs) {
    if (knob.of === 'growth') {
      const [from, to] = block(out, 'export const growthParameters = {', '\n}');
      out = replaced(out, from, to, `\n  ${knob.parameter}: p(`, values.growth[knob.parameter]);
      continue;
    }
    for (const type of knob.types) {
      const [from, to] = block(out, `\n  ${knob.parameter}: {`, '\n  },');
      const entry = `\n    ${type.includes('-') ? `'${type}'` : type}: p(`;
      out = replaced(out, from, to, entry, values.types[type][knob.parameter]);
    }
  }
  return out;
}

function block(text: string, opening: string, closing: string): [from: number, to: number] {
  const from = text.indexOf(opening);
  const to = text.indexOf(closing, from);
  if (from < 0 || to < 0) throw new Error(`parameters.ts has no ${opening.trim()}: nothing was written`);
  return [from, to];
}

function replaced(text: string, from: number, to: number, entry: string, value: number): string {
  const at = text.indexOf(entry, from);
  const number = at < 0 || at > to ? null : /^\s*(-?[\d.]+)/.exec(text.slice(at + entry.length));
  if (!number) throw new Error(`parameters.ts has no value after ${entry.trim()}: nothing was written`);
  const end = at + entry.length + number[0].length;
  return text.slice(0, end - number[1].length) + String(value) + text.slice(end);
}

import type { Form } from './form-kinds.ts';

const names = [
  'shows',
  'view',
  'places',
  'starts',
  'on',
  'latitude',
  'warmth',
  'heading',
  'note',
  'paper',
] as const;

/** What the Teach pages ask, as it stands in the address: each reads its own, which the first page need not know. */
export type TeachInAddress = Record<(typeof names)[number], string | null>;

/** No link of ours is longer, characters. */
const longest = 4000;

const asWritten = (key: string): Form<string> => ({
  key,
  expects: 'text',
  read: (raw) => (raw.length > longest ? undefined : raw),
  write: (value) => value,
});

export const teachForms = Object.fromEntries(names.map((name) => [name, asWritten(name)])) as {
  [Name in keyof TeachInAddress]: Form<string>;
};

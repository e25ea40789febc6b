import type { Gazetteer } from './gazetteer.ts';
import { type NameAndArea, namesAndAreas } from './name-and-area.ts';
import { type NameTable, nameTables } from './ranked-towns.ts';

/** A text to be looked up, as it was typed and in every reading. */
export type Asked = {
  readonly gazetteer: Gazetteer;
  readonly tables: readonly NameTable[];
  readonly text: string;
  readonly readings: readonly NameAndArea[];
};

export function askedOf(gazetteer: Gazetteer, text: string): Asked {
  return { gazetteer, tables: nameTables(gazetteer), text, readings: namesAndAreas(text) };
}

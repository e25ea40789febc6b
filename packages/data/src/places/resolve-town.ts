import { areaTest, isArea } from './area.ts';
import { type Asked, askedOf } from './asked.ts';
import { foldName } from './fold-name.ts';
import { type Gazetteer, townAt } from './gazetteer.ts';
import { keyBytes } from './key-table.ts';
import { townsCalled } from './named-towns.ts';
import { withoutPostcode } from './postcode.ts';
import { compareRank, type NameTable, type RankedTown } from './ranked-towns.ts';
import { misspeltTowns } from './spelling.ts';
import type { Town } from './town.ts';

/** `others` have the same name and are less populous; `nearest` are the best guesses at what was meant. */
export type TownAnswer =
  | { readonly kind: 'found'; readonly town: Town; readonly others: readonly Town[] }
  | {
      readonly kind: 'unknown';
      /** No town so called; or it is a postal code. */
      readonly reason: 'name' | 'postcode';
      readonly nearest: readonly Town[];
    }
  | {
      readonly kind: 'unknown';
      /** No town of that name in that country or region; or what follows the name is neither. */
      readonly reason: 'not-in-area' | 'area';
      /** As written. */
      readonly name: string;
      readonly area: string;
      readonly nearest: readonly Town[];
    };

const NEAREST_OFFERED = 5;
/** Misspelt names looked at: some are dropped where a country was named. */
const MOST_MISSPELT = 100;
/** "Mass" and "Calif" are read as beginnings; two letters are a code or nothing. */
const LEAST_BEGUN = 3;

/**
 * The town meant by `Lyon`, `Springfield, US`, `Springfield Illinois` or `springfield il usa`: an exact name or other
 * spelling, accents and case ignored, the most populous first. A postal code beside the name is left out.
 */
export function resolveTown(gazetteer: Gazetteer, text: string): TownAnswer {
  const asked = askedOf(gazetteer, text);
  const { tables } = asked;
  const called = (name: string) => townsCalledFolded(tables, name, gazetteer.townCount);
  const whole = called(foldName(text));
  if (whole.length > 0) return found(townsAt(gazetteer, whole));
  const readings = asked.readings.filter(({ foldedArea }) => foldedArea !== '');
  const calledThere = (fit: 'whole' | 'begun') =>
    readings
      .filter(({ foldedArea }) => fit === 'whole' || foldedArea.length >= LEAST_BEGUN)
      .flatMap(({ foldedName, foldedArea }) => {
        const fits = areaTest(gazetteer, foldedArea);
        return called(foldedName).filter(({ town }) => fits(town) === fit);
      })
      .sort(compareRank);
  for (const fit of ['whole', 'begun'] as const) {
    const there = calledThere(fit);
    if (there.length > 0) return found(townsAt(gazetteer, there));
  }

  const rest = withoutPostcode(text);
  if (rest === '') return { kind: 'unknown', reason: 'postcode', nearest: [] };
  if (rest !== null) return resolveTown(gazetteer, rest);
  return unknown({ ...asked, readings });
}

/** What is wrong with a name that no town has there, and what may be meant. */
function unknown({ gazetteer, tables, text, readings }: Asked): TownAnswer {
  const called = (name: string) => townsCalledFolded(tables, name, NEAREST_OFFERED);
  const misspelt = (name: string) => misspeltFolded(tables, name);
  const answer = (towns: readonly RankedTown[]) => ({
    kind: 'unknown' as const,
    nearest: townsAt(gazetteer, towns.slice(0, NEAREST_OFFERED)),
  });

  const placed = readings.find(({ foldedArea }) => isArea(gazetteer, foldedArea));
  if (placed) {
    const fits = areaTest(gazetteer, placed.foldedArea);
    const like = misspelt(placed.foldedName);
    const likeThere = like.filter(({ town }) => fits(town) === 'whole');
    const elsewhere = called(placed.foldedName);
    if (elsewhere.length === 0) return { ...answer(likeThere.length > 0 ? likeThere : like), reason: 'name' };
    const { name, area } = placed;
    return { ...answer([...likeThere, ...elsewhere]), reason: 'not-in-area', name, area };
  }
  const marked = readings.find(({ isMarked }) => isMarked);
  const like = marked ? [] : misspelt(foldName(text));
  if (like.length > 0) return { ...answer(like), reason: 'name' };
  for (const { name, area, foldedName } of marked ? [marked] : readings) {
    const towns = called(foldedName);
    const meant = towns.length > 0 || !marked ? towns : misspelt(foldedName);
    if (meant.length > 0 || marked) return { ...answer(meant), reason: 'area', name, area };
  }
  return { ...answer([]), reason: 'name' };
}

function found([town, ...others]: readonly Town[]): TownAnswer {
  return { kind: 'found', town, others };
}

function townsAt(gazetteer: Gazetteer, ranked: readonly RankedTown[]): Town[] {
  return ranked.map(({ town }) => townAt(gazetteer, town));
}

function townsCalledFolded(tables: readonly NameTable[], name: string, limit: number): RankedTown[] {
  const bytes = keyBytes(name);
  return bytes === null ? [] : townsCalled(tables, bytes, limit);
}

function misspeltFolded(tables: readonly NameTable[], name: string): RankedTown[] {
  const bytes = keyBytes(name);
  return bytes === null ? [] : misspeltTowns(tables, bytes, 'whole', MOST_MISSPELT);
}

import { areaTest, isArea } from './area.ts';
import type { Asked } from './asked.ts';
import { foldPrefix } from './fold-name.ts';
import { keyBytes } from './key-table.ts';
import { townsCalled } from './named-towns.ts';
import type { RankedTown } from './ranked-towns.ts';
import { misspeltTowns } from './spelling.ts';

/** Misspelt names looked at where a place is named as well: most of them lie elsewhere. */
const MOST_MISSPELT = 100;

/** What may be meant: misspelt names in the place named, towns of that name elsewhere, misspelt names. */
export function guessedTowns({ gazetteer, tables, text, readings }: Asked, limit: number): RankedTown[] {
  const placed = readings.find(({ foldedArea }) => isArea(gazetteer, foldedArea));
  const placedName = placed ? keyBytes(placed.foldedName) : null;
  if (placed && placedName !== null) {
    const fits = areaTest(gazetteer, placed.foldedArea);
    const there = misspeltTowns(tables, placedName, 'whole', MOST_MISSPELT).filter(
      ({ town }) => fits(town) === 'whole',
    );
    const towns = [...there, ...townsCalled(tables, placedName, limit)];
    if (towns.length > 0) return towns.slice(0, limit);
  }
  const marked = readings.find(({ isMarked }) => isMarked);
  const before = keyBytes(foldPrefix(marked?.name ?? text));
  if (marked && before !== null) {
    const called = townsCalled(tables, before, limit);
    if (called.length > 0) return called;
  }
  const misspelt = before === null ? [] : misspeltTowns(tables, before, 'prefix', limit);
  if (misspelt.length > 0) return misspelt;
  for (const { foldedName } of readings) {
    const name = keyBytes(foldedName);
    const called = name === null ? [] : townsCalled(tables, name, limit);
    if (called.length > 0) return called;
  }
  return [];
}

import { type AreaFit, areaTest } from './area.ts';
import { type Asked, askedOf } from './asked.ts';
import { foldPrefix } from './fold-name.ts';
import { type Gazetteer, townAt } from './gazetteer.ts';
import { guessedTowns } from './guessed-towns.ts';
import { keyBytes } from './key-table.ts';
import { eachNamed } from './named-towns.ts';
import { withoutPostcode } from './postcode.ts';
import { type RankedTown, rankedTowns } from './ranked-towns.ts';
import type { Town } from './town.ts';

const MOST_TOWNS = 100;

/** How near towns are to what was typed, the nearest first. */
const NEAR = { wholeName: 0, begunNameOrItsArea: 1, nameInBegunArea: 2, begunNameInArea: 3, elsewhere: 4 };

/** Towns for what was typed. */
export type TownsFound = {
  readonly towns: readonly Town[];
  /**
   * `called`: of that name, or beginning so, in the place named. `begun`: so far only the beginning of a place fits.
   * `guess`: nothing fits, these may be meant. `postcode`: a postal code and no name; there are no towns.
   */
  readonly fit: 'called' | 'begun' | 'guess' | 'postcode';
};

/**
 * Towns for what is typed (accents, case and punctuation ignored): those whose name or other spelling is the text,
 * then those that begin so, and those of a name followed by a country, state or part of a country, after a comma or
 * not; the most populous first. Where there are none, one misspelling is forgiven, or two, from 3 and 6 letters on.
 * A postal code beside the name is left out. At most `limit` (1 to 100) different towns; none for an empty query.
 */
export function findTowns(gazetteer: Gazetteer, query: string, limit: number): TownsFound {
  if (!Number.isInteger(limit) || limit < 1 || limit > MOST_TOWNS) {
    throw new RangeError(`limit ${limit}: a whole number from 1 to ${MOST_TOWNS} was expected`);
  }
  const asked = askedOf(gazetteer, query);
  const fitting = fittingTowns(asked, limit);
  const found = (ranked: readonly RankedTown[]) => ranked.map(({ town }) => townAt(gazetteer, town));
  if (fitting.length > 0) {
    const isCalled = fitting[0].distance < NEAR.nameInBegunArea;
    return { towns: found(fitting), fit: isCalled ? 'called' : 'begun' };
  }
  const name = withoutPostcode(query);
  if (name === '') return { towns: [], fit: 'postcode' };
  if (name !== null) return findTowns(gazetteer, name, limit);
  return { towns: found(guessedTowns(asked, limit)), fit: 'guess' };
}

function fittingTowns({ gazetteer, tables, text, readings }: Asked, limit: number): RankedTown[] {
  const { offer, best } = rankedTowns(limit);
  const whole = keyBytes(foldPrefix(text));
  if (whole !== null) {
    eachNamed(tables, whole, 'prefix', (town, weight, isExact) => {
      offer({ town, weight, distance: isExact ? NEAR.wholeName : NEAR.begunNameOrItsArea });
    });
  }
  for (const { foldedName, foldedArea, isMarked } of readings) {
    const name = keyBytes(foldedName);
    if (name === null) continue;
    const fits = areaTest(gazetteer, foldedArea);
    const others: RankedTown[] = [];
    let isSomeThere = false;
    eachNamed(tables, name, isMarked ? 'prefix' : 'whole', (town, weight, isExact) => {
      const fit = foldedArea === '' ? 'whole' : fits(town);
      if (fit === 'none') {
        if (isExact) others.push({ town, weight, distance: NEAR.elsewhere });
        return;
      }
      if (isExact) isSomeThere = true;
      offer({ town, weight, distance: distanceOf(fit, isExact, foldedArea === '') });
    });
    // the words may yet mean something else, so the rest of that name follows
    if (isSomeThere) others.forEach(offer);
  }
  return best;
}

function distanceOf(fit: AreaFit, isExact: boolean, isWhole: boolean): number {
  if (!isExact) return NEAR.begunNameInArea;
  if (isWhole) return NEAR.wholeName;
  return fit === 'whole' ? NEAR.begunNameOrItsArea : NEAR.nameInBegunArea;
}

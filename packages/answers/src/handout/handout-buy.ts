import { cultivars } from '@neckfall/data';
import {
  feetToMetres,
  neededFor,
  type SeasonSummary,
  type Spacing,
  standOf,
  startWays,
  usualSpacing,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { namesHereFirst, namesKnownHere, offersOf } from '../facts/index.ts';

const mostNames = 5;
/** A length of row that is told in whole numbers. */
const rowFeet = 10;

/** What to buy for a crop: the kind, names of it that shops of the country have, how many for a length of row. */
export function handoutBuy(summary: SeasonSummary, country: string | null, speaker: Speaker): string[] {
  const { plan } = summary;
  const { say, quantity } = speaker;
  const size = plan.start === 'sets' ? quantity('bulbLength', plan.setSizeMm) : '';
  const kind = say(`handout.buy.${plan.start}`, { type: say(`type.${plan.type}`), size });
  const row = rowSentence(summary, usualSpacing, speaker);
  return [kind, namesSentence(summary, country, speaker), ...(row === null ? [] : [row])];
}

function namesSentence(
  { plan }: SeasonSummary,
  country: string | null,
  { say, all, country: name }: Speaker,
) {
  const names = offersOf(cultivars)
    .filter(({ type, starts }) => type === plan.type && starts.includes(plan.start))
    .map((offer) => offer.name);
  const here = country === null ? [] : namesKnownHere(namesHereFirst(names, country), country);
  if (here.length > 0) return say('handout.names', { names: all(here.slice(0, mostNames)) });
  return say('handout.names.none', { country: country === null ? 'none' : name(country) });
}

function rowSentence(
  { plan, emergedShare }: SeasonSummary,
  spacing: Spacing,
  { say, units, quantity, number, numberRange }: Speaker,
): string | null {
  const rowM = units === 'us' ? feetToMetres(rowFeet) : 1;
  const stand = standOf(Math.round((100 * rowM) / spacing.plantCm) * spacing.perStation, spacing);
  const needed = neededFor(stand, spacing, {
    start: plan.start,
    seedAge: null,
    setSizeMm: plan.start === 'sets' ? plan.setSizeMm : 0,
    emergedShare,
  });
  if (needed === null) return null;
  const count =
    needed.from === 'seed'
      ? numberRange(...needed.seeds)
      : number(needed.from === 'sets' ? needed.sets : needed.plants);
  const from = needed.from === 'seed' && startWays[plan.start].standsInTrays ? 'trays' : needed.from;
  return say(`handout.row.${from}`, {
    length: quantity('rowLength', rowM),
    count,
    apart: quantity('spacing', spacing.plantCm),
    rows: quantity('spacing', spacing.rowCm),
  });
}

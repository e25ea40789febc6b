import {
  countryOf,
  inStoreOf,
  keepGrounds,
  kitchenKindsOf,
  ownKitchenKinds,
  storedInOrder,
  storeLookedAt,
} from '@neckfall/answers';
import { cultivars, usualGramsPerWeek } from '@neckfall/data';
import { keepYearOf, storeClimateOf } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type KeepTold, keepDocument, keepRows } from '../documents/keep-document.ts';
import { yearOf } from '../documents/values.ts';
import { weatherWarnings } from '../frame/weather-notes.ts';
import { readGrowing } from '../options/plan-options.ts';
import { csv } from '../output/csv.ts';
import { keepText } from '../text/keep-text.ts';
import type { Answer } from './answer.ts';
import { keepAsked, type RawKeep } from './keep-asked.ts';
import { liftOf } from './lift-of.ts';

/** What to plant so that a kitchen has onions until the next crop. */
export function keepAnswer(target: string | undefined, raw: RawKeep, speaker: Speaker): Answer {
  const growing = readGrowing(raw, speaker);
  const { kitchen, own, frame, at } = keepAsked(target, raw, speaker);
  const { site, options, assumed, warnings } = frame;
  const country = countryOf(frame.place);
  const usual = usualGramsPerWeek(country);
  const household = {
    ...kitchen,
    gramsPerWeek: kitchen.gramsPerWeek ?? kitchen.people * usual.gramsPerPerson,
  };
  warnings.push(...weatherWarnings(frame, options.today, options.today + 364));
  const kinds = [...ownKitchenKinds(own, site, yearOf(options.today)), ...kitchenKindsOf(cultivars, country)];
  const store = storeClimateOf(site.climate, household.store);
  const looked = at ? storeLookedAt(at.garden, at.place, store, options.today) : [];
  const growingHere = { ...growing, sunHours: options.sunHours };
  const year = keepYearOf(site, kinds, household, options.today, growingHere, looked);
  const tried = { seasons: options.years, seed: options.seed };
  const inStore = at ? inStoreOf(at.garden, at.place, store, options.today, tried) : [];
  const usualUse = kitchen.gramsPerWeek === null ? usual : null;
  assumed.push(...keepGrounds({ year, store }, usualUse, site.practice, speaker));
  const lift = at && raw.planting !== undefined && target ? liftOf(target, raw, speaker) : null;
  const told: KeepTold = {
    lift,
    frame,
    inStore: storedInOrder(inStore),
    year,
    store,
    gramsFrom: usualUse ? 'usual' : 'given',
    country,
  };
  return {
    text: () => keepText(told),
    json: () => keepDocument(told),
    csv: () => csv(keepRows(keepDocument(told))),
    warnings,
  };
}

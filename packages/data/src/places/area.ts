import { readPlanes } from './byte-planes.ts';
import { countryForms } from './countries.ts';
import { foldName } from './fold-name.ts';
import { type Gazetteer, partOf } from './gazetteer.ts';
import { regionForms } from './regions.ts';

/** How what is written after a town's name fits the place where the town is. */
export type AreaFit = 'whole' | 'begun' | 'none';

const formsOf = new Map<string, readonly string[]>();

/** All that people write after the name of a town there, folded: country, region, or region and country. */
function areaForms(country: string, region: string): readonly string[] {
  const key = `${country}-${region}`;
  let forms = formsOf.get(key);
  if (forms === undefined) {
    const countries = countryForms(country);
    const regions = region === '' ? [] : regionForms(country, region);
    // folded once more: "MT USA" is read as "mount usa", like any short word in front of another
    const both = regions.flatMap((one) => countries.map((other) => foldName(`${one} ${other}`)));
    forms = [...countries, ...regions, ...both];
    formsOf.set(key, forms);
  }
  return forms;
}

function fitOf(forms: readonly string[], area: string): AreaFit {
  if (forms.includes(area)) return 'whole';
  return forms.some((form) => form.startsWith(area)) ? 'begun' : 'none';
}

/** Tells of towns, by their numbers, how they fit a folded area. Each country and region is compared once. */
export function areaTest(gazetteer: Gazetteer, area: string): (town: number) => AreaFit {
  const known = new Map<readonly unknown[], AreaFit>();
  return (town) => {
    const part = partOf(gazetteer, town);
    const place = part.areas[readPlanes(part.area, part.count, town - part.firstTown)];
    let fit = known.get(place);
    if (fit === undefined) {
      fit = fitOf(areaForms(place[0], place[2]), area);
      known.set(place, fit);
    }
    return fit;
  };
}

/** Whether a country or region of the gazetteer is so called, in full; folded. */
export function isArea(gazetteer: Gazetteer, area: string): boolean {
  return gazetteer.parts.some(({ areas }) =>
    areas.some(([country, , region]) => areaForms(country, region).includes(area)),
  );
}

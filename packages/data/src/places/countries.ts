import { foldName } from './fold-name.ts';
import type { Gazetteer } from './gazetteer.ts';

/** Names in daily use that are not the English display name of the host. */
const OTHER_COUNTRY_NAMES: Record<string, string> = {
  usa: 'US',
  america: 'US',
  uk: 'GB',
  'great britain': 'GB',
  britain: 'GB',
  uae: 'AE',
  holland: 'NL',
  'czech republic': 'CZ',
  turkey: 'TR',
  turkiye: 'TR',
  burma: 'MM',
  'ivory coast': 'CI',
  swaziland: 'SZ',
  macedonia: 'MK',
  'cape verde': 'CV',
  'hong kong': 'HK',
  macau: 'MO',
  palestine: 'PS',
  congo: 'CD',
};

/** Region codes by name: ISO 3166-2 of the United States (by common name) and the United Kingdom (memory). */
const REGION_NAMES: Record<string, string> = {};
for (const [country, list] of [
  [
    'US',
    'AL Alabama,AK Alaska,AZ Arizona,AR Arkansas,CA California,CO Colorado,CT Connecticut,DE Delaware,' +
      'DC District of Columbia,FL Florida,GA Georgia,HI Hawaii,ID Idaho,IL Illinois,IN Indiana,IA Iowa,KS Kansas,' +
      'KY Kentucky,LA Louisiana,ME Maine,MD Maryland,MA Massachusetts,MI Michigan,MN Minnesota,MS Mississippi,' +
      'MO Missouri,MT Montana,NE Nebraska,NV Nevada,NH New Hampshire,NJ New Jersey,NM New Mexico,NY New York,' +
      'NC North Carolina,ND North Dakota,OH Ohio,OK Oklahoma,OR Oregon,PA Pennsylvania,RI Rhode Island,' +
      'SC South Carolina,SD South Dakota,TN Tennessee,TX Texas,UT Utah,VT Vermont,VA Virginia,WA Washington,' +
      'WV West Virginia,WI Wisconsin,WY Wyoming',
  ],
  ['GB', 'ENG England,SCT Scotland,WLS Wales,NIR Northern Ireland'],
]) {
  for (const entry of list.split(',')) {
    const space = entry.indexOf(' ');
    REGION_NAMES[foldName(entry.slice(space + 1))] = `${country}-${entry.slice(0, space)}`;
  }
}

const codesByName = new WeakMap<Gazetteer, Map<string, string>>();

/** What people write after a town, folded, against the countries ("FR") and regions ("US-IL") of the gazetteer. */
function codesOf(gazetteer: Gazetteer): Map<string, string> {
  const known = codesByName.get(gazetteer);
  if (known !== undefined) return known;
  const displayNames = new Intl.DisplayNames('en', { type: 'region' });
  const codes = new Map(Object.entries(OTHER_COUNTRY_NAMES));
  for (const part of gazetteer.parts) {
    for (const [country] of part.areas) {
      codes.set(foldName(displayNames.of(country) ?? country), country);
      codes.set(country.toLowerCase(), country);
    }
  }
  codesByName.set(gazetteer, codes);
  return codes;
}

/** ISO alpha-2 code of a country written as a code or an English name; null when no country is so called. */
export function countryCalled(gazetteer: Gazetteer, text: string): string | null {
  return codesOf(gazetteer).get(foldName(text)) ?? null;
}

/** Whether a town's region is the one written, by its code or (US, GB) its name. */
export function isRegionCalled(country: string, region: string | null, text: string): boolean {
  if (region === null) return false;
  const folded = foldName(text);
  return region.toLowerCase() === folded || REGION_NAMES[folded] === `${country}-${region}`;
}

/** Whether the gazetteer has a region so called. */
export function isAnyRegion(gazetteer: Gazetteer, text: string): boolean {
  return gazetteer.parts.some((part) =>
    part.areas.some(([country, , region]) => isRegionCalled(country, region === '' ? null : region, text)),
  );
}

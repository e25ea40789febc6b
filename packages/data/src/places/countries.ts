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

const codesByName = new WeakMap<Gazetteer, Map<string, string>>();

/** What people write after a town, folded, against the countries of the gazetteer. */
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

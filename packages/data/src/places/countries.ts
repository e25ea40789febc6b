import { foldName } from './fold-name.ts';

/** Names in daily use that are not the English display name of the host; folded. */
const OTHER_NAMES: Readonly<Record<string, readonly string[]>> = {
  AE: ['uae'],
  BA: ['bosnia'],
  CD: ['congo', 'drc'],
  CI: ['ivory coast'],
  CV: ['cape verde'],
  CZ: ['czech republic'],
  GB: ['uk', 'u k', 'great britain', 'britain'],
  HK: ['hong kong'],
  KR: ['korea'],
  MK: ['macedonia'],
  MM: ['burma'],
  MO: ['macau'],
  NL: ['holland'],
  PS: ['palestine'],
  SZ: ['swaziland'],
  TR: ['turkey', 'turkiye'],
  US: ['usa', 'us of a', 'america', 'u s', 'u s a'],
  VA: ['vatican'],
};

let displayNames: Intl.DisplayNames | undefined;

/** How people write a country, folded: its ISO alpha-2 code, its English name, short forms. */
export function countryForms(country: string): string[] {
  displayNames ??= new Intl.DisplayNames('en', { type: 'region' });
  const name = displayNames.of(country) ?? country;
  const names = [foldName(name), foldName(name.replace('&', 'and'))];
  return [...new Set([country.toLowerCase(), ...names, ...(OTHER_NAMES[country] ?? [])])];
}

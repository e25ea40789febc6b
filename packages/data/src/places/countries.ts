import { foldName } from './fold-name.ts';

/** Languages in which countries are known by name. */
const languages = ['en', 'es'];

/** Names in daily use that are no display names of the host; folded. */
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
  US: ['usa', 'us of a', 'america', 'u s', 'u s a', 'ee uu', 'eeuu'],
  VA: ['vatican'],
};

let displayNames: Intl.DisplayNames[] | undefined;

/** How people write a country, folded: its ISO alpha-2 code, its names, short forms. */
export function countryForms(country: string): string[] {
  displayNames ??= languages.map((language) => new Intl.DisplayNames(language, { type: 'region' }));
  const names = displayNames.map((names) => names.of(country) ?? country);
  const forms = names.flatMap((name) => [foldName(name), foldName(name.replace('&', 'and'))]);
  return [...new Set([country.toLowerCase(), ...forms, ...(OTHER_NAMES[country] ?? [])])];
}

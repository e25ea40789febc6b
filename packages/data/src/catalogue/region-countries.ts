/** The last words of regions in the catalogue, by country (ISO 3166-1 alpha-2); regions of several name each. */
const COUNTRY_WORDS: Readonly<Record<string, string>> = {
  AR: 'Argentina',
  AU: 'Australia,Queensland,New South Wales',
  BD: 'Bangladesh',
  BE: 'north-western Europe,northern Europe',
  BF: 'Sahel',
  BR: 'Brazil',
  CA: 'Ontario',
  CZ: 'Czechia',
  DE: 'Germany,north-western Europe,northern Europe',
  DK: 'north-western Europe,northern Europe',
  EE: 'northern Europe',
  EG: 'Egypt',
  ER: 'Eritrea',
  ES: 'Spain',
  ET: 'Ethiopia,East Africa',
  FI: 'northern Europe',
  FR: 'France,north-western Europe',
  GB: 'United Kingdom,north-western Europe,northern Europe',
  HU: 'Hungary',
  ID: 'Indonesia',
  IE: 'north-western Europe,northern Europe',
  IL: 'Israel',
  IN: 'India,Karnataka,Tamil Nadu,Kerala,Andhra Pradesh,Maharashtra,Madhya Pradesh,Gujarat',
  IR: 'Iran',
  IT: 'Italy',
  JP: 'Japan,Hokkaido,Tohoku',
  KE: 'East Africa',
  LT: 'northern Europe',
  LV: 'northern Europe',
  LY: 'Libya',
  ML: 'Sahel',
  MR: 'Sahel',
  NE: 'Niger,Sahel',
  NG: 'Sahel',
  NL: 'Netherlands,north-western Europe,northern Europe',
  NO: 'northern Europe',
  NZ: 'New Zealand',
  PE: 'Peru',
  PH: 'Philippines',
  PK: 'Pakistan,Sindh',
  PL: 'Poland,northern Europe',
  SD: 'Sudan,Sahel',
  SE: 'northern Europe',
  SN: 'Sahel',
  TD: 'Sahel',
  TZ: 'East Africa',
  UG: 'East Africa',
  US:
    'United States,California,Connecticut,Delaware,Florida,Hawaii,Idaho,Illinois,Iowa,Louisiana,New Hampshire,' +
    'New Mexico,New York,North Dakota,Oregon,Pacific Northwest,Texas,Utah,Vermont,Wisconsin',
  ZA: 'South Africa,Eastern Cape',
};

const wordsOf = new Map(
  Object.entries(COUNTRY_WORDS).map(([country, words]) => [country, words.split(',')] as const),
);

/** Whether a region of the catalogue lies in a country; belts of the Earth, such as the tropics, lie in none. */
export function isRegionIn(region: string, country: string): boolean {
  return wordsOf.get(country)?.some((words) => region.endsWith(words)) ?? false;
}

/** The catalogue has the same few hundred regions in all its lines: each is looked through once. */
const countriesKnown = new Map<string, readonly string[]>();

/** The countries in which a region of the catalogue lies. */
export function countriesOf(region: string): readonly string[] {
  let countries = countriesKnown.get(region);
  if (countries === undefined) {
    countries = [...wordsOf.keys()].filter((country) => isRegionIn(region, country));
    countriesKnown.set(region, countries);
  }
  return countries;
}

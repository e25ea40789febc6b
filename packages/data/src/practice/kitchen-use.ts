/**
 * Where a figure is from: published by those named, counted by the United Nations and told by those named, in a report,
 * or from memory. Names stand as they are published, in any language.
 */
export type UseSource =
  | { from: 'published'; title: string; year: number | null }
  | { from: 'united-nations'; title: string; year: number | null }
  | { from: 'conference'; year: number }
  | { from: 'memory' };

/** How many onions people of a country eat, fresh bulbs as bought. */
export type KitchenUse = {
  kgPerYear: number;
  /** One person in a week, g. */
  gramsPerPerson: number;
  source: UseSource;
};

type Figure = Pick<KitchenUse, 'kgPerYear' | 'source'>;

const published = (kgPerYear: number, title: string, year: number | null = null): Figure => ({
  kgPerYear,
  source: { from: 'published', title, year },
});
const counted = (kgPerYear: number, title: string, year: number | null = null): Figure => ({
  kgPerYear,
  source: { from: 'united-nations', title, year },
});
/** General knowledge of food balance sheets, not checked. */
const memory = (kgPerYear: number): Figure => ({ kgPerYear, source: { from: 'memory' } });

/** What the world eats, kg a person and year. */
const world = published(6.2, 'New Mexico State University, onion.nmsu.edu/consumption.html');

/** By ISO 3166-1 alpha-2 code, kg a person and year; the middle where a span was given. */
const byCountry: Readonly<Record<string, Figure>> = {
  LY: published(30.3, 'New Mexico State University, onion.nmsu.edu/consumption.html'),
  AL: counted(33, 'freshplaza.de, 5005017'),
  SN: counted(21.7, 'freshplaza, 133716', 2011),
  GB: counted(9.3, 'freshplaza, 133716', 2011),
  US: published(8.3, 'United States Department of Agriculture, onion.nmsu.edu/consumption.html', 2000),
  NZ: { kgPerYear: 7, source: { from: 'conference', year: 2002 } },
  // 25 g a day
  BD: published(9.1, 'Bangladesh Agricultural Research Institute', 2011),
  IN: memory(14),
  TR: memory(21),
  DE: memory(7.5),
  NL: memory(8),
  JP: memory(8.5),
  NE: memory(20),
};

const weeksPerYear = 365 / 7;

/** What one person usually eats; the world's figure where the country's is not known. */
export function usualGramsPerWeek(country: string | null): KitchenUse {
  const { kgPerYear, source } =
    (country !== null && Object.hasOwn(byCountry, country) && byCountry[country]) || world;
  return { kgPerYear, gramsPerPerson: Math.round((1000 * kgPerYear) / weeksPerYear), source };
}

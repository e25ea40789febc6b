/** How many onions people of a country eat, fresh bulbs as bought. */
export type KitchenUse = {
  kgPerYear: number;
  /** One person in a week, g. */
  gramsPerPerson: number;
  source: { words: string; wasSeen: boolean };
};

const seen = (kgPerYear: number, words: string) => ({ kgPerYear, words, wasSeen: true });
const memory = (kgPerYear: number) => ({
  kgPerYear,
  words: 'general knowledge of food balance sheets, not checked',
  wasSeen: false,
});

/** What the world eats, kg a person and year. */
const world = seen(6.2, 'New Mexico State University, onion.nmsu.edu/consumption.html');

/** By ISO 3166-1 alpha-2 code, kg a person and year; the middle where a span was given. */
const byCountry: Readonly<Record<string, ReturnType<typeof seen>>> = {
  LY: seen(30.3, 'New Mexico State University, onion.nmsu.edu/consumption.html'),
  AL: seen(33, 'figures of the United Nations as reported by freshplaza.de, 5005017'),
  SN: seen(21.7, 'figures of the United Nations for 2011 as reported by freshplaza, 133716'),
  GB: seen(9.3, 'figures of the United Nations for 2011 as reported by freshplaza, 133716'),
  US: seen(8.3, 'United States Department of Agriculture for 2000, in onion.nmsu.edu/consumption.html'),
  NZ: seen(7, 'conference report for 2002'),
  BD: seen(9.1, 'Bangladesh Agricultural Research Institute for 2011: 25 g a day'),
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
  const { kgPerYear, words, wasSeen } =
    (country !== null && Object.hasOwn(byCountry, country) && byCountry[country]) || world;
  const gramsPerPerson = Math.round((1000 * kgPerYear) / weeksPerYear);
  return { kgPerYear, gramsPerPerson, source: { words, wasSeen } };
}

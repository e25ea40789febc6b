import type { Cultivar } from './cultivar.ts';
import { countriesOf, isRegionIn } from './region-countries.ts';

/**
 * Countries whose gardeners buy from the same seed houses or grow in alike: common practice, no source. A name that is
 * sold in one is likelier to be found in another than one from elsewhere.
 */
const SEED_TRADE: readonly string[] = [
  'GB IE JE GG IM FR BE NL LU DE AT CH LI DK SE NO FI IS EE LV LT PL CZ SK HU SI HR RO BG UA BY RU MD',
  'ES PT IT GR MT CY AL BA ME MK RS HR SI TR MA DZ TN LY EG IL PS LB JO SY AD SM',
  'US CA PR BM BS',
  'AU NZ',
  'IN PK BD NP LK BT MM MV AF',
  'KE UG TZ ET ER RW BI SO DJ SS SD MW ZM MZ',
  'NE NG ML BF SN GM GN GW SL LR CI GH TG BJ TD MR CM CF',
  'ZA NA BW LS SZ ZW MZ ZM AO MW',
  'AR UY PY CL BO PE EC',
  'BR UY PY',
  'MX GT HN SV NI CR PA BZ CU DO HT JM TT BB PR CO VE GY SR',
  'JP KR KP TW CN',
  'PH ID MY SG TH VN LA KH BN TL',
  'IR IQ AF TR AZ AM GE SY KW',
];

const neighboursOf = new Map<string, ReadonlySet<string>>();

function neighbours(country: string): ReadonlySet<string> {
  let codes = neighboursOf.get(country);
  if (codes === undefined) {
    const areas = SEED_TRADE.map((area) => area.split(' ')).filter((area) => area.includes(country));
    codes = new Set(areas.flat());
    neighboursOf.set(country, codes);
  }
  return codes;
}

/** How near a name is to the shops of a country, the nearest first. */
export const nearnesses = ['sold', 'grown', 'neighbour', 'far'] as const;
/** One of {@link nearnesses}, the nearest first. */
export type Nearness = (typeof nearnesses)[number];

/** `sold` or `grown` in the country (ISO 3166-1 alpha-2), or either where seed is bought alike; as far as is known. */
export function nearnessOf(
  { soldIn, regions }: Pick<Cultivar, 'soldIn' | 'regions'>,
  country: string,
): Nearness {
  if (soldIn.includes(country)) return 'sold';
  if (regions.some((region) => isRegionIn(region, country))) return 'grown';
  const near = neighbours(country);
  const isNear = (code: string) => near.has(code);
  return soldIn.some(isNear) || regions.flatMap(countriesOf).some(isNear) ? 'neighbour' : 'far';
}

import { foldName } from './fold-name.ts';
import type { Gazetteer } from './gazetteer.ts';

/** Names of regions by country and code: ISO 3166-2, common names (memory). */
const REGIONS: Record<string, string> = {
  US:
    'AL Alabama,AK Alaska,AZ Arizona,AR Arkansas,CA California,CO Colorado,CT Connecticut,DE Delaware,' +
    'DC District of Columbia,FL Florida,GA Georgia,HI Hawaii,ID Idaho,IL Illinois,IN Indiana,IA Iowa,KS Kansas,' +
    'KY Kentucky,LA Louisiana,ME Maine,MD Maryland,MA Massachusetts,MI Michigan,MN Minnesota,MS Mississippi,' +
    'MO Missouri,MT Montana,NE Nebraska,NV Nevada,NH New Hampshire,NJ New Jersey,NM New Mexico,NY New York,' +
    'NC North Carolina,ND North Dakota,OH Ohio,OK Oklahoma,OR Oregon,PA Pennsylvania,RI Rhode Island,' +
    'SC South Carolina,SD South Dakota,TN Tennessee,TX Texas,UT Utah,VT Vermont,VA Virginia,WA Washington,' +
    'WV West Virginia,WI Wisconsin,WY Wyoming',
  CA:
    'AB Alberta,BC British Columbia,MB Manitoba,NB New Brunswick,NL Newfoundland and Labrador,NS Nova Scotia,' +
    'NT Northwest Territories,NU Nunavut,ON Ontario,PE Prince Edward Island,QC Quebec,SK Saskatchewan,YT Yukon',
  AU:
    'ACT Australian Capital Territory,NSW New South Wales,NT Northern Territory,QLD Queensland,' +
    'SA South Australia,TAS Tasmania,VIC Victoria,WA Western Australia',
  GB: 'ENG England,SCT Scotland,WLS Wales,NIR Northern Ireland',
};

const codeOfName = new Map(
  Object.entries(REGIONS).flatMap(([country, list]) =>
    list.split(',').map((entry) => {
      const [code] = entry.split(' ', 1);
      return [foldName(entry.slice(code.length)), `${country}-${code}`] as const;
    }),
  ),
);

/** Whether a town's region is the one written, by its code or its English name. */
export function isRegionCalled(country: string, region: string | null, text: string): boolean {
  if (region === null) return false;
  const folded = foldName(text);
  return region.toLowerCase() === folded || codeOfName.get(folded) === `${country}-${region}`;
}

/** Whether the gazetteer has a region so called. */
export function isAnyRegion(gazetteer: Gazetteer, text: string): boolean {
  return gazetteer.parts.some((part) =>
    part.areas.some(([country, , region]) => isRegionCalled(country, region === '' ? null : region, text)),
  );
}

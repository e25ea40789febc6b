import { foldName } from './fold-name.ts';

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

/** Further ways to write a region, folded. */
const OTHER_FORMS: Readonly<Record<string, readonly string[]>> = {
  'US-DC': ['d c'],
  'GB-NIR': ['ni', 'n ireland'],
  'CA-NL': ['newfoundland', 'nfld'],
  'CA-PE': ['pei'],
};

const nameOfCode = new Map<string, string>(
  Object.entries(REGIONS).flatMap(([country, list]) =>
    list.split(',').map((entry) => {
      const [code] = entry.split(' ', 1);
      return [`${country}-${code}`, foldName(entry.slice(code.length))] as const;
    }),
  ),
);

/** How people write a region, folded: by its code, its English name, short forms. */
export function regionForms(country: string, region: string): string[] {
  const key = `${country}-${region}`;
  const name = nameOfCode.get(key);
  return [region.toLowerCase(), ...(name === undefined ? [] : [name]), ...(OTHER_FORMS[key] ?? [])];
}

import fc from 'fast-check';
import { pageNames, readAddress, writeAddress } from '../../packages/app/src/address/address.ts';
import { forms } from '../../packages/app/src/address/address-form.ts';
import { hostileText } from '../../packages/cli/test/fuzz/hostile.ts';
import { attack } from './attack.ts';

const keys = Object.values(forms).map(({ key }) => key);
const values = fc.oneof(
  { weight: 2, arbitrary: hostileText },
  fc.constantFrom(
    '45.76,4.84',
    '2027-03-25',
    'sets',
    'long',
    'yes',
    '30',
    '14.5',
    'a,b,,c',
    '1e3',
    '%',
    '+',
    '&',
    '#',
  ),
);
/** Half of a letter that is written in two: no address can carry it. */
const loneHalf = /\p{Cs}/gu;

const hashes = fc
  .tuple(
    fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...pageNames) }, hostileText),
    fc.array(
      fc.tuple(
        fc.oneof({ weight: 8, arbitrary: fc.constantFrom(...keys) }, hostileText),
        values,
        fc.boolean(),
      ),
      {
        maxLength: 8,
      },
    ),
    fc.constantFrom('#/', '#', '', '/'),
  )
  .map(([page, asked, start]) => {
    const pair = (text: string, isPlain: boolean) =>
      isPlain ? text : encodeURIComponent(text.replace(loneHalf, ''));
    return `${start}${page}?${asked.map(([key, value, plain]) => `${pair(key, plain)}=${pair(value, plain)}`).join('&')}`;
  });

export const ofAddresses = attack(
  'addresses of the app: any page, any key, any value',
  30,
  hashes,
  (hash) => {
    const { page, asked, misread } = readAddress(hash);
    if (!pageNames.includes(page)) return `no page: ${page}`;
    if (misread.some(({ value }) => value.length > 80)) return 'a value is told at length';
    const written = writeAddress(page, asked);
    if (/[\s<>"]/.test(written)) return `written with a sign that ends a link: ${written}`;
    const again = readAddress(written);
    if (again.misread.length > 0)
      return `its own link ${written} is misread: ${JSON.stringify(again.misread)}`;
    // numbers are written as rounded as they are shown
    return writeAddress(page, again.asked) === written ? null : `changed by its own link ${written}`;
  },
);

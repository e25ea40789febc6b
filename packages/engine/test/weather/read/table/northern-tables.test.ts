import { describe, expect, it } from 'vitest';
import { daysRead } from './days-read.ts';

const tables: [what: string, text: string, days: string[]][] = [
  [
    'Polish, month names',
    'Dzień;Najwyższa temperatura;Najniższa temperatura;Suma dobowa opadów\n30 września 2024;15,5;6,0;0,4\n1 października 2024;14,0;5,5;0,0',
    ['2024-09-30 6/15.5/0.4', '2024-10-01 5.5/14/0'],
  ],
  [
    'Norwegian, the words of a licence below',
    'Navn;Stasjon;Tid(norsk normaltid);Maksimumstemperatur (døgn);Minimumstemperatur (døgn);Nedbør (døgn)\nHagen;SN1;01.02.2024;2,5;-4;1,5\nHagen;SN1;02.02.2024;3;-1;0\nData er gyldig per 03.02.2024 (CC BY 4.0);;;;;',
    ['2024-02-01 -4/2.5/1.5', '2024-02-02 -1/3/0'],
  ],
];

describe('a table of days in a language of the north', () => {
  it.each(tables)('is read: %s', (_, text, days) => {
    expect(daysRead(text)).toEqual(days);
  });
});

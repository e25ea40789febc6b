import { type OddValue, parseDay } from '@neckfall/engine';
import { loadLanguage, speaker } from '@neckfall/words';
import { expect, test } from 'vitest';
import { oddSentence } from '../../src/index.ts';

const day = parseDay('2027-06-20')!;
const beforeDay = parseDay('2027-06-10')!;
const startDay = parseDay('2027-03-20')!;

const all: OddValue[] = [
  { code: 'leaves-many', values: { leaves: 17.5, most: 16 } },
  { code: 'leaves-fewer', values: { leaves: 5, before: 9, beforeDay } },
  { code: 'neck-wide', values: { neckMm: 40, bulbMm: 26 } },
  { code: 'tops-less', values: { sharePct: 50, beforePct: 60, beforeDay } },
  { code: 'flowering-many', values: { flowering: 81, standing: 80 } },
  { code: 'bulbs-many', values: { bulbs: 1001, plants: 100 } },
  { code: 'thick-many', values: { thick: 30, bulbs: 12 } },
  { code: 'water-much', values: { litres: 151, areaM2: 3 } },
  { code: 'feed-much', values: { grams: 301, areaM2: 3 } },
  { code: 'before-start', values: { day, startDay } },
  { code: 'long-after', values: { day, startDay } },
  { code: 'in-future', values: { day, today: beforeDay } },
];

test('each odd value is asked about, in all languages', async () => {
  await loadLanguage('es');
  for (const voice of [speaker('metric'), speaker('us'), speaker('metric', 'es')])
    for (const odd of all) expect(oddSentence(odd, voice)).toMatch(/\?$/);
});

test('values are told in the units and dates of the reader', () => {
  const told = (units: 'metric' | 'us') =>
    all.map((odd) => oddSentence(odd, speaker(units)).replace(/\s/g, ' ')).join('\n');
  for (const part of [
    '17.5 green',
    '9 on 10 June 2027',
    '40 mm',
    '60% were',
    '1,001',
    '151 l',
    '3 m²',
    '301 g',
  ])
    expect(told('metric')).toContain(part);
  // a US gallon is 3.785411784 l, an ounce 28.349523125 g (NIST Handbook 44, appendix C)
  for (const part of ['1.6 in', 'June 10, 2027', '39.9 gal', '10.6 oz', '32 square feet'])
    expect(told('us')).toContain(part);
});

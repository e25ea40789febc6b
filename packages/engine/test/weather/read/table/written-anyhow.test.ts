import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { civilDate, dayNumber } from '../../../../src/calendar/index.ts';
import { foundIn, two } from './days-read.ts';

/** Names of date, time, highest, lowest, reading and rain as people write them, and of columns that must not be taken. */
const languages = [
  ['Date', 'Time', 'Max Temp', 'Min Temp', 'Outdoor Temperature', 'Rain', 'Indoor Temperature', 'Dew Point'],
  [
    'Datum',
    'Uhrzeit',
    'Höchsttemperatur',
    'Tiefsttemperatur',
    'Außentemperatur',
    'Niederschlag',
    'Innentemperatur',
    'Taupunkt',
  ],
  [
    'Date',
    'Heure',
    'Température maximale',
    'Température minimale',
    'Température extérieure',
    'Pluie',
    'Température intérieure',
    'Point de rosée',
  ],
  [
    'Fecha',
    'Hora',
    'Temperatura máxima',
    'Temperatura mínima',
    'Temperatura exterior',
    'Lluvia',
    'Temperatura interior',
    'Punto de rocío',
  ],
  [
    'Data',
    'Hora',
    'Temperatura máxima',
    'Temperatura mínima',
    'Temperatura externa',
    'Chuva',
    'Temperatura interna',
    'Ponto de orvalho',
  ],
  [
    'Data',
    'Ora',
    'Temperatura massima',
    'Temperatura minima',
    'Temperatura esterna',
    'Pioggia',
    'Temperatura interna',
    'Punto di rugiada',
  ],
  [
    'Datum',
    'Tijd',
    'Maximumtemperatuur',
    'Minimumtemperatuur',
    'Buitentemperatuur',
    'Neerslag',
    'Binnentemperatuur',
    'Dauwpunt',
  ],
  [
    'Data',
    'Czas',
    'Najwyższa temperatura',
    'Najniższa temperatura',
    'Temperatura zewnętrzna',
    'Opad',
    'Temperatura wewnętrzna',
    'Punkt rosy',
  ],
  [
    'Datum',
    'Tid',
    'Högsta temperatur',
    'Lägsta temperatur',
    'Utomhustemperatur',
    'Nederbörd',
    'Inomhustemperatur',
    'Daggpunkt',
  ],
  [
    'Dato',
    'Tid',
    'Høyeste temperatur',
    'Laveste temperatur',
    'Utetemperatur',
    'Nedbør',
    'Innetemperatur',
    'Duggpunkt',
  ],
  [
    'Dato',
    'Klokkeslæt',
    'Højeste temperatur',
    'Laveste temperatur',
    'Udetemperatur',
    'Nedbør',
    'Indetemperatur',
    'Dugpunkt',
  ],
] as const;

const dates: ((year: number, month: number, day: number) => string)[] = [
  (year, month, day) => `${year}-${two(month)}-${two(day)}`,
  (year, month, day) => `${year}/${month}/${day}`,
  (year, month, day) => `${two(day)}.${two(month)}.${year}`,
  (year, month, day) => `${day}/${month}/${year % 100}`,
  (year, month, day) => `${two(month)}/${two(day)}/${year}`,
  (year, month, day) => `${year}${two(month)}${two(day)}`,
];

const style = fc.record({
  language: fc.constantFrom(...languages),
  date: fc.constantFrom(...dates),
  delimiter: fc.constantFrom(',', ';', '\t', '|'),
  isComma: fc.boolean(),
  isFahrenheit: fc.boolean(),
  isStated: fc.boolean(),
  isQuoted: fc.boolean(),
  isBackward: fc.boolean(),
  isHourly: fc.boolean(),
  isCounter: fc.constantFrom('none', 'day', 'year'),
  isApart: fc.boolean(),
  first: fc.integer({ min: dayNumber(2015, 1, 1), max: dayNumber(2025, 1, 1) }),
});
type Style = typeof style extends fc.Arbitrary<infer T> ? T : never;

/** A mild fortnight and more, warm enough that °F can't be °C. */
const days = Array.from({ length: 40 }, (_, at) => ({
  low: 8 + ((at * 7) % 9),
  high: 20 + ((at * 5) % 11),
  rain: at % 3 === 0 ? ((at * 13) % 40) / 10 : 0,
}));

function write(how: Style): string {
  const { language, isFahrenheit, isStated, isHourly } = how;
  const [date, time, max, min, reading, rain, indoors, dew] = language;
  const isComma = how.isComma && (how.delimiter !== ',' || how.isQuoted);
  const number = (value: number, decimals: number) =>
    isComma ? value.toFixed(decimals).replace('.', ',') : value.toFixed(decimals);
  const temperature = (celsius: number) => number(isFahrenheit ? celsius * 1.8 + 32 : celsius, 2);
  const mm = (value: number) => (isFahrenheit ? number(value / 25.4, 4) : number(value, 2));
  const unit = (of: 'temperature' | 'rain') => {
    if (!isStated) return '';
    if (of === 'rain') return isFahrenheit ? ' (in)' : ' (mm)';
    return isFahrenheit ? ' (°F)' : ' (°C)';
  };
  const rainName =
    !isHourly || how.isCounter === 'none' ? rain : how.isCounter === 'day' ? 'Daily Rain' : 'Yearly Rain';
  const heads = isHourly ? [reading] : [max, min];
  const names = [
    date,
    ...(isHourly && how.isApart ? [time] : []),
    ...heads.map((name) => name + unit('temperature')),
    indoors + unit('temperature'),
    dew + unit('temperature'),
    rainName + unit('rain'),
  ];
  const rows: string[][] = [];
  let sum = 100;
  for (const [at, day] of days.entries()) {
    const { year, month, day: dayOfMonth } = civilDate(how.first + at);
    const stamp = how.date(year, month, dayOfMonth);
    const others = [temperature(27), temperature(5)];
    if (!isHourly) {
      rows.push([stamp, temperature(day.high), temperature(day.low), ...others, mm(day.rain)]);
      continue;
    }
    for (let hour = 0; hour < 24; hour++) {
      const degrees = hour === 6 ? day.low : hour === 14 ? day.high : (day.low + day.high) / 2;
      const fell = hour === 10 ? day.rain : 0;
      sum += fell;
      const shown =
        how.isCounter === 'none' ? fell : how.isCounter === 'year' ? sum : hour >= 10 ? day.rain : 0;
      const clock = `${two(hour)}:00`;
      rows.push([
        ...(how.isApart ? [stamp, clock] : [`${stamp} ${clock}`]),
        temperature(degrees),
        ...others,
        mm(shown),
      ]);
    }
  }
  if (how.isBackward) rows.reverse();
  const cell = (text: string) => (how.isQuoted ? `"${text}"` : text);
  return [names, ...rows].map((row) => row.map(cell).join(how.delimiter)).join('\n');
}

describe('weather written anyhow', () => {
  it('comes back as it was, to what was rounded', () => {
    fc.assert(
      fc.property(style, (how) => {
        const { record, columns } = foundIn(write(how));
        expect(record.firstDay).toBe(how.first);
        expect(record.days).toBe(days.length);
        for (const [at, { low, high, rain }] of days.entries()) {
          expect([record.known.tempMinC[at], record.known.tempMaxC[at]]).toEqual([1, 1]);
          expect(Math.abs(record.tempMinC[at]! - low)).toBeLessThan(0.01);
          expect(Math.abs(record.tempMaxC[at]! - high)).toBeLessThan(0.01);
          expect(record.known.rainMm[at]).toBe(1);
          expect(Math.abs(record.rainMm[at]! - rain)).toBeLessThan(0.02);
        }
        expect(columns.filter(({ as }) => as.startsWith('temp'))).toHaveLength(how.isHourly ? 1 : 2);
      }),
      { seed: 20261128, numRuns: 400 },
    );
  });
});

import fc from 'fast-check';
import { columnsOf } from '../../src/batch/columns.ts';
import { hostileText } from './hostile.ts';

/** A batch as bytes, and the pieces it comes in. */
export type Table = { bytes: Uint8Array; pieces: readonly number[] };

const likely: Record<string, readonly string[]> = {
  id: ['a', 'b', '', '7', 'Talgarth; hill'],
  latitude: ['45.76', '52,08', '-33', '0', '91'],
  longitude: ['4.84', '-3.13', '-68.9', '0', '181'],
  elevation_m: ['', '160', '9000'],
  class: ['long', 'short', 'intermediate', 'Long ', ''],
  cultivar: ['', 'Walla Walla', 'Walla Wala'],
  start: ['sets', 'direct-seed', 'raised-seedlings', 'bought-transplants'],
  date: ['03-25', '2027-10-01', '02-30', ''],
  plant_out: ['', '2028-04-20', '04-20'],
  density_per_m2: ['', '60', '0'],
  set_size_mm: ['', '12'],
  set_store: ['', 'warm'],
  cover: ['', 'fleece'],
  sun_hours: ['', '7'],
  water: ['', 'rain'],
};

const columns = fc.oneof(
  { weight: 8, arbitrary: fc.shuffledSubarray([...columnsOf.season], { minLength: 5 }).map(withPlace) },
  {
    weight: 1,
    arbitrary: fc.array(fc.oneof(fc.constantFrom(...columnsOf.season), hostileText), { maxLength: 6 }),
  },
);

function withPlace(names: readonly string[]): string[] {
  return [...new Set(['latitude', 'longitude', ...names])];
}

const cellOf = (column: string) =>
  fc.oneof(
    { weight: 12, arbitrary: fc.constantFrom(...(Object.hasOwn(likely, column) ? likely[column] : ['x'])) },
    { weight: 1, arbitrary: hostileText },
  );

const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;

/** Tables whole, torn and mistaken. */
export const tables: fc.Arbitrary<Table> = columns
  .chain((names) => fc.tuple(fc.constant(names), fc.array(fc.tuple(...names.map(cellOf)), { maxLength: 5 })))
  .chain(([names, rows]) =>
    fc.record({
      text: fc
        .tuple(fc.constantFrom(',', ';', '\t'), fc.constantFrom('\n', '\r\n', '\r'), fc.boolean())
        .map(([delimiter, newline, quotes]) =>
          [names, ...rows]
            .map((row) =>
              row.map((cell) => (quotes || /[",;\n\r]/.test(cell) ? quoted(cell) : cell)).join(delimiter),
            )
            .join(newline),
        ),
      encoding: fc.constantFrom('utf8', 'utf8', 'utf8', 'utf16le', 'utf16be', 'latin1'),
      hasMark: fc.boolean(),
      damage: fc.option(fc.array(fc.tuple(fc.nat(), fc.integer({ min: 0, max: 255 })), { maxLength: 3 }), {
        freq: 3,
      }),
      cut: fc.option(fc.nat(), { freq: 4 }),
      pieces: fc.array(fc.integer({ min: 1, max: 40 }), { maxLength: 6 }),
    }),
  )
  .map(({ text, encoding, hasMark, damage, cut, pieces }) => {
    const marked = hasMark ? `\ufeff${text}` : text;
    const bytes =
      encoding === 'utf16be'
        ? Buffer.from(marked, 'utf16le').swap16()
        : Buffer.from(marked, encoding as 'utf8');
    for (const [place, value] of damage ?? []) if (bytes.length > 0) bytes[place % bytes.length] = value;
    return { bytes: cut === null ? bytes : bytes.subarray(0, cut % (bytes.length + 1)), pieces };
  });

export async function* inPieces({ bytes, pieces }: Table): AsyncGenerator<Uint8Array> {
  let at = 0;
  for (const size of pieces) {
    yield bytes.subarray(at, at + size);
    at += size;
  }
  yield bytes.subarray(at);
}

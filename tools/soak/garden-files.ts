import { type Garden, restoreGarden } from '@neckfall/engine';
import fc from 'fast-check';
import { readGarden } from '../../packages/app/src/files/read-garden.ts';
import { newId } from '../../packages/app/src/garden/new-id.ts';
import { hostileText } from '../../packages/cli/test/fuzz/hostile.ts';
import { attack } from './attack.ts';

const lists = ['places', 'beds', 'cultivars', 'plantings', 'observations', 'jobs', 'weather'] as const;

const value = fc.oneof(
  { weight: 3, arbitrary: hostileText },
  fc.double(),
  fc.constantFrom(null, true, 7, 14.5, [], {}, [[]], '2027-03-25', 'long', 'sets'),
  fc.jsonValue({ maxDepth: 2 }),
);
/** Ids as they have come to clash: cleaned, long, inherited, of the making of others. */
const id = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.constantFrom(
      'q',
      'q\u200b',
      ' q',
      'plantings-1',
      'plantings-2',
      'constructor',
      '__proto__',
    ),
  },
  fc.constantFrom('x'.repeat(121), 'x'.repeat(122), ''),
  value,
);
const fields = [
  'name',
  'cultivar',
  'class',
  'start',
  'startDate',
  'placeId',
  'latitudeDeg',
  'longitudeDeg',
  'plants',
  'bedId',
  'plantsPerStation',
  'lengthM',
  'watering',
  'alliumYears',
  'whiteRot',
  'plantingId',
  'leavesGreen',
  'fedProduct',
  'note',
  'lifted',
];
const day = fc.oneof({ weight: 4, arbitrary: fc.constantFrom('2027-05-20', '2028-02-29') }, value);
const seen = fc
  .tuple(day, fc.dictionary(fc.oneof(fc.constantFrom(...fields), hostileText), value, { maxKeys: 6 }), id)
  .map(([date, rest, own]) => ({ ...rest, date, id: own }));
const column = fc.oneof(
  { weight: 4, arbitrary: fc.array(fc.oneof(fc.double(), value), { maxLength: 5 }) },
  value,
);
const weather = fc
  .record({ firstDate: day, tempMinC: column, rainMm: column, solarMJ: column, sources: column, id })
  .map((found) => found as object);
const job = fc
  .tuple(
    day,
    fc.constantFrom('done', 'left-out', 'put-off', 'lost'),
    fc.oneof(fc.constant('lift'), value),
    day,
    id,
  )
  .map(([date, state, work, until, own]) => ({ date, state, job: work, until, id: own }));
const entry = fc.oneof(
  {
    weight: 6,
    arbitrary: fc
      .tuple(id, fc.dictionary(fc.oneof(fc.constantFrom(...fields), hostileText), value, { maxKeys: 6 }))
      .map(([own, rest]) => ({ ...rest, id: own })),
  },
  value,
);
const document = fc.record(
  {
    schema: fc.oneof({ weight: 5, arbitrary: fc.constant('neckfall/garden@1') }, value),
    places: fc.oneof({ weight: 5, arbitrary: fc.array(entry, { maxLength: 6 }) }, value),
    beds: fc.oneof({ weight: 5, arbitrary: fc.array(entry, { maxLength: 6 }) }, value),
    cultivars: fc.oneof({ weight: 5, arbitrary: fc.array(entry, { maxLength: 6 }) }, value),
    plantings: fc.oneof({ weight: 5, arbitrary: fc.array(entry, { maxLength: 6 }) }, value),
    observations: fc.oneof(
      { weight: 5, arbitrary: fc.array(fc.oneof(seen, entry), { maxLength: 6 }) },
      value,
    ),
    jobs: fc.oneof({ weight: 5, arbitrary: fc.array(fc.oneof(job, entry), { maxLength: 6 }) }, value),
    weather: fc.oneof({ weight: 5, arbitrary: fc.array(fc.oneof(weather, entry), { maxLength: 4 }) }, value),
  },
  { requiredKeys: [] },
);
/** A document as text, some of it damaged, cut or nested deep. */
const texts = fc.oneof(
  { weight: 8, arbitrary: document.map((found) => JSON.stringify(found)) },
  fc
    .tuple(document, fc.nat(), fc.integer({ min: 0, max: 255 }))
    .map(([found, at, code]) => damaged(JSON.stringify(found), at, code)),
  fc
    .tuple(fc.constantFrom('[', '{"a":', '{"plantings":[', '{"schema":'), fc.integer({ min: 1, max: 20_000 }))
    .map(([open, deep]) => nested(open, deep)),
);

function damaged(text: string, at: number, code: number): string {
  const place = at % (text.length + 1);
  return at % 3 === 0
    ? text.slice(0, place)
    : text.slice(0, place) + String.fromCharCode(code) + text.slice(place + 1);
}

function nested(open: string, deep: number): string {
  const close = [...open].flatMap((sign) => (sign === '[' ? [']'] : sign === '{' ? ['}'] : [])).reverse();
  return `${open.repeat(deep)}0${close.join('').repeat(deep)}`;
}

export const ofGardens = attack(
  'garden files: inherited names, clashing ids, damage, deep nesting',
  30,
  texts,
  async (text) => {
    const read = await readGarden(new Blob([text]), newId);
    if (Object.hasOwn(Object.prototype, 'polluted')) return 'a prototype was written to';
    if ('problem' in read) return null;
    const { garden, changes } = read;
    const twice = restoreGarden(garden);
    if (JSON.stringify(twice.garden) !== JSON.stringify(garden)) return 'restoring again changes it';
    if (twice.changes.length > 0) return `restoring again tells of ${JSON.stringify(twice.changes[0])}`;
    if (changes.some(({ found }) => found.length > 200)) return 'a change is told at length';
    return clash(garden);
  },
);

function clash(garden: Garden): string | null {
  for (const list of lists) {
    const ids = garden[list].map((kept) => kept.id);
    if (new Set(ids).size < ids.length) return `two ${list} share an id`;
    if (ids.some((kept) => typeof kept !== 'string' || kept === '')) return `no id in ${list}`;
  }
  return null;
}

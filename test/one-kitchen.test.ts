import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  countryOf,
  keepEatFirst,
  keepGapSentence,
  keepGrounds,
  keepHeadline,
  keepLotSentence,
  keepUnmetSentence,
  ofLot,
  shoppingOf,
  shoppingSentence,
  storedEatFirst,
  storedSentence,
} from '../packages/answers/src/index.ts';
import { nothingAsked, readAddress, writeAddress } from '../packages/app/src/address/address.ts';
import type { Asked } from '../packages/app/src/address/address-form.ts';
import { askedOfPlace } from '../packages/app/src/garden/asked-of.ts';
import { askedOfKitchen, householdOf } from '../packages/app/src/garden/kitchen-of.ts';
import { askedOfLot } from '../packages/app/src/garden/lot-asked.ts';
import { keepYear } from '../packages/app/src/worker/keep-year.ts';
import { seasonAhead } from '../packages/app/src/worker/season-ahead.ts';
import type { SiteAsked } from '../packages/app/src/worker/site.ts';
import { storedNow } from '../packages/app/src/worker/stored-now.ts';
import { keepAnswer } from '../packages/cli/src/answer/keep-answer.ts';
import type { RawKeep } from '../packages/cli/src/answer/keep-asked.ts';
import type { KeepDocument } from '../packages/cli/src/documents/keep-schema.ts';
import { openFrame } from '../packages/cli/src/frame/frame.ts';
import { readPlaceOptions } from '../packages/cli/src/options/place-options.ts';
import { speakerFor } from '../packages/cli/src/options/speaker-for.ts';
import { usualGramsPerWeek } from '../packages/data/src/index.ts';
import {
  densityOf,
  emptyGarden,
  type Garden,
  groundUnsaid,
  landWarmingSinceNormalsC,
  planDefaults,
  restoreGarden,
  spacingOf,
  startMethods,
} from '../packages/engine/src/index.ts';
import { loadLanguage, loadLater } from '../packages/words/src/index.ts';

type Kitchen = Pick<Asked, 'at' | 'elevation'> & Partial<Asked>;

const here = (latitudeDeg: number, longitudeDeg: number, elevation: number) => ({
  at: { latitudeDeg, longitudeDeg },
  elevation,
});

/** Households of many kinds, north and south, on days through the year; what is not said is as usual. */
const kitchens: [string, string, Kitchen, RawKeep][] = [
  [
    'Leeds',
    '2027-01-10',
    { ...here(53.8, -1.55, 60), people: 4, likes: ['keeper', 'green'] },
    { people: '4', like: 'keeper,green' },
  ],
  [
    'Lisbon',
    '2027-09-20',
    { ...here(38.72, -9.14, 50), store: 'garage', likes: ['mild', 'red', 'green'] },
    { people: '2', store: 'garage', like: 'mild,red,green' },
  ],
  [
    'Nairobi',
    '2027-04-01',
    { ...here(-1.29, 36.82, 1670), people: 5, gramsPerWeek: 1400, store: 'kitchen' },
    { people: '5', gramsPerWeek: '1400', store: 'kitchen' },
  ],
  [
    'Boise',
    '2027-07-20',
    { ...here(43.62, -116.2, 820), people: 3, store: { tempC: 4, humidityPct: 70 }, likes: ['green'] },
    { people: '3', store: '4,70', like: 'green', units: 'us' },
  ],
  [
    // sets of spring keepers are set in autumn for their leaves
    'Helsinki',
    '2027-08-01',
    { ...here(60.17, 24.94, 20), people: 3, likes: ['green'] },
    { people: '3', like: 'green' },
  ],
  [
    'Dunedin',
    '2027-11-05',
    { ...here(-45.87, 170.5, 20), people: 2, store: 'shed', seedAge: 'one-year', sun: 8 },
    { people: '2', store: 'shed', seedAge: 'one-year', sun: '8', lang: 'es' },
  ],
];

beforeAll(async () => {
  await loadLater();
  await loadLanguage('es');
});

/** What page Keep says, from the answers of its workers. */
async function pageOf(raw: RawKeep, asked: Asked, garden: Garden, place: string | null) {
  const speaker = speakerFor(raw);
  const { latitudeDeg, longitudeDeg } = asked.at!;
  const at = `${latitudeDeg},${longitudeDeg},${asked.elevation}`;
  const options = readPlaceOptions(undefined, { ...raw, at });
  const { place: located, site: opened } = openFrame(options, speaker);
  const country = countryOf(located);
  const site: SiteAsked = {
    climate: located.climate,
    warmerC: landWarmingSinceNormalsC,
    frostHollow: asked.hollow === true,
    years: options.years,
    seed: options.seed,
    practice: opened.practice,
    atHand: [],
  };
  const usual = usualGramsPerWeek(country);
  const usualUse = asked.gramsPerWeek === null ? usual : null;
  const household = householdOf(asked, usual.gramsPerPerson, garden.kitchen?.storeReadings ?? []);
  const { today } = options;
  const grown = growingOf(asked);
  const work = { part: () => {}, pause: async () => {} };
  const own = garden.cultivars;
  const places = place === null ? [] : [place];
  const { year, store } = await keepYear(
    { site, household, country, own, garden, places, today, options: grown },
    work as never,
  );
  const stored = storedNow({ site, store: household.store, garden, places, today });
  const lots = year.lots.map((lot, at) => ofLot(at, keepLotSentence(lot, today, country, speaker), speaker));
  return {
    site,
    today,
    year,
    answer: keepHeadline(year, today, speaker),
    unmet: keepUnmetSentence(year, speaker),
    lots,
    gaps: year.gaps.map((gap) => keepGapSentence(gap, speaker)),
    eatFirst: [
      ...stored.flatMap((one) => storedEatFirst([one], today, speaker)),
      ...keepEatFirst(year, today, speaker),
    ],
    inStore: stored.map((one) => storedSentence(one, today, speaker)),
    shopping: shoppingOf(year).map((item) => shoppingSentence(item, country, speaker)),
    grounds: keepGrounds({ year, store }, usualUse, site.practice, speaker),
  };
}

/** How an address says that the crop is grown. */
function growingOf({ sun, rowDistance, plantDistance, perStation }: Asked) {
  const spacing = spacingOf({
    rowDistanceCm: rowDistance,
    plantDistanceCm: plantDistance,
    plantsPerStation: perStation,
  });
  return { ...(sun === null ? {} : { sunHours: sun }), densityPerM2: densityOf(spacing) };
}

const plain = (text: string) => text.replace(/\s+/g, ' ').trim();

/** What the command prints under a title. */
function under(text: string, title: string): string {
  const part = text.split('\n\n').find((section) => section.split('\n')[0] === title);
  return plain(part?.split('\n').slice(1).join('\n') ?? '');
}

function expectAlike(page: Awaited<ReturnType<typeof pageOf>>, target: string | undefined, raw: RawKeep) {
  const speaker = speakerFor(raw);
  const told = keepAnswer(target, raw, speaker);
  const document = told.json() as KeepDocument;
  const text = told.text();
  const lead = plain(text.split('\n\n')[0]);
  expect(lead).toBe(plain([page.answer, page.unmet ?? ''].join(' ')));
  expect(document.answer).toBe(page.answer);
  expect(document.eatFirst).toEqual(page.eatFirst);
  expect(document.shopping.map(({ sentence }) => sentence)).toEqual(page.shopping);
  expect(document.assumed.slice(-page.grounds.length)).toEqual(page.grounds);
  expect(document.suppliedYearsShare).toBe(page.year.suppliedYearsShare);
  for (const [key, sentences] of [
    ['keep-table.lots', page.lots],
    ['keep-table.gaps', page.gaps],
    ['keep-table.in-store', page.inStore],
    ['keep-table.eat-first', page.eatFirst],
    ['keep-table.shopping', page.shopping],
  ] as const)
    expect(under(text, speaker.say(key))).toBe(plain(sentences.join(' ')));
}

describe('the page and the command keep a kitchen alike', () => {
  test.each(kitchens)('in %s, asked on %s', async (_, today, said, raw) => {
    const asked = { ...nothingAsked, ...said };
    const at = `${said.at!.latitudeDeg},${said.at!.longitudeDeg},${said.elevation}`;
    const options = { ...raw, at, today };
    const page = await pageOf(options, asked, emptyGarden(), null);
    expect(page.lots.length).toBeGreaterThan(0);
    expectAlike(page, undefined, options);

    // the way to the season of a lot opens the same season
    for (const lot of page.year.lots) {
      const { asked: opened } = readAddress(writeAddress('season', { ...asked, ...askedOfLot(lot) }));
      const { summary } = seasonAhead({
        site: page.site,
        today: page.today,
        options: { ...growingOf(opened), nurseryTempC: planDefaults.nurseryTempC },
        crop: { class: opened.class! },
        starts: startMethods,
        start: opened.start,
        startDay: opened.date,
        seen: [],
        ground: groundUnsaid,
        marks: [],
        keepsMonths: lot.kind.keepsMonths,
        store: page.year.household.store,
      });
      const { type, start, startDay, densityPerM2 } = lot.plan;
      expect(summary.plan).toMatchObject({ type, start, startDay, densityPerM2 });
      expect(summary.neckFall).toEqual(lot.summary.neckFall);
      expect(summary.bulbDiameterMm).toEqual(lot.summary.bulbDiameterMm);
    }
  });
});

describe('of a garden, with what it has in store', () => {
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-kitchen-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const example = new URL('../docs/examples/pencarreg.neckfall.json', import.meta.url);
  const seen = (id: string, plantingId: string, date: string, what: object) => ({
    id,
    plantingId,
    date,
    ...what,
  });
  const observations = [
    seen('a', 'tarrant', '2027-08-28', { lifted: true, weighedKg: 12, bulbCount: 110 }),
    seen('b', 'tarrant', '2027-12-01', { soundCount: 80, sproutedCount: 3, rottenCount: 4 }),
    seen('c', 'okoro', '2027-08-10', { lifted: true, bulbCount: 85 }),
  ];
  const cultivars = [{ id: 'tin', name: 'Ines’s Tin', class: 'long', packetHours: 15, keepsMonths: [7, 9] }];

  test.each([
    [
      'its kitchen as it is kept, with a reading of its store',
      {
        people: 3,
        gramsPerWeek: 900,
        store: 'shed',
        storeReadings: [{ store: 'shed', date: '2027-12-20', tempC: 1, humidityPct: null }],
        likes: ['keeper'],
      },
    ],
    [
      'its own air, in a frost hollow',
      { people: 2, gramsPerWeek: null, store: null, storeTempC: 6, storeHumidityPct: 72, likes: [] },
    ],
  ])('%s', async (name, kitchen) => {
    const file = join(folder, 'garden.neckfall.json');
    const written = JSON.parse(readFileSync(example, 'utf8'));
    const [bank] = written.places;
    const places = [{ ...bank, frostHollow: name.includes('hollow') }];
    writeFileSync(file, JSON.stringify({ ...written, places, kitchen, observations, cultivars }));
    const { garden } = restoreGarden(JSON.parse(readFileSync(file, 'utf8')));
    const asked = {
      ...nothingAsked,
      ...askedOfPlace(garden.places[0]),
      ...askedOfKitchen(garden.kitchen),
    };
    const raw = { today: '2028-01-20' };
    const page = await pageOf(raw, asked, garden, 'bank');
    expect(page.inStore).toHaveLength(2);
    expect(page.year.taught?.looks).toBe(1);
    expect(page.grounds.join(' ')).toContain('One look at what was kept there is counted in');
    expectAlike(page, file, raw);
  });
});

import {
  type DayLengthClass,
  dayLengthClasses,
  gardenRanges,
  type Like,
  likes,
  planFields,
  type SeedAge,
  type SoilTexture,
  type StartMethod,
  type StoreAir,
  type StorePlace,
  seedAges,
  startMethods,
  storePlaces,
} from '@neckfall/engine';
import {
  day,
  type Form,
  id,
  longestName,
  number,
  plainName,
  readNumber,
  text,
  word,
  yes,
} from './form-kinds.ts';
import { type TeachInAddress, teachForms } from './teach-form.ts';
import { type WhyInAddress, whyForms } from './why-form.ts';

const colours = ['yellow', 'red', 'white', 'brown', 'pink'] as const;
type Colour = (typeof colours)[number];
const held = ['seed', 'plants', 'sets'] as const;

/** What may stand in the address of a page, all of it optional: null where it does not. */
export type Asked = TeachInAddress &
  WhyInAddress & {
    /** Latitude and longitude in degrees. */
    at: { latitudeDeg: number; longitudeDeg: number } | null;
    /** What the place is called: a town of the list, or the grower's own name for it. */
    name: string | null;
    /** Elevation of the ground where it is known better than by the list, m. */
    elevation: number | null;
    /** Direct sun on the bed at midsummer, h. */
    sun: number | null;
    hollow: true | null;
    cover: 'fleece' | 'tunnel' | null;
    water: 'rain' | null;
    soil: SoilTexture | null;
    class: DayLengthClass | null;
    cultivar: string | null;
    /** Day length printed on a packet, h. */
    packetHours: number | null;
    /** Days to maturity printed on a packet. */
    packetDays: number | null;
    start: StartMethod | null;
    /** Day on which the grower starts, a day number. */
    date: number | null;
    /** Planting out of raised seedlings, a day number. */
    plantOut: number | null;
    /** From row to row and from plant to plant in the row, cm. */
    rowDistance: number | null;
    plantDistance: number | null;
    /** Plants that stand together at each distance. */
    perStation: number | null;
    /** How old the seed is. */
    seedAge: SeedAge | null;
    /** How many plants are wanted. */
    plants: number | null;
    /** Size of sets, mm, and how they were stored. */
    setSize: number | null;
    setStore: 'warm' | null;
    /** Nursery of raised seedlings: °C, and hours of lamps. */
    nurseryTemp: number | null;
    lampHours: number | null;
    /** What is in the packet in the hand. */
    holds: (typeof held)[number] | null;
    /** Skin of the onion in the hand. */
    skin: Colour | null;
    /** The rest narrows the list of what can be had; `class` and `start` are what was chosen, and narrow nothing. */
    onlyClass: DayLengthClass | null;
    onlyStart: StartMethod | null;
    colour: Colour | null;
    /** Names of the onions that can be had. */
    have: readonly string[] | null;
    keeps: number | null;
    mild: true | null;
    /** Whether the grower holds a packet, before anything on it is said. */
    packet: true | null;
    /** Onions set side by side, two to four of them. */
    beside: readonly { start: StartMethod; name: string }[] | null;
    /** Id of the planting of the kept garden that the page shows. */
    planting: string | null;
    /** Id of the bed of the kept garden in which the crop lies. */
    bed: string | null;
    /** The kitchen to be kept in onions: its people, what they eat in a week, g, where they store it, what they like. */
    people: number | null;
    gramsPerWeek: number | null;
    store: StorePlace | StoreAir | null;
    likes: readonly Like[] | null;
    /** The day to take for today, a day number; null: the machine's. */
    today: number | null;
  };

export type AskedName = keyof Asked;

export const mostBeside = 4;

export const forms: { [Name in AskedName]: Form<NonNullable<Asked[Name]>> } = {
  at: {
    key: 'at',
    expects: 'point',
    read: (raw) => {
      const [latitude, longitude, more] = raw.split(',').map(readNumber);
      if (latitude == null || longitude == null || more !== undefined) return undefined;
      if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) return undefined;
      return { latitudeDeg: latitude, longitudeDeg: longitude };
    },
    write: ({ latitudeDeg, longitudeDeg }) =>
      `${Number(latitudeDeg.toFixed(4))},${Number(longitudeDeg.toFixed(4))}`,
  },
  name: text('name'),
  elevation: number('elevation', ...gardenRanges.elevationM),
  sun: number('sun', ...gardenRanges.sunHours, 1),
  hollow: yes('hollow'),
  cover: word(planFields.cover.name, ['fleece', 'tunnel']),
  water: word(planFields.water.name, ['rain']),
  soil: word(planFields.soil.name, planFields.soil.words),
  class: word('class', dayLengthClasses),
  cultivar: text('cultivar'),
  packetHours: number('packet-hours', ...gardenRanges.packetHours, 2),
  packetDays: number('packet-days', ...gardenRanges.packetDays),
  start: word('start', startMethods),
  date: day('date'),
  plantOut: day('plant-out'),
  rowDistance: number('row-cm', ...gardenRanges.rowDistanceCm, 1),
  plantDistance: number('plant-cm', ...gardenRanges.plantDistanceCm, 1),
  perStation: number('clump', ...gardenRanges.plantsPerStation, 1),
  seedAge: word('seed-age', seedAges),
  plants: number('plants', ...gardenRanges.plants),
  setSize: number(planFields.setSizeMm.name, ...planFields.setSizeMm.range, 1),
  setStore: word(planFields.setStore.name, ['warm']),
  nurseryTemp: number(planFields.nurseryTempC.name, ...planFields.nurseryTempC.range, 1),
  lampHours: number(planFields.lampHours.name, ...planFields.lampHours.range, 1),
  have: {
    key: 'have',
    expects: 'text',
    read: (raw) => {
      const names = raw.split(',').map(plainName).filter(Boolean);
      return names.length > 0 && names.length <= 50 && raw.length < 4000 ? names : undefined;
    },
    write: (names) => names.join(','),
  },
  holds: word('holds', held),
  skin: word('skin', colours),
  onlyClass: word('only-class', dayLengthClasses),
  onlyStart: word('only-start', startMethods),
  colour: word('colour', colours),
  keeps: number('keeps', 1, 12),
  mild: yes('mild'),
  packet: yes('packet'),
  beside: {
    key: 'beside',
    expects: 'text',
    read: (raw) => {
      const onions = raw.split(',').flatMap((part) => {
        const at = part.indexOf('~');
        const start = startMethods.find((candidate) => candidate === part.slice(0, at).trim());
        const name = plainName(part.slice(at + 1));
        return start && name !== '' && name.length <= longestName ? [{ start, name }] : [];
      });
      return onions.length > 0 && onions.length <= mostBeside ? onions : undefined;
    },
    write: (onions) => onions.map(({ start, name }) => `${start}~${name}`).join(','),
  },
  planting: id('planting'),
  bed: id('bed'),
  people: number('people', ...gardenRanges.people),
  gramsPerWeek: number('grams-per-week', ...gardenRanges.gramsPerWeek),
  store: {
    key: 'store',
    expects: 'word',
    read: (raw) => storePlaces.find((place) => place === raw.toLowerCase()) ?? readAir(raw),
    write: (store) => (typeof store === 'string' ? store : `${store.tempC},${store.humidityPct}`),
  },
  likes: {
    key: 'like',
    expects: 'word',
    read: (raw) => {
      const said = raw.toLowerCase().split(',');
      return said.every((word) => likes.some((like) => like === word))
        ? likes.filter((like) => said.includes(like))
        : undefined;
    },
    write: (wanted) => wanted.join(','),
  },
  ...whyForms,
  ...teachForms,
  today: day('today'),
};

/** Air of a store: °C and % relative humidity, `4,65`. */
function readAir(raw: string): StoreAir | undefined {
  const [tempC, humidityPct, more] = raw.split(',').map(readNumber);
  if (tempC == null || humidityPct == null || more !== undefined) return undefined;
  const isWithin = (value: number, [min, max]: readonly [number, number]) => value >= min && value <= max;
  return isWithin(tempC, gardenRanges.storeTempC) && isWithin(humidityPct, gardenRanges.storeHumidityPct)
    ? { tempC, humidityPct }
    : undefined;
}

/** A name as it may stand in an address; null where it can't. */
export function nameInAddress(name: string): string | null {
  return forms.name.read(name) ?? null;
}

/** An id as it may stand in an address; null where it can't. */
export function idInAddress(id: string): string | null {
  return forms.planting.read(id) ?? null;
}

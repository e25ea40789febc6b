import {
  bulbDiameterMm,
  type PlantValues,
  runnerOf,
  type StartMethod,
} from '../../packages/engine/src/index.ts';
import { answered } from './answered.ts';
import { type Places, type PublishedPlan, planOf, publishedSite } from './published-plan.ts';

/** What gardeners of a place lift at 35 plants per m², mm (common practice, no source). */
type GardenCrop = PublishedPlan & { from: number; to: number };

const north = (lat: number, lon: number, elevationM: number, later: number): GardenCrop[] => {
  const day = (month: number, of: number) => {
    const date = new Date(Date.UTC(2015, month - 1, of + later));
    return date.toISOString().slice(5, 10);
  };
  const crop = (start: StartMethod, date: string, from: number, to: number): GardenCrop => ({
    lat,
    lon,
    elevationM,
    dayLengthClass: 'long',
    start,
    date,
    densityPerM2: 35,
    from,
    to,
  });
  return [
    crop('direct-seed', day(3, 15), 63, 77),
    crop('raised-seedlings', day(2, 15), 64, 80),
    crop('bought-transplants', day(4, 5), 64, 80),
    { ...crop('sets', day(3, 25), 66, 80), setSizeMm: 14 },
  ];
};

/** Well-grown long-day onions of the north: 55–90 mm, the usual ones 60–75. */
const crops: readonly GardenCrop[] = [
  ...north(51.5, -0.1, 20, 0),
  ...north(53.35, -6.26, 20, 5),
  ...north(52.2, 21, 110, 14),
  ...north(48.1, 11.6, 520, 10),
  ...north(47.6, -122.3, 50, 0),
  ...north(59.9, 10.75, 30, 28),
  ...north(46.9, -96.8, 270, 28),
  ...north(57.15, -2.1, 30, 14),
];

/** Kinds of far lower latitudes sown in winter trays make small bulbs in the north (common practice, no source). */
const farFromHome: readonly GardenCrop[] = [
  [51.5, -0.1],
  [59.9, 10.75],
  [52.2, 21],
  [48.9, 2.35],
].flatMap(([lat, lon]) =>
  (['tropical-short', 'short'] as const).map((type) => ({
    lat,
    lon,
    elevationM: 50,
    dayLengthClass: 'short' as const,
    type,
    start: 'raised-seedlings' as const,
    date: '12-20',
    from: 1,
    to: type === 'short' ? 45 : 40,
  })),
);

export type GardenSize = { crop: PublishedPlan; mm: number; from: number; to: number; isFar: boolean };

/** The median bulb of each, mm; 0 where tops go over in fewer than half of the years. */
export function gardenSizes(values: PlantValues, places: Places): GardenSize[] {
  return [...crops, ...farFromHome].filter(places).map((crop) => {
    const site = publishedSite(crop, values);
    const { fellOn, bulbG } = answered(site, runnerOf(site, planOf(site, crop)));
    const isFar = crop.from === 1;
    const mm = fellOn === null && !isFar ? 0 : bulbDiameterMm(bulbG);
    return { crop, mm, from: crop.from, to: crop.to, isFar };
  });
}

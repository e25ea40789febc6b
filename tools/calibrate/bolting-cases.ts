import type { DayLengthClass, StartMethod } from '../../packages/engine/src/index.ts';

/** A start with the share of plants that bolted; dates `MM-DD`. */
export type BoltingCase = {
  id: string;
  lat: number;
  lon: number;
  elevationM: number;
  dayLengthClass: DayLengthClass;
  start: StartMethod;
  date: string;
  plantOut?: string;
  /** Share of plants, 0…1. */
  bolted: number;
  weight: number;
  source: string;
};

const adana = {
  lat: 37.03,
  lon: 35.37,
  elevationM: 25,
  dayLengthClass: 'short',
  start: 'direct-seed',
  weight: 1,
  source:
    'seen: Adana trial, Saygi & Sari 2011, mean of three cultivars (one bolts, two hardly do); place memory',
} as const;
const faridpur = {
  lat: 23.6,
  lon: 89.84,
  elevationM: 10,
  dayLengthClass: 'short',
  start: 'raised-seedlings',
  weight: 1,
  source: 'seen: Faridpur trial 2018–19, Arch. Agric. Environ. Sci. 5(3); place, class and sowing memory',
} as const;
const newMexico = {
  lat: 32.3,
  lon: -106.8,
  elevationM: 1190,
  dayLengthClass: 'short',
  start: 'direct-seed',
  weight: 1,
  source:
    'seen in words: New Mexico, Corgan & Kedar 1990 (early September much, mid-October none); shares ours',
} as const;
const london = { lat: 51.5, lon: -0.1, elevationM: 10 } as const;
const dublin = { lat: 53.35, lon: -6.26, elevationM: 20 } as const;
const spring = 'memory: sown or planted in spring, hardly any bolt';
const autumnSets = 'common practice, no source: everyday in Britain and Ireland, and few flower';
const august =
  'seen in words: England, Brewster 2008 pp. 289–290 (early sowings bolt); dates and shares memory';

export const boltingCases: readonly BoltingCase[] = [
  { id: 'adana-18-sep', ...adana, date: '09-18', bolted: 0.77 },
  { id: 'adana-1-oct', ...adana, date: '10-01', bolted: 0.54 },
  { id: 'adana-15-oct', ...adana, date: '10-15', bolted: 0.19 },
  { id: 'faridpur-15-nov', ...faridpur, date: '10-03', plantOut: '11-15', bolted: 0.71 },
  { id: 'faridpur-30-dec', ...faridpur, date: '11-18', plantOut: '12-30', bolted: 0.02 },
  { id: 'new-mexico-5-sep', ...newMexico, date: '09-05', bolted: 0.5 },
  { id: 'new-mexico-20-sep', ...newMexico, date: '09-20', bolted: 0.1 },
  { id: 'new-mexico-15-oct', ...newMexico, date: '10-15', bolted: 0.01 },
  {
    id: 'behbahan-6-sep',
    lat: 30.6,
    lon: 50.24,
    elevationM: 320,
    dayLengthClass: 'short',
    start: 'direct-seed',
    date: '09-06',
    bolted: 0.175,
    weight: 0.7,
    source:
      'seen: Behbahan trial 2011–13, Darabi; nursery sowing, planting out not printed; place, class memory',
  },
  {
    id: 'swat-10-jan',
    lat: 34.78,
    lon: 72.36,
    elevationM: 980,
    dayLengthClass: 'intermediate',
    start: 'bought-transplants',
    date: '01-10',
    bolted: 0.01,
    weight: 0.4,
    source: 'seen: Swat trial 2013–15, Khan et al. 2021 (none bolted); place and class memory',
  },
  {
    id: 'hobart',
    lat: -42.88,
    lon: 147.33,
    elevationM: 50,
    dayLengthClass: 'long',
    start: 'raised-seedlings',
    date: '02-20',
    plantOut: '05-14',
    bolted: 0.8,
    weight: 0.5,
    source: 'seen in words: Sunday Tasmanian gardening column, 14 May 2017; sowing and share memory',
  },
  {
    id: 'davis',
    lat: 38.54,
    lon: -121.74,
    elevationM: 16,
    dayLengthClass: 'intermediate',
    start: 'raised-seedlings',
    date: '07-25',
    plantOut: '09-20',
    bolted: 0.8,
    weight: 0.5,
    source: 'memory: seedlings far too early for overwintering bolt',
  },
  {
    id: 'london-25-jul',
    ...london,
    dayLengthClass: 'intermediate',
    start: 'direct-seed',
    date: '07-25',
    bolted: 0.6,
    weight: 0.4,
    source: august,
  },
  {
    id: 'london-20-aug',
    ...london,
    dayLengthClass: 'intermediate',
    start: 'direct-seed',
    date: '08-20',
    bolted: 0.08,
    weight: 2,
    source: august,
  },
  {
    id: 'london-spring',
    ...london,
    dayLengthClass: 'long',
    start: 'direct-seed',
    date: '03-10',
    bolted: 0.02,
    weight: 1,
    source: spring,
  },
  {
    id: 'london-autumn-sets',
    ...london,
    dayLengthClass: 'long',
    start: 'sets',
    date: '09-25',
    bolted: 0.06,
    weight: 1,
    source: autumnSets,
  },
  {
    id: 'dublin-autumn-sets',
    ...dublin,
    dayLengthClass: 'long',
    start: 'sets',
    date: '09-25',
    bolted: 0.06,
    weight: 1,
    source: autumnSets,
  },
  {
    id: 'london-wintering-seed',
    ...london,
    dayLengthClass: 'long',
    start: 'direct-seed',
    date: '08-22',
    bolted: 0.06,
    weight: 3,
    source: august,
  },
  {
    id: 'seattle-wintering-seed',
    lat: 47.6,
    lon: -122.3,
    elevationM: 50,
    dayLengthClass: 'long',
    start: 'direct-seed',
    date: '08-25',
    bolted: 0.06,
    weight: 1.5,
    source: 'common practice, no source: kinds bred to winter, sown in late August, stand',
  },
  {
    id: 'london-spring-sets',
    ...london,
    dayLengthClass: 'long',
    start: 'sets',
    date: '03-25',
    bolted: 0.06,
    weight: 1,
    source: 'common practice, no source: few sets of 14–16 mm flower',
  },
  {
    id: 'aberdeen-spring',
    lat: 57.15,
    lon: -2.1,
    elevationM: 40,
    dayLengthClass: 'long',
    start: 'direct-seed',
    date: '05-05',
    bolted: 0.02,
    weight: 1,
    source: spring,
  },
  {
    id: 'oslo-spring',
    lat: 59.9,
    lon: 10.75,
    elevationM: 20,
    dayLengthClass: 'long',
    start: 'direct-seed',
    date: '04-15',
    bolted: 0.02,
    weight: 1,
    source: spring,
  },
  {
    id: 'dublin-plants',
    ...dublin,
    dayLengthClass: 'long',
    start: 'bought-transplants',
    date: '03-20',
    bolted: 0.05,
    weight: 1,
    source: spring,
  },
  {
    id: 'edinburgh-raised',
    lat: 55.95,
    lon: -3.2,
    elevationM: 50,
    dayLengthClass: 'long',
    start: 'raised-seedlings',
    date: '02-10',
    bolted: 0.04,
    weight: 1,
    source: spring,
  },
];

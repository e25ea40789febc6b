import { formatDay, type Garden, restoreGarden } from '@neckfall/engine';

/** How much a garden of twenty years holds that is kept as carefully as any. */
export const greatGarden = {
  years: 20,
  plantings: 400,
  observations: 20_000,
  marks: 8_000,
  weatherPlaces: 5,
} as const;

const firstDay = Date.UTC(2008, 0, 1) / 86_400_000;

/** The garden of Ines Tarrant and Bram Okoro after twenty years: invented, the same each time. */
export function makeGreatGarden(size: {
  years: number;
  plantings: number;
  observations: number;
  marks: number;
  weatherPlaces: number;
}): Garden {
  const { years, plantings, observations, marks, weatherPlaces } = size;
  const days = Math.round(years * 365.25);
  const perPlanting = observations / plantings;
  return restoreGarden({
    schema: 'neckfall/garden@1',
    keeper: 'Ines Tarrant',
    places: Array.from({ length: Math.max(weatherPlaces, 1) }, (_, at) => ({
      id: `place-${at}`,
      name: `Terrace ${at + 1}`,
      latitudeDeg: 52.08,
      longitudeDeg: -3.13 + at / 100,
    })),
    cultivars: [{ id: 'tin', name: 'Ines’s Tin', class: 'long', packetHours: 15 }],
    plantings: Array.from({ length: plantings }, (_, at) => ({
      id: `planting-${at}`,
      name: `Bed ${at + 1}`,
      placeId: `place-${at % Math.max(weatherPlaces, 1)}`,
      cultivar: 'Ines’s Tin',
      start: 'sets',
      startDate: formatDay(firstDay + 80 + Math.floor((at * years) / plantings) * 365),
      rowDistanceCm: 30,
      plantDistanceCm: 10,
      plants: 250,
    })),
    observations: Array.from({ length: observations }, (_, at) => observation(at, perPlanting, size)),
    jobs: Array.from({ length: marks }, (_, at) => ({
      id: `mark-${at}`,
      plantingId: `planting-${at % plantings}`,
      job: `weed-${1 + Math.floor(at / plantings)}`,
      state: 'done',
      date: formatDay(firstDay + 80 + (at % plantings)),
    })),
    weather: Array.from({ length: weatherPlaces }, (_, at) => weather(at, days)),
  }).garden;
}

function observation(
  at: number,
  perPlanting: number,
  { years, plantings }: { years: number; plantings: number },
) {
  const planting = Math.floor(at / perPlanting);
  const nth = at % perPlanting;
  const day = firstDay + 80 + Math.floor((planting * years) / plantings) * 365 + nth * 3;
  const seen = [
    { lookedAt: 10, leavesGreen: Math.min(11, 2 + nth / 5) },
    { lookedAt: 10, neckMm: 4 + nth / 4, bulbMm: 5 + nth },
    { wateredLitres: 60 },
    { note: 'Weeded by Bram Okoro, after rain.' },
    { fedProduct: '10-4-8', fedG: 200 },
  ];
  return {
    id: `seen-${at}`,
    plantingId: `planting-${planting}`,
    date: formatDay(day),
    ...seen[at % seen.length],
  };
}

function weather(at: number, days: number) {
  const column = (of: (day: number) => number) =>
    Array.from({ length: days }, (_, day) => ((day + at) % 97 === 0 ? null : Math.round(of(day) * 10) / 10));
  const season = (day: number) => -Math.cos(((day % 365.25) / 365.25) * 2 * Math.PI);
  return {
    id: `weather-${at}`,
    placeId: `place-${at}`,
    firstDate: formatDay(firstDay),
    tempMinC: column((day) => 5 + 6 * season(day) + ((day * 7) % 11) / 3),
    tempMaxC: column((day) => 13 + 8 * season(day) + ((day * 5) % 13) / 3),
    rainMm: column((day) => (day % 3 === 0 ? (day * 13) % 17 : 0)),
    solarMJ: column((day) => 11 + 8 * season(day)),
    forecastFrom: null,
    sources: [
      {
        name: 'gate.csv',
        format: 'own-table',
        from: formatDay(firstDay),
        to: formatDay(firstDay + days - 1),
      },
    ],
  };
}

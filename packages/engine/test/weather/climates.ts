import type { MonthlyClimate } from '../../src/climate/index.ts';

const filled = (values: number[] | number) =>
  Float64Array.from({ length: 12 }, (_, month) => (typeof values === 'number' ? values : values[month]!));

/** A monthly climate for tests; fields not given are middling. Shapes of climates, not of named places. */
export function climateOf(fields: {
  latitudeDeg: number;
  elevationM?: number;
  mean: number[] | number;
  range?: number[] | number;
  rain?: number[] | number;
  wetDays?: number[] | number;
  sunshine?: number[] | number;
  minSd?: number[] | number;
}): MonthlyClimate {
  return {
    latitudeDeg: fields.latitudeDeg,
    longitudeDeg: 0,
    elevationM: fields.elevationM ?? 50,
    tempMeanC: filled(fields.mean),
    tempRangeC: filled(fields.range ?? 9),
    rainMm: filled(fields.rain ?? 60),
    wetDays: filled(fields.wetDays ?? 10),
    relativeHumidityPct: filled(70),
    sunshinePct: filled(fields.sunshine ?? 50),
    wind10mMs: filled(3),
    frostNights: filled(0),
    minTempSdC: filled(fields.minSd ?? 3),
  };
}

export const wetWinterCoast = climateOf({
  latitudeDeg: 47,
  mean: [5, 6, 8, 10, 13.5, 16, 19, 19, 16.5, 11.5, 7, 5],
  range: [5.5, 6, 7.5, 9, 10, 10, 12, 11, 9.5, 7, 6, 5],
  rain: [130, 95, 95, 65, 48, 40, 18, 25, 42, 85, 150, 140],
  wetDays: [18, 15, 16, 14, 11, 9, 5, 5, 8, 13, 18, 19],
  sunshine: [25, 35, 45, 50, 55, 55, 65, 65, 60, 45, 30, 22],
  minSd: [3.4, 2.9, 3, 2.2, 2.1, 2.1, 1.8, 1.6, 2, 2.4, 3.6, 3.5],
});

export const coldInland = climateOf({
  latitudeDeg: 62,
  mean: [-38, -32, -19, -4, 7, 16, 19, 15, 6, -8, -27, -37],
  range: [7, 9, 14, 12, 12, 12, 12, 11, 9, 7, 7, 6],
  rain: [9, 8, 6, 10, 20, 34, 38, 37, 31, 18, 16, 10],
  wetDays: [12, 10, 6, 5, 7, 9, 9, 9, 9, 12, 13, 11],
  sunshine: [15, 35, 55, 55, 50, 50, 50, 45, 35, 25, 20, 8],
  minSd: [7, 7, 7, 6, 4.5, 4, 3.2, 3.8, 4.2, 6, 7, 7],
});

export const hotDesert = climateOf({
  latitudeDeg: -24,
  mean: [31, 30, 28, 23, 17, 13, 12, 15, 20, 24, 28, 30],
  range: 15,
  rain: [20, 25, 12, 6, 5, 0, 2, 1, 0, 3, 8, 12],
  wetDays: [3, 3, 2, 1, 1, 0, 0.5, 0.3, 0.1, 1, 2, 2],
  sunshine: 90,
  minSd: 3.5,
});

export const wetTropics = climateOf({
  latitudeDeg: 3,
  mean: 26.5,
  range: 7,
  rain: [300, 250, 320, 400, 350, 200, 150, 180, 220, 380, 500, 420],
  wetDays: [22, 19, 23, 26, 25, 18, 15, 17, 20, 27, 29, 28],
  sunshine: 40,
  minSd: 1.5,
});

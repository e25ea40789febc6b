export type Place = {
  name: string;
  what: string;
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
};

/** Six places far apart in day length, warmth and season; where they lie is GeoNames (CC BY 4.0), as in the town list. */
export const places: readonly Place[] = [
  { name: 'Aberdeen', what: 'the cool north', latitudeDeg: 57.144, longitudeDeg: -2.098, elevationM: 13 },
  { name: 'London', what: 'mild and oceanic', latitudeDeg: 51.509, longitudeDeg: -0.126, elevationM: 25 },
  {
    name: 'Winnipeg',
    what: 'continental, a short summer',
    latitudeDeg: 49.884,
    longitudeDeg: -97.147,
    elevationM: 245,
  },
  { name: 'Seville', what: 'Mediterranean', latitudeDeg: 37.383, longitudeDeg: -5.973, elevationM: 16 },
  { name: 'Niamey', what: 'tropical lowland', latitudeDeg: 13.514, longitudeDeg: 2.11, elevationM: 206 },
  {
    name: 'Auckland',
    what: 'southern, oceanic',
    latitudeDeg: -36.849,
    longitudeDeg: 174.763,
    elevationM: 43,
  },
];

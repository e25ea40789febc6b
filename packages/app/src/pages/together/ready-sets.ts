import type { PlaceInLink } from './together-address.ts';

type ReadySet = {
  key: 'winter' | 'meridian' | 'mirror';
  places: readonly (PlaceInLink & { name: string })[];
};

const town = (name: string, latitudeDeg: number, longitudeDeg: number) => ({
  name,
  latitudeDeg,
  longitudeDeg,
});

const lyon = town('Lyon', 45.748, 4.847);

/**
 * Towns as the list of towns has them. That the winters of a pair are alike and their onions are not is worked out
 * again by a test.
 */
export const readySets: readonly ReadySet[] = [
  { key: 'winter', places: [town('Seattle', 47.606, -122.332), town('Dallas', 32.783, -96.807)] },
  { key: 'winter', places: [lyon, town('Kathmandu', 27.702, 85.321)] },
  {
    key: 'meridian',
    places: [
      town('Stockholm', 59.329, 18.069),
      town('Gdańsk', 54.352, 18.649),
      town('Pécs', 46.073, 18.231),
      town('Moundou', 8.574, 16.077),
      town('Windhoek', -22.559, 17.083),
      town('Cape Town', -33.926, 18.423),
    ],
  },
  {
    key: 'mirror',
    places: [
      lyon,
      town('Dunedin', -45.874, 170.504),
      town('Atlanta', 33.749, -84.388),
      town('Santiago', -33.457, -70.648),
    ],
  },
];

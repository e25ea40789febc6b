import { describe, expect, test } from 'vitest';
import { dayNumber, formatDay } from '../../packages/engine/src/index.ts';
import { isCovered } from '../season/places.ts';
import {
  type Advice,
  adviceOn,
  compare,
  isSteady,
  movedNorthEast,
  sayLead,
  siteAt,
  steadyPlaces,
} from './steady.ts';

/** Before the spring and before the autumn of either half of the earth. */
const days = [dayNumber(2027, 3, 15), dayNumber(2027, 9, 1)];

/** Every figure of an unsteady advice, in a line; null where it is steady. */
function exception(what: string, first: Advice, second: Advice): string | null {
  if (isSteady(first, second)) return null;
  const there = compare(first, second);
  const back = compare(second, first);
  const far = ({ gap, allowed }: typeof there) => `${gap.toFixed(3)} with ${allowed.toFixed(3)} allowed`;
  return `${formatDay(first.today)} ${what}: ${sayLead(first.lead)} → ${sayLead(second.lead)}; apart ${far(there)}, seen from there ${far(back)}`;
}

/** Where what leads wavers by more than the years tried can tell, with the reason. */
const exceptions: Readonly<Record<string, string>> = {
  Niamey:
    'bought plants in November and trays in October both do well in nearly every year, a tenth of a season apart',
};

describe('at forty places what leads stays, or what follows cannot be told from it', () => {
  test('the places are forty, and the program answers for them', () => {
    expect(new Set(steadyPlaces.map(([name]) => name)).size).toBe(40);
    const uncovered = steadyPlaces.filter(
      ([, latitudeDeg, longitudeDeg]) => !isCovered(latitudeDeg, longitudeDeg),
    );
    expect(uncovered).toEqual([]);
  });

  test.each(steadyPlaces.map((place) => [place[0], place] as const))(
    'at %s: a week on, in another series of years, 10 km off',
    (_, place) => {
      const site = siteAt(place);
      const otherYears = siteAt(place, 2);
      const nearBy = siteAt(movedNorthEast(place, 10));
      const unsteady = days.flatMap((today) => {
        const advice = adviceOn(site, today);
        return [
          exception('a week on', advice, adviceOn(site, today + 7)),
          exception('other years', advice, adviceOn(otherYears, today)),
          exception('10 km off', advice, adviceOn(nearBy, today)),
        ].filter((line) => line !== null);
      });
      if (exceptions[place[0]]) expect(unsteady, 'steady now: take it off the list').not.toEqual([]);
      else expect(unsteady).toEqual([]);
    },
  );
});

describe('advice is compared at one place', () => {
  const [london, singapore, nairobi] = ['London', 'Singapore', 'Nairobi'].map((wanted) => {
    const place = steadyPlaces.find(([name]) => name === wanted);
    if (!place) throw new Error(`${wanted} is not in the list`);
    return adviceOn(siteAt(place), days[0]);
  });

  test('the same advice is steady', () => {
    expect(compare(london, london)).toEqual({ isSame: true, isTie: true, gap: 0, allowed: 0 });
    expect(isSteady(london, london)).toBe(true);
  });

  test('what leads in the tropics is no tie in the north, by the figures that say so', () => {
    for (const tropical of [singapore, nairobi]) {
      const { isSame, isTie, gap, allowed } = compare(london, tropical);
      expect({ isSame, isTie }).toEqual({ isSame: false, isTie: false });
      expect(gap).toBeGreaterThan(allowed);
      expect(isSteady(london, tropical)).toBe(false);
    }
  });
});

test('a point moved by 10 km lies 10 km off, as high up', () => {
  const [name, latitudeDeg, longitudeDeg, elevationM] = movedNorthEast(['Oslo', 60, 10, 20], 10);
  // on a sphere of 6371 km, by the haversine
  const rad = (degrees: number) => (degrees * Math.PI) / 180;
  const chord =
    Math.sin(rad(latitudeDeg - 60) / 2) ** 2 +
    Math.cos(rad(60)) * Math.cos(rad(latitudeDeg)) * Math.sin(rad(longitudeDeg - 10) / 2) ** 2;
  expect(2 * 6371 * Math.asin(Math.sqrt(chord))).toBeCloseTo(10, 1);
  expect([name, elevationM]).toEqual(['Oslo', 20]);
  expect(latitudeDeg).toBeGreaterThan(60);
  expect(longitudeDeg).toBeGreaterThan(10);
});

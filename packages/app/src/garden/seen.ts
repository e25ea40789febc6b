import { emptyGarden, formatDay, type Garden, type Observation } from '@neckfall/engine';

/** What was seen of a planting, the newest day first and of one day the last noted first. */
export function seenOf({ observations }: Pick<Garden, 'observations'>, plantingId: string): Observation[] {
  return observations
    .filter((observation) => observation.plantingId === plantingId)
    .reverse()
    .sort((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));
}

/** The garden with one thing more seen of a planting. */
export function withSeen(garden: Garden | null, plantingId: string, entry: Observation): Garden {
  const before = garden ?? emptyGarden();
  return { ...before, observations: [...before.observations, { ...entry, plantingId }] };
}

/** An entry in the place of the one of its id; nothing comes of it where that is gone meanwhile. */
export function withSeenChanged(garden: Garden, entry: Observation): Garden {
  const { observations } = garden;
  return { ...garden, observations: observations.map((other) => (other.id === entry.id ? entry : other)) };
}

export function withoutSeen(garden: Garden, id: string): Garden {
  return { ...garden, observations: garden.observations.filter((other) => other.id !== id) };
}

/** What was seen by the end of a day, in the order in which it was: the order that learning reads. */
export function toLearnFrom(seen: readonly Observation[], today: number): Observation[] {
  const date = formatDay(today);
  return seen.filter((one) => one.date <= date).reverse();
}

const usualLookedAt = 5;

/** Plants looked at when the planting was looked at last: most look at as many each time. */
export function lastLookedAt(seen: readonly Observation[]): number {
  const last = seen.find(
    ({ lookedAt, topsOverShare }) => lookedAt !== undefined && topsOverShare === undefined,
  );
  return last?.lookedAt ?? usualLookedAt;
}

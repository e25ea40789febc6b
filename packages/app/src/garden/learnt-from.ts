import type { Garden, GardenPlanting } from '@neckfall/engine';

/** Earlier plantings that one starts from, through all that each of them starts from; the oldest first. */
export function plantingsBefore(garden: Garden, planting: GardenPlanting): GardenPlanting[] {
  const before: GardenPlanting[] = [];
  for (let next = fromOf(garden, planting); next && !before.includes(next); next = fromOf(garden, next))
    before.unshift(next);
  return before;
}

function fromOf({ plantings }: Garden, { id, learntFrom }: GardenPlanting): GardenPlanting | undefined {
  return learntFrom === null || learntFrom === id
    ? undefined
    : plantings.find((other) => other.id === learntFrom);
}

/** The last earlier planting of the same onion at the same place of which anything was seen; undefined: none. */
export function lastAlike(garden: Garden, planting: GardenPlanting): GardenPlanting | undefined {
  const { startDate } = planting;
  if (startDate === null) return undefined;
  const seen = new Set(garden.observations.map(({ plantingId }) => plantingId));
  return garden.plantings
    .filter((other) => isAlike(other, planting) && isBefore(other, startDate) && seen.has(other.id))
    .reduce<GardenPlanting | undefined>(
      (last, other) => (last && (last.startDate ?? '') > (other.startDate ?? '') ? last : other),
      undefined,
    );
}

function isBefore({ startDate }: GardenPlanting, date: string): boolean {
  return startDate !== null && startDate < date;
}

/** An onion is the same by its name; without one, by what its packet says. */
function isAlike(one: GardenPlanting, other: GardenPlanting): boolean {
  if (one.id === other.id || one.placeId === null || one.placeId !== other.placeId) return false;
  if (one.cultivar !== null || other.cultivar !== null) return one.cultivar === other.cultivar;
  return (
    one.class === other.class && one.packetHours === other.packetHours && one.packetDays === other.packetDays
  );
}

import type { Garden, GardenPlanting, OwnCultivar } from '@neckfall/engine';

/** The onion of the grower's own that a planting names; own onions come before those of the catalogue. */
export function ownOnion(garden: Garden, { cultivar }: GardenPlanting): OwnCultivar | undefined {
  return cultivar === null ? undefined : garden.cultivars.find(({ name }) => fold(name) === fold(cultivar));
}

function fold(name: string): string {
  return name.normalize('NFKC').trim().toLowerCase();
}

import { foldName, type Garden, type GardenPlanting, type OwnCultivar } from '@neckfall/engine';
import type { Asked } from '../address/address-form.ts';
import { nameInAddress } from '../address/address-form.ts';

/** The onion of the grower's own that a planting names; own onions come before those of the catalogue. */
export function ownOnion(garden: Garden, { cultivar }: GardenPlanting): OwnCultivar | undefined {
  return cultivar === null ? undefined : findOwn(garden.cultivars, cultivar);
}

type Names = { exact: Map<string, object>; alike: Map<string, object> };

/** Lists are never changed, so each is looked through once. */
const known = new WeakMap<readonly object[], Names>();

/** Found by its name as it stands in a file or in an address: of names alike, the one that is so written. */
export function findOwn<Named extends { name: string }>(
  own: readonly Named[],
  name: string,
): Named | undefined {
  let names = known.get(own);
  if (!names) {
    // the first of a name is the one that counts
    const last = [...own].reverse();
    names = {
      exact: new Map(last.map((onion) => [onion.name, onion])),
      alike: new Map(last.map((onion) => [fold(onion.name), onion])),
    };
    known.set(own, names);
  }
  return (names.exact.get(name) ?? names.alike.get(fold(name))) as Named | undefined;
}

/** What an address says of it: its packet goes along, so that a link opens where nobody knows the name. */
export function askedOfOwn(
  own: OwnCultivar,
): Pick<Asked, 'cultivar' | 'class' | 'packetHours' | 'packetDays'> {
  return {
    cultivar: nameInAddress(own.name),
    class: own.class,
    packetHours: own.packetHours,
    packetDays: own.packetDays,
  };
}

/** Whether enough is known of it to be grown here. */
export function canGrow({ class: printed, packetHours }: OwnCultivar): boolean {
  return printed !== null || packetHours !== null;
}

function fold(name: string): string {
  return foldName(nameInAddress(name) ?? name);
}

import { findCultivar } from '@neckfall/data';
import { type DayLengthClass, foldName, type OwnCultivar } from '@neckfall/engine';
import { ordinaryKeeping } from './offers.ts';

/** Where a class is all that is known, months: granos, Spanish onions and globes (memory, as in the catalogue). */
const classKeeping = { short: [2, 3], intermediate: [3, 4], long: [5, 7] } as const;

/**
 * How long an onion usually keeps, months. Own onions come before those of the catalogue, a name before a class; one
 * without either keeps as an ordinary onion.
 */
export function keepingOf(
  own: readonly OwnCultivar[],
  { cultivar: name, class: printed }: { cultivar: string | null; class: DayLengthClass | null },
): readonly [number, number] {
  const mine = name === null ? undefined : own.find((onion) => foldName(onion.name) === foldName(name));
  const ofClass = mine?.class ?? printed;
  return (
    mine?.keepsMonths ??
    (name === null || mine ? null : findCultivar(name).match?.keepsMonths) ??
    (ofClass === null ? ordinaryKeeping : classKeeping[ofClass])
  );
}

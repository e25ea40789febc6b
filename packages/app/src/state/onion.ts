import { type Cultivar, findCultivar, plantOf } from '@neckfall/data';
import {
  type CropAsked,
  civilDate,
  type OwnCultivar,
  type StartMethod,
  startMethods,
} from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import type { Asked } from '../address/address-form.ts';
import { findOwn } from '../garden/own-onion.ts';
import { ownOnions } from './garden.ts';
import { startsHeld } from './held.ts';
import { asked } from './route.ts';
import { today } from './today.ts';

/** The onion that the address names. */
export type Onion = {
  /** For {@link ask}; null where nothing is said that can be used. */
  crop: CropAsked | null;
  /** The onion of the catalogue; null for any other. */
  cultivar: Cultivar | null;
  /** The onion of the grower's own. */
  own: OwnCultivar | null;
  /** Of either; null for a packet or a class. */
  name: string | null;
  /** Ways in which it can be started: all but what is not sold. */
  starts: readonly StartMethod[];
  /** A name that is no onion we can grow, as it was given, with names like it. */
  unknown: { name: string; nearest: readonly string[]; isOtherCrop: boolean } | null;
};

const noName = { cultivar: null, own: null, name: null, starts: startMethods, unknown: null } as const;

/**
 * A name comes before a packet, one of the grower's own before one of the catalogue; without either there is no
 * onion, and a page takes the one that suits the place.
 */
export const onion: ReadonlySignal<Onion> = computed(() => {
  const found = onionAsked(asked.value, ownOnions.value);
  // what is in the hand is known better than what is sold
  return startsHeld.value.length > 0 ? { ...found, starts: startsHeld.value } : found;
});

/** The onion that an address or a planting names. @param onions those of the grower's own */
export function onionAsked(asked: Asked, onions: readonly OwnCultivar[]): Onion {
  const { cultivar: name } = asked;
  if (name === null) return { ...noName, crop: packetCrop(asked) };
  const own = findOwn(onions, name);
  // a link says what its packet said, whatever became of it here
  if (own) return { ...noName, crop: packetCrop(asked) ?? packetCrop(own), own, name: own.name };
  const found = findCultivar(name);
  if (found.match?.kind === 'bulb-onion') {
    const cultivar = found.match;
    return {
      ...noName,
      crop: plantOf(cultivar),
      cultivar,
      name: cultivar.name,
      starts: cultivar.starts,
    };
  }
  const unknown =
    found.match === null
      ? { name, nearest: found.nearest, isOtherCrop: false }
      : { name: found.match.name, nearest: [], isOtherCrop: true };
  return { ...noName, crop: packetCrop(asked), unknown };
}

function packetCrop({
  class: printed,
  packetHours,
  packetDays,
}: Pick<Asked, 'class' | 'packetHours' | 'packetDays'>): CropAsked | null {
  if (printed === null && packetHours === null) return null;
  if (printed !== null && packetHours === null && packetDays === null) return { class: printed };
  return {
    packet: { class: printed, hours: packetHours, days: packetDays },
    year: civilDate(today.value).year,
  };
}

import { type Cultivar, findCultivar, plantOf } from '@neckfall/data';
import { civilDate, type StartMethod, startMethods } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import type { CropAsked } from '../worker/crop.ts';
import { asked } from './route.ts';
import { today } from './today.ts';

/** The onion that the address names. */
export type Onion = {
  /** For {@link ask}; null where the address says nothing that can be used. */
  crop: CropAsked | null;
  /** The onion of the catalogue; null for a packet or a class. */
  cultivar: Cultivar | null;
  /** Ways in which it can be started: all but what is not sold. */
  starts: readonly StartMethod[];
  /** A name that is no onion we can grow, as it was given, with names like it. */
  unknown: { name: string; nearest: readonly string[]; isOtherCrop: boolean } | null;
};

/** A name comes before a packet; without either there is no onion, and a page takes the one that suits the place. */
export const onion: ReadonlySignal<Onion> = computed(() => {
  const { cultivar: name } = asked.value;
  if (name === null) return { crop: packetCrop(), cultivar: null, starts: startMethods, unknown: null };
  const found = findCultivar(name);
  if (found.match?.kind === 'bulb-onion') {
    const cultivar = found.match;
    return { crop: plantOf(cultivar), cultivar, starts: cultivar.starts, unknown: null };
  }
  const unknown =
    found.match === null
      ? { name, nearest: found.nearest, isOtherCrop: false }
      : { name: found.match.name, nearest: [], isOtherCrop: true };
  return { crop: packetCrop(), cultivar: null, starts: startMethods, unknown };
});

function packetCrop(): CropAsked | null {
  const { class: printed, packetHours, packetDays } = asked.value;
  if (printed === null && packetHours === null) return null;
  if (printed !== null && packetHours === null && packetDays === null) return { class: printed };
  return {
    packet: { class: printed, hours: packetHours, days: packetDays },
    year: civilDate(today.value).year,
  };
}

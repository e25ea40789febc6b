import type { Garden, GardenChange, OwnCultivar } from '@neckfall/engine';
import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { dropAtlasShelf } from '../device/atlas-shelf.ts';
import type { DeviceGarden, GardenStanding } from '../device/device-garden.ts';
import type { Step } from '../device/garden-steps.ts';
import { dataBaseName, lineName } from '../device/names.ts';

const known = signal<GardenStanding | null>(null);

/** The garden kept in this browser; null until it was looked for. */
export const gardenStanding: ReadonlySignal<GardenStanding | null> = computed(() => known.value);

/** What holds the garden: the device, or this page alone. */
export const gardenHolder: ReadonlySignal<'device' | 'page'> = computed(() =>
  known.value && known.value.unkept !== null ? 'page' : 'device',
);

const none: readonly OwnCultivar[] = [];

/** Onions of the grower's own. */
export const ownOnions: ReadonlySignal<readonly OwnCultivar[]> = computed(
  () => known.value?.garden?.cultivars ?? none,
);

/** The file that was opened last on this page, with what was mended in it and the name of the plan shown. */
export const openedFile = signal<{
  file: string;
  changes: readonly GardenChange[];
  plan: string | null;
  hasPlace: boolean;
  hadGarden: boolean;
} | null>(null);

/** Whether the last change came from another tab. */
export const changedElsewhere = signal(false);

let opening: Promise<DeviceGarden> | null = null;

/** It is fetched after the first look of the page, and again where that failed. */
function deviceGarden(): Promise<DeviceGarden> {
  opening ??= import('../device/device-garden.ts')
    .then(({ openDeviceGarden }) =>
      openDeviceGarden((now, from) => {
        known.value = now;
        changedElsewhere.value = from === 'elsewhere';
      }),
    )
    .catch((error) => {
      opening = null;
      throw error;
    });
  return opening;
}

const notFound: GardenStanding = {
  garden: null,
  file: null,
  undo: null,
  redo: null,
  mended: [],
  unkept: null,
  isShortened: false,
};

/**
 * Looks for the garden; without the means to, the app goes on as if there were none. Where none was ever kept, nothing
 * is fetched for it until there is one, here or in another tab.
 */
export async function followGarden(): Promise<void> {
  try {
    if (await mayBeKept()) await deviceGarden();
    else {
      known.value ??= notFound;
      const line = new BroadcastChannel(lineName);
      line.onmessage = () => {
        line.close();
        deviceGarden().catch(() => {});
      };
    }
  } catch {
    known.value ??= notFound;
  }
}

/** Only a browser that can tell is believed. */
async function mayBeKept(): Promise<boolean> {
  try {
    return (await indexedDB.databases()).some(({ name }) => name === dataBaseName);
  } catch {
    return true;
  }
}

/** Why the garden could not be changed; null where all went well. */
export const gardenFault = signal<string | null>(null);

async function work(task: (held: DeviceGarden) => Promise<void>): Promise<boolean> {
  try {
    await task(await deviceGarden());
    gardenFault.value = null;
    return true;
  } catch (error) {
    gardenFault.value = (error as Error).message;
    return false;
  }
}

/** Changes the garden as it stands now, whichever tab changed it last; false where that failed. */
export function changeGarden(
  step: Step,
  make: (now: Garden | null) => Garden | null,
  file?: string,
): Promise<boolean> {
  openedFile.value = null;
  return work((held) => held.change(step, make, file));
}

export function undoGarden(): Promise<boolean> {
  openedFile.value = null;
  return work((held) => held.back());
}

export function redoGarden(): Promise<boolean> {
  return work((held) => held.on());
}

/** Removes it with all its steps: nothing brings it back. Kept points of maps go too: they tell of its place. */
export function wipeGarden(): Promise<boolean> {
  dropAtlasShelf();
  return work((held) => held.wipe());
}

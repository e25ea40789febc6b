import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { PhotoRefusal } from '../device/shrink-photo.ts';

const known = signal<ReadonlySet<string> | null>(null);

/** Ids of the observations that have a photo on this device; none until they were looked for. */
export const photographed: ReadonlySignal<ReadonlySet<string>> = computed(() => known.value ?? new Set());

/** Whether photos are gone when this page is closed. */
export const arePhotosPassing = signal(false);

const devicePhotos = () => import('../device/photos.ts').then(({ devicePhotos }) => devicePhotos());

async function look(): Promise<void> {
  const photos = await devicePhotos();
  known.value = new Set(await photos.keys());
  arePhotosPassing.value = !photos.areKept();
}

/** Looks for the photos of this device, again when another tab may have changed them. */
export function followPhotos(): void {
  look().catch(() => {
    known.value ??= new Set();
  });
}

/** Keeps a photo of what was seen, made small; why not, where that failed. */
export async function keepPhoto(observationId: string, file: Blob): Promise<PhotoRefusal | null> {
  const { shrinkPhoto } = await import('../device/shrink-photo.ts');
  const photo = await shrinkPhoto(file);
  if (!(photo instanceof Blob)) return photo;
  await (await devicePhotos()).put(observationId, photo);
  await look();
  return null;
}

export async function photoOf(observationId: string): Promise<Blob | null> {
  return (await devicePhotos()).get(observationId);
}

export async function removePhoto(observationId: string): Promise<void> {
  await (await devicePhotos()).remove(observationId);
  await look();
}

import { emptyGarden, type Garden } from '@neckfall/engine';
import { type GardenStanding, openDeviceGarden } from '../../packages/app/src/device/device-garden.ts';
import { devicePhotos, openPhotos } from '../../packages/app/src/device/photos.ts';
import { shrinkPhoto } from '../../packages/app/src/device/shrink-photo.ts';

/** What the tests ask of the page; `emptyGarden` is made there, as functions don’t travel. */
const deviceParts = { emptyGarden, openDeviceGarden, openPhotos, devicePhotos, shrinkPhoto };

declare global {
  var device: typeof deviceParts;
}
globalThis.device = deviceParts;

export type { Garden, GardenStanding };

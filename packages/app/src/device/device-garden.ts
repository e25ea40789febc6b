import type { Garden } from '@neckfall/engine';
import { type Box, memoryShelf, type Shelf } from './box.ts';
import { openDeviceShelf } from './device-shelf.ts';
import { begin, empty, putStep, type Standing, type Step, standing, walk } from './garden-steps.ts';

/** How the garden stands, and whether this browser keeps it. */
export type GardenStanding = Standing & { isSaved: boolean };

type Tell = (now: GardenStanding, from: 'here' | 'elsewhere') => void;

/** Keeps the garden of this browser; several tabs keep the same one. Where the browser refuses, memory holds it. */
export async function openDeviceGarden(tell: Tell) {
  let isSaved = true;
  let shelf = await openDeviceShelf().catch(refused);
  const line = isSaved && 'BroadcastChannel' in globalThis ? new BroadcastChannel('neckfall.garden') : null;

  function refused(): Shelf {
    isSaved = false;
    return memoryShelf();
  }

  /** What the browser can no longer keep goes on in memory, from the garden as it stood. */
  async function toMemory(last: Standing | null): Promise<void> {
    shelf = refused();
    await shelf('readwrite', (box) => begin(box, last?.garden ?? null, last?.file ?? null));
  }

  let last: Standing | null = null;
  async function look(from: 'here' | 'elsewhere'): Promise<void> {
    try {
      last = await shelf('readonly', standing);
    } catch {
      await toMemory(last);
      last = await shelf('readonly', standing);
    }
    tell({ ...last, isSaved }, from);
  }

  async function write(work: (box: Box) => Promise<Standing>): Promise<void> {
    try {
      last = await shelf('readwrite', work);
    } catch (error) {
      if (!isSaved) throw error;
      await toMemory(last);
      last = await shelf('readwrite', work);
    }
    if (isSaved) line?.postMessage('changed');
    tell({ ...last, isSaved }, 'here');
  }

  line?.addEventListener('message', () => void look('elsewhere'));
  await look('here');

  return {
    /** Changes the garden as it stands now, whichever tab changed it last. */
    change: (step: Step, make: (now: Garden | null) => Garden | null, file?: string) =>
      write((box) => putStep(box, step, make, file)),
    back: () => write((box) => walk(box, -1)),
    on: () => write((box) => walk(box, 1)),
    /** All steps are gone; nothing brings them back. */
    wipe: () => write(empty),
  };
}

export type DeviceGarden = Awaited<ReturnType<typeof openDeviceGarden>>;

import type { Garden } from '@neckfall/engine';
import { type Box, memoryShelf, type Shelf } from './box.ts';
import { openDeviceShelf } from './device-shelf.ts';
import {
  begin,
  empty,
  type LetGo,
  letGoOldest,
  type MadeStep,
  putStep,
  type Standing,
  type Step,
  standing,
  walk,
} from './garden-steps.ts';
import { type Unkept, whyUnkept } from './open-data-base.ts';
import { otherTabs } from './other-tabs.ts';
import { letGoPhotos } from './photos.ts';
import { shelfOnceRead } from './shelf-once-read.ts';
import { idsInSteps } from './sweep.ts';

/** A step, and whether another tab that is or was open beside this one made it. */
type ToldStep = Step & { isElsewhere: boolean };

/** How the garden stands, and how this browser keeps it. */
export type GardenStanding = Omit<Standing, 'undo' | 'redo'> & {
  undo: ToldStep | null;
  redo: ToldStep | null;
  /** Why memory holds it; null: the browser keeps it. */
  unkept: Unkept | null;
  /** Whether steps were let go for want of room. */
  isShortened: boolean;
};

type From = 'here' | 'elsewhere';
type Work = (box: Box, letGo: LetGo) => Promise<Standing>;
type Tell = (now: GardenStanding, from: From) => void;

/** Keeps the garden of this browser; several tabs keep the same one. Where the browser refuses, memory holds it. */
export async function openDeviceGarden(tell: Tell, open = openDeviceShelf, dropPhotos = letGoPhotos) {
  let unkept: Unkept | null = null;
  let isShortened = false;
  let last: Standing | null = null;
  let lastFrom: From = 'here';
  let turn: Promise<unknown> = Promise.resolve();

  /** One thing at a time, so that nothing falls between the browser and memory. */
  function inTurn<Result>(task: () => Promise<Result>): Promise<Result> {
    const done = turn.then(task);
    turn = done.catch(() => {});
    return done;
  }

  let shelf: Shelf = await open((why) => void inTurn(() => lose(why)))
    .then(shelfOnceRead)
    .catch((error) => {
      unkept = whyUnkept(error);
      return memoryShelf();
    });
  const tabs = otherTabs({
    changed: () => {
      if (unkept === null) void inTurn(() => look('elsewhere'));
    },
    heard: () => say(lastFrom),
  });

  const told = (step: MadeStep | null): ToldStep | null =>
    step && { code: step.code, name: step.name, isElsewhere: tabs.isTheirs(step.mark) };

  function say(from: From): void {
    lastFrom = from;
    if (last) tell({ ...last, undo: told(last.undo), redo: told(last.redo), unkept, isShortened }, from);
  }

  /** What the browser can no longer keep goes on in memory, from the garden as it stood. */
  async function toMemory(why: Unkept): Promise<void> {
    unkept = why;
    shelf = memoryShelf();
    await shelf('readwrite', (box) => begin(box, last?.garden ?? null, last?.file ?? null));
  }

  async function lose(why: Unkept): Promise<void> {
    if (unkept === null) {
      await toMemory(why);
      last = await shelf('readonly', standing);
    }
    unkept = why;
    say('here');
  }

  async function look(from: From): Promise<void> {
    try {
      last = await shelf('readonly', standing);
    } catch (error) {
      await toMemory(whyUnkept(error));
      last = await shelf('readonly', standing);
    }
    say(from);
  }

  /** Where there is no room, the oldest steps go first. */
  async function done(work: Work): Promise<Standing> {
    for (;;) {
      try {
        return await inShelf(work);
      } catch (error) {
        if (unkept !== null) throw error;
        const why = whyUnkept(error);
        if (why === 'full' && (await inShelf(letGoOldest).catch(() => false))) isShortened = true;
        else await toMemory(why);
      }
    }
  }

  /** Photos of what is gone for good go too, once that is done. */
  async function inShelf<Result>(work: (box: Box, letGo: LetGo) => Promise<Result>): Promise<Result> {
    let gone: readonly string[] = [];
    const result = await shelf('readwrite', (box) =>
      work(box, (ids) => {
        gone = ids;
      }),
    );
    // what memory lets go of, the browser may hold still
    if (gone.length > 0 && unkept === null) void dropPhotos(gone, seen).catch(() => {});
    return result;
  }

  const seen = () => shelf('readonly', idsInSteps);

  function write(work: Work, from: () => From = () => 'here'): Promise<void> {
    return inTurn(async () => {
      last = await done(work);
      if (unkept === null) tabs.tellChange();
      say(from());
    });
  }

  /** Only over the step that was seen, or one of this tab: what another tab did meanwhile is shown first. */
  function step(by: -1 | 1): Promise<void> {
    const side = by < 0 ? 'undo' : 'redo';
    const seen = last?.[side]?.mark;
    let from: From = 'here';
    return write(
      async (box) => {
        const now = await standing(box);
        const mark = now[side]?.mark ?? null;
        from = mark === seen || tabs.isOurs(mark) ? 'here' : 'elsewhere';
        return from === 'here' ? walk(box, by) : now;
      },
      () => from,
    );
  }

  await inTurn(() => look('here'));
  tabs.greet();

  return {
    /** Changes the garden as it stands now, whichever tab changed it last. */
    change: (step: Step, make: (now: Garden | null) => Garden | null, file?: string) => {
      const made = { ...step, mark: tabs.newMark() };
      return write((box, letGo) => putStep(box, made, make, file, letGo));
    },
    back: () => step(-1),
    on: () => step(1),
    /** All steps are gone; nothing brings them back. */
    wipe: async () => {
      await write(empty);
      if (unkept === null) await dropPhotos('all', seen);
    },
  };
}

export type DeviceGarden = Awaited<ReturnType<typeof openDeviceGarden>>;

import { type GridPoint, gridPoints, landWarmingSinceNormalsC, type Region } from '@neckfall/engine';
import { askGround, cancelGround, openEngineLine } from '../../ask/ask.ts';
import type { AtlasGround } from '../../worker/atlas-ground.ts';
import type { SiteAsked } from '../../worker/site.ts';
import { type AtlasHeld, mapSeed, mapYears } from './atlas-held.ts';

type Told = {
  /** A grid begins: so many of its points are still to be worked out. */
  begin: (stepDeg: number, missing: number) => void;
  /** Points of it that were just worked out. */
  found: (points: readonly GridPoint[], stepDeg: number) => void;
  /** All of it is known. */
  done: (stepDeg: number) => void;
  failed: (reason: string) => void;
};

type Waiting = { point: GridPoint; site: SiteAsked };

const groundTopic = 'atlasGround';
/** Points whose ground is looked up together; most are sea. */
const groundBatch = 240;
/** The first are few, so that the engine has work while the next are looked up. */
const firstBatch = 24;
/** A thread's work comes back after about so long, ms, however fast it is. */
const batchMs = 250;
const mostTogether = 40;
const mostThreads = 4;

/** Works out the points of a region that are not known yet, grid by grid, on threads of its own. Returns what stops it. */
export function runAtlas(region: Region, steps: readonly number[], held: AtlasHeld, told: Told): () => void {
  let isStopped = false;
  const threads = Math.max(1, Math.min(mostThreads, (navigator.hardwareConcurrency ?? 2) - 1));
  const lines = Array.from({ length: threads }, openEngineLine);
  const stop = () => {
    isStopped = true;
    cancelGround(groundTopic);
    for (const line of lines) line.close();
  };
  void work()
    .catch((error: Error) => isStopped || told.failed(error.message))
    .finally(stop);
  return stop;

  async function work(): Promise<void> {
    await held.ready;
    for (const stepDeg of steps) {
      if (isStopped) return;
      const missing = scattered([...gridPoints(region, stepDeg)].filter((point) => !held.has(point)));
      told.begin(stepDeg, missing.length);
      await grid(missing, stepDeg);
      if (isStopped) return;
      told.done(stepDeg);
    }
  }

  /** Each thread takes of the ground that is ready; the next is looked up meanwhile. */
  async function grid(missing: readonly GridPoint[], stepDeg: number): Promise<void> {
    const ready: Waiting[] = [];
    let next = 0;
    let looking: Promise<void> | null = null;
    const look = () => {
      if (looking || next >= missing.length) return;
      const points = missing.slice(next, next + (next === 0 ? firstBatch : groundBatch));
      next += points.length;
      looking = ground(points).then((waiting) => {
        ready.push(...waiting);
        looking = null;
      });
    };
    await Promise.all(
      lines.map(async (line) => {
        let together = 1;
        while (!isStopped) {
          if (ready.length < threads * together * 2) look();
          if (ready.length === 0) {
            if (!looking) return;
            await looking;
            continue;
          }
          const batch = ready.splice(0, Math.max(1, Math.min(together, Math.ceil(ready.length / threads))));
          const began = performance.now();
          const reply = await line.ask('atlasPoints', {
            sites: batch.map(({ site }) => site),
            from: held.from,
          });
          if (isStopped) return;
          if (reply.state !== 'done') throw new Error(reply.state === 'failed' ? reply.message : 'overtaken');
          const each = (performance.now() - began) / batch.length;
          together = Math.max(1, Math.min(mostTogether, Math.round(batchMs / each), together * 2));
          const points = batch.map(({ point }) => point);
          held.add({ points: flat(points), packed: reply.answer, nothing: new Float32Array() });
          told.found(points, stepDeg);
        }
      }),
    );
  }

  async function ground(points: readonly GridPoint[]): Promise<Waiting[]> {
    const reply = await askGround('atlasGround', { points }, { topic: groundTopic });
    if (reply.state === 'failed') throw new Error(reply.message);
    if (reply.state !== 'done' || isStopped) return [];
    const nothing = points.filter((_, at) => reply.answer[at] === null);
    held.add({ points: new Float32Array(), packed: new Float32Array(), nothing: flat(nothing) });
    return points.flatMap((point, at) => {
      const found = reply.answer[at];
      return found === null ? [] : [{ point, site: siteOf(found) }];
    });
  }
}

/** As a bare point of an address has it, with fewer years. */
function siteOf({ climate, practice }: NonNullable<AtlasGround>): SiteAsked {
  return {
    climate,
    practice,
    warmerC: landWarmingSinceNormalsC,
    frostHollow: false,
    years: mapYears,
    seed: mapSeed,
    atHand: [],
  };
}

const flat = (points: readonly GridPoint[]) =>
  Float32Array.from(points.flatMap(({ latitudeDeg, longitudeDeg }) => [latitudeDeg, longitudeDeg]));

/** Points in an order that fills a map everywhere at once. */
function scattered(points: readonly GridPoint[]): GridPoint[] {
  const count = points.length;
  // a stride near the golden section that meets each once
  let stride = Math.max(1, Math.round(count * 0.618));
  while (count > 0 && common(stride, count) > 1) stride++;
  return points.map((_, at) => points[(at * stride) % count]);
}

function common(a: number, b: number): number {
  return b === 0 ? a : common(b, a % b);
}

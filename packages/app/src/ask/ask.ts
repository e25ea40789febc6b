import type { atlasGround } from '../worker/atlas-ground.ts';
import type { EngineHandlers } from '../worker/engine-handlers.ts';
import type { groundHandlers } from '../worker/ground-handlers.ts';
import { openLine } from './line.ts';

type Engine = EngineHandlers;
type Ground = typeof groundHandlers & { atlasGround: typeof atlasGround };

const openEngine = () =>
  new Worker(new URL('../worker/engine-worker.ts', import.meta.url), { type: 'module' });

/** Another thread for the engine; whoever opens it closes it. */
export const openEngineLine = () => openLine<Engine>(openEngine);

const engine = openEngineLine();
const heavy = openEngineLine();
const ground = openLine<Ground>(
  () => new Worker(new URL('../worker/ground-worker.ts', import.meta.url), { type: 'module' }),
);

/** Asks the engine, which runs in a worker: `ask('season', { site, plan })`. */
export const ask = engine.ask;
export const cancel = engine.cancel;
/** The same on a thread of its own, for work of seconds that must not keep a dragged date waiting. */
export const askLong = heavy.ask;
export const cancelLong = heavy.cancel;
/** Asks for towns and places, on a thread of their own so that typing never waits for a season. */
export const askGround = ground.ask;
export const cancelGround = ground.cancel;

import type { laterHandlers } from './later-handlers.ts';
import { prepare } from './prepare.ts';
import type { Handlers } from './protocol.ts';
import { where, whereClasses } from './where.ts';
import { whereAhead } from './where-ahead.ts';
import { whereToday } from './where-today.ts';
import { winterStand } from './winter-stand.ts';

const firstHandlers = { prepare, where, whereAhead, whereClasses, whereToday, winterStand };

/** All that the engine's worker can be asked; see each file. */
export type EngineHandlers = typeof firstHandlers & typeof laterHandlers;

/** The handler of a kind of request; those that the first page does not need are fetched when one is asked for. */
export async function engineHandler(kind: string): Promise<Handlers[string]> {
  const first: Handlers = firstHandlers;
  if (Object.hasOwn(first, kind)) return first[kind];
  const { laterHandlers } = await import('./later-handlers.ts');
  return (laterHandlers as Handlers)[kind];
}

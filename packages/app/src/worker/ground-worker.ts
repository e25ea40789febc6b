import { groundHandlers } from './ground-handlers.ts';
import type { Handlers } from './protocol.ts';
import { serve } from './serve.ts';

// what only the map asks is fetched when it does
serve(
  async (kind) =>
    (groundHandlers as Handlers)[kind] ?? ((await import('./atlas-ground.ts')) as unknown as Handlers)[kind],
);

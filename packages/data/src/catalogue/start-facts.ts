import type { StartMethod } from '@neckfall/engine';
import type { StartFacts } from './start-fact.ts';
import { boughtFacts } from './start-facts-bought.ts';
import { raisedFacts } from './start-facts-raised.ts';
import { seedFacts } from './start-facts-seed.ts';
import { setsFacts } from './start-facts-sets.ts';

/** What is known of each way to start a crop. */
export const startFacts: Readonly<Record<StartMethod, StartFacts>> = {
  'direct-seed': seedFacts,
  'raised-seedlings': raisedFacts,
  'bought-transplants': boughtFacts,
  sets: setsFacts,
};

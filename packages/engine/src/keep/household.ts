import type { Like } from '../garden/index.ts';
import type { SeedAge } from '../stand/index.ts';
import type { StoreSaid } from './store-said.ts';

/** A kitchen that is to be kept in onions. */
export type Household = {
  people: number;
  /** Of all its people together, fresh bulbs as they come from the store. */
  gramsPerWeek: number;
  store: StoreSaid;
  likes: readonly Like[];
  /** Of the seed to be sown; null: not said. */
  seedAge: SeedAge | null;
};

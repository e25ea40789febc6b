import { signal } from '@preact/signals';
import type { Draft } from './draft.ts';

/** An entry that another part of the page has begun, for its form to go on with. */
export const begun = signal<Draft | null>(null);

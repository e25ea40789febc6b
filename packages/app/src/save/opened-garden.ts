import { signal } from '@preact/signals';
import type { OpenedGarden } from './planting-of.ts';

/** The garden that was opened from a file, while the page is open. */
export const openedGarden = signal<OpenedGarden | null>(null);

import { seasonNumbers } from './chromium-seasons.ts';

// What the page calls.
Object.assign(globalThis, { seasonNumbers });

import { appSeen } from './app-seen.ts';
import { appWhen } from './app-when.ts';
import { appWhich } from './app-which.ts';

/** What only pages after the first one say: fetched with them. */
export const later = [appSeen, appWhen, appWhich] as const;

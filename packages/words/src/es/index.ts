import { app } from './app.ts';
import { dates } from './dates.ts';
import { terms } from './terms.ts';

export const es = [app, dates, terms] as const;

import asset from '../../assets/practice.json' with { type: 'json' };
import { readPractice } from './published-practice.ts';

/** The calendars that are shipped. */
export const publishedPractice = readPractice(asset);

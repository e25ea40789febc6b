export type { MonthlyClimate } from './monthly-climate.ts';

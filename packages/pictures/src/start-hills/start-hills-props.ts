import type { Verdict } from '@neckfall/engine';

/** What can go wrong, in the order in which hollows are filled from the ground down. */
export type Trouble = Exclude<Verdict, 'good'>;
export const troubles: readonly Trouble[] = ['small', 'not-ripe', 'no-bulb', 'bolts', 'winter-killed'];

/** One of the starts of the year. */
export type HillStart = {
  /** Day number on the axis. */
  day: number;
  /** Share of years by outcome; sums to 1. */
  shares: Readonly<Record<Verdict, number>>;
  /** How many years. */
  tried: number;
  /** The bulb across, mm; null where none forms. */
  acrossMm: { low: number; middle: number; high: number } | null;
  /** Green leaves standing when bulbs start; null where they don't. */
  leavesGreen: number | null;
  /** What keeps people from starting then, whatever would come of it; null where nothing does. */
  barredBy: string | null;
};

export type StartHillsProps = {
  /** Tells the patterns of pictures on one page apart. */
  id: string;
  /** px; see FitWidth. */
  width: number;
  summary: string;
  firstDay: number;
  days: number;
  /** In rising order of days, all on the axis. */
  starts: readonly HillStart[];
  today: { day: number; text: string } | null;
  /** The start chosen, which a page lets its reader drag (see hillsDayAt). */
  marker: { day: number; text: string } | null;
  months: readonly string[];
  goodText: string;
  troubleTexts: Readonly<Record<Trouble, string>>;
  everyText: string;
  sizeText: string;
  leavesText: string;
};

import type { DayNumber } from '../calendar/index.ts';
import type { DryingDays } from './drying.ts';

/** `lift`: today is as good as any day that comes; `wait`: it gains by waiting; `before-rain`: early, since what comes is wet; `too-early`: no tops are near falling; `lifted`: it is out. */
export type LiftVerdict = 'lift' | 'wait' | 'before-rain' | 'too-early' | 'lifted';

/** Whether a crop is to be lifted today, with what either choice loses. */
export type LiftAdvice = {
  verdict: LiftVerdict;
  /** The best day from today on; today where the verdict is to lift. */
  best: DayNumber | null;
  /** Share of the plants whose tops are over today. */
  topsOverShare: number;
  /** Whether that was seen by the grower, or is of the run. */
  topsFrom: 'seen' | 'run';
  /** Rain to come in the next ten days, mm, and where that is known from. */
  rainMm: number;
  rainFrom: 'forecast' | 'usual';
  /** Share of the crop's worth lost by lifting today, and by lifting on `best`, 0…1: growth forgone, necks not closed, rot and stain. */
  lossTodayShare: number;
  lossBestShare: number;
  /** Of the bulbs, forecast: to the kitchen first. */
  thickNeckShare: number;
  boltedShare: number;
  drying: readonly DryingDays[];
};

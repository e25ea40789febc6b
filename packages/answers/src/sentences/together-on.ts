import type { DayNumber, DayRow, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type CropOn, cropOn } from '../facts/index.ts';

/** A place and its crop on the day that is looked at. */
export type LineOn = {
  summary: SeasonSummary;
  rows: readonly DayRow[];
  /** The day in the years of the crop. */
  cropDay: DayNumber;
  /** Hours of sun-up, and the usual high of the day, °C. */
  sunUpH: number;
  highC: number;
};

/** The words of a day, for a sentence and for the cells of a table. */
export type OnWords = {
  date: string;
  hours: string;
  high: string;
  leaves: string;
  across: string;
  stage: string;
  sentence: string;
};

/** What is to be seen on a day: how long it lasts, how warm it gets, and how far the crop is. */
export function onWords({ summary, rows, cropDay, sunUpH, highC }: LineOn, speaker: Speaker): OnWords {
  const { say, day, dayLength, number, quantity } = speaker;
  const on = cropOn(summary, rows, cropDay);
  const across = on.acrossMm === null ? say('none') : quantity('bulbLength', on.acrossMm);
  const date = day(cropDay);
  const hours = dayLength(sunUpH);
  const high = quantity('temperature', highC);
  return {
    date,
    hours,
    high,
    leaves: on.stage === 'before' ? say('none') : number(on.leaves),
    across: on.stage === 'before' ? say('none') : across,
    stage: say(`together.stage.${on.stage}`),
    sentence: say('together.on', { date, hours, high, crop: cropWords(on, across, speaker) }),
  };
}

function cropWords({ stage, leaves, acrossMm }: CropOn, across: string, { say }: Speaker): string {
  // what was sown may bulb before there is anything to measure
  const told = stage === 'bulb' && acrossMm === null ? 'leaves' : stage;
  return say(`together.on.${told}`, { leaves, across });
}

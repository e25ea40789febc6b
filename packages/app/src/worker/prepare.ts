import { openSite, startMethods, surveyOf, surveyWays, waysOf } from '@neckfall/engine';
import type { Work } from './protocol.ts';

const monthly = (values: number[]) => Float64Array.from(values);
const steady = (value: number) => new Float64Array(12).fill(value);

/** Too few for an answer, enough for the browser to compile what an answer takes. */
const years = 3;
/** 1 January 2027. */
const someDay = 20_819;

let isWarm = false;

/** Tries an invented place, so that the first real answer finds the engine warm; gives way when that is asked for. */
export async function prepare(_: null, work: Work): Promise<true> {
  if (isWarm) return true;
  isWarm = true;
  const climate = {
    latitudeDeg: 47,
    longitudeDeg: 4,
    elevationM: 200,
    tempMeanC: monthly([2, 3, 7, 11, 15, 18, 20, 20, 16, 11, 6, 3]),
    tempRangeC: steady(9),
    rainMm: steady(60),
    wetDays: steady(12),
    relativeHumidityPct: steady(75),
    sunshinePct: steady(45),
    wind10mMs: steady(3),
    frostNights: monthly([18, 15, 8, 2, 0, 0, 0, 0, 0, 1, 7, 16]),
    minTempSdC: steady(4),
  };
  const site = openSite({ climate, years, seed: 1 });
  for (const start of startMethods) {
    surveyWays(site, waysOf(site, { type: 'northern-long', traits: null }, [start]), someDay).today();
    await work.pause();
  }
  surveyOf(site, someDay).lead();
  return true;
}

import { liftAdvice } from '../keep/index.ts';
import { feedOf, type TendedCrop, waterOf } from '../tend/index.ts';
import type { JobGrounds, Kept } from './course.ts';

/** Long before its tops go over no rain makes a crop ready, days. */
const nearLifting = 35;

/** Water, feed, lifting and keeping of a crop, on which its work rests, whatever was said of the work. */
export function tendOf(crop: TendedCrop, kept: Kept): Omit<JobGrounds, 'marks'> {
  const { days } = crop.summary.neckFall;
  const isNear = days !== null && crop.liftedOn === null && crop.today >= days.p10 - nearLifting;
  return {
    crop,
    water: waterOf(crop, { efficiency: null, days: false }),
    feed: feedOf(crop),
    lift: isNear ? liftAdvice(crop) : null,
    kept,
  };
}

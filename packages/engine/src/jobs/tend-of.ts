import { feedOf, type TendedCrop, waterOf } from '../tend/index.ts';
import type { JobGrounds } from './course.ts';

/** Water and feed of a crop, on which its work rests, whatever was said of the work. */
export function tendOf(crop: TendedCrop): Omit<JobGrounds, 'marks'> {
  return { crop, water: waterOf(crop, { efficiency: null, days: false }), feed: feedOf(crop) };
}

import type { StartMethod } from '../plant/index.ts';
import type { Site, TodayAnswer } from '../season/index.ts';
import type { CropAsked } from './asked-crop.ts';
import type { PacketPlant } from './packet.ts';
import { type SurveyOptions, startToday } from './start-today.ts';
import { classToday } from './survey.ts';

/**
 * What an onion, started one way, is worth today.
 *
 * @param onion what it is at this place, which packets take time to tell
 */
export function cropToday(
  site: Site,
  asked: CropAsked,
  onion: Pick<PacketPlant, 'type' | 'traits'>,
  start: StartMethod,
  today: number,
  options: SurveyOptions = {},
): TodayAnswer {
  return 'class' in asked
    ? classToday(site, asked.class, start, today, options)
    : startToday(site, onion, start, today, options);
}

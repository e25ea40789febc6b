import { type PlaceFacts, placeFacts } from '@neckfall/answers';
import { type PlaceAnswer, type SurveyOptions, surveyPlace } from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';
import { type WinterStand, winterStand } from './winter-stand.ts';

export type WhereAsked = { site: SiteAsked; today: number; options: SurveyOptions };
export type WhereReply = { facts: PlaceFacts; answer: PlaceAnswer; winter: WinterStand };

/** Which onion suits a place, what is still in time today, and the year there. */
export function where({ site: asked, today, options }: WhereAsked): WhereReply {
  const site = siteOf(asked);
  return {
    facts: placeFacts(site, today),
    answer: surveyPlace(site, today, options),
    winter: winterStand(site, today, options),
  };
}

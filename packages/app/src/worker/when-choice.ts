import { chooseKinds, classOfType, kindsOf, type StartMethod, type SurveyOptions } from '@neckfall/engine';
import { type CropAsked, cropAt } from './crop.ts';
import { type SiteAsked, siteOf } from './site.ts';
import { surveyAt } from './survey.ts';

export type WhenChoiceAsked = {
  site: SiteAsked;
  /** Null: whichever suits the place best. */
  crop: CropAsked | null;
  /** Ways in which the onion can be started. */
  starts: readonly StartMethod[];
  today: number;
  options: SurveyOptions;
};
export type WhenChoice = { crop: CropAsked; start: StartMethod };

/** The onion and the way of starting that are taken where the reader has said nothing. */
export function whenChoice({ site: asked, crop, starts, today, options }: WhenChoiceAsked): WhenChoice {
  const site = siteOf(asked);
  if (crop === null) {
    const best = surveyAt(asked, today, options).lead();
    return { crop: { class: classOfType[best.type] }, start: best.bestStart };
  }
  const offer = { name: '', ...cropAt(site, crop), starts, keepsMonths: [0, 0], keepsFrom: 'type' } as const;
  const [best] = chooseKinds(site, kindsOf([offer]), today, options) ?? [];
  return { crop, start: best?.kind.start ?? starts[0] };
}

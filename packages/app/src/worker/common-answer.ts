import { answerCommon, type CommonAnswer, type CommonQuestion, type GrowingOptions } from '@neckfall/engine';
import { lastFew } from './last-few.ts';
import { type SiteAsked, siteOf } from './site.ts';
import { surveyAt } from './survey.ts';

export type CommonAnswerAsked = {
  site: SiteAsked;
  /** The year of a kitchen is asked for by `keepYear`, as the Keep page does. */
  question: Exclude<CommonQuestion, 'how-many'>;
  today: number;
  options: GrowingOptions;
};

const kept = lastFew<CommonAnswer>(20);

/** What people ask answered for a place; the survey is the one that the first page has. */
export function commonAnswer({ site: asked, question, today, options }: CommonAnswerAsked): CommonAnswer {
  // days gone by say nothing of starts to come
  const { climate, weather: _, ...ground } = asked;
  const { latitudeDeg, longitudeDeg, elevationM } = climate;
  const key = JSON.stringify([latitudeDeg, longitudeDeg, elevationM, ground, question, today, options]);
  return kept(key, () =>
    answerCommon(siteOf({ climate, ...ground }), question, {
      today,
      options,
      survey: surveyAt(asked, today, options),
      // of no part in these
      kinds: [],
      household: { people: 1, gramsPerWeek: 0, store: 'cellar', likes: [], seedAge: null },
    }),
  );
}

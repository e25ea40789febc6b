import type { DayNumber } from '../calendar/index.ts';
import type { ClassSurvey, GrowingOptions } from '../choice/index.ts';
import type { Household, KitchenKind } from '../keep/index.ts';

/** For whom and when a common question is answered; the place is the site's. */
export type CommonAsked = {
  today: DayNumber;
  options: GrowingOptions;
  /** The survey of the site on that day with those options, which several questions share. */
  survey: ClassSurvey;
  household: Household;
  /** Onions that can be had there for a kitchen. */
  kinds: readonly KitchenKind[];
};

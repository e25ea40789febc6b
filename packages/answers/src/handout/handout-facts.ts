import {
  type ClassSurvey,
  type DayNumber,
  groundUnsaid,
  type Job,
  jobsOf,
  type LeafCheckpoint,
  leafCheckpoint,
  type Site,
  storeClimateOf,
  tendOf,
} from '@neckfall/engine';
import {
  type AdvisedYear,
  advisedYear,
  keepingOf,
  monthsOf,
  type PlaceFacts,
  placeFacts,
} from '../facts/index.ts';
import { adviceOfPlace, namedOf, type PlaceAdvice, type tropicsSentence } from '../sentences/index.ts';

/** What a sheet for a place tells, in numbers: as Where, Season and the list of work have them. */
export type HandoutFacts = PlaceAdvice & {
  /** Weather years tried, and their series. */
  years: number;
  seed: number;
  today: DayNumber;
  place: PlaceFacts;
  months: Parameters<typeof tropicsSentence>[1];
  /** The year around the crop that the headline names; no crop in it where none is advised. */
  picture: AdvisedYear;
  /** Null where no crop is advised. */
  crop: { jobs: Job[]; leafCheckpoint: LeafCheckpoint | null } | null;
};

/** Works them out; the survey is that of the site on that day. */
export function handoutFacts(site: Site, survey: ClassSurvey, today: DayNumber): HandoutFacts {
  const advice = adviceOfPlace(survey);
  const named = namedOf(advice);
  const place = placeFacts(site, today);
  const picture = advisedYear(site, today, named);
  return {
    ...advice,
    years: site.years,
    seed: site.seed,
    today,
    place,
    months: monthsOf(place),
    picture,
    crop: picture.days.length === 0 ? null : cropOf(),
  };

  function cropOf() {
    const { summary } = named;
    const { plan } = summary;
    const crop = { site, plan, summary, ground: groundUnsaid, observations: [], today, liftedOn: null };
    const keepsMonths = keepingOf([], { cultivar: null, class: named.class });
    const kept = { keepsMonths, store: storeClimateOf(site.climate, 'cellar') };
    return {
      jobs: jobsOf({ ...tendOf(crop, kept), marks: [] }),
      leafCheckpoint: leafCheckpoint(site, summary),
    };
  }
}

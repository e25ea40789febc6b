import {
  betterThanLead,
  cropYear,
  type PlaceFacts,
  type PlaceYear,
  placeFacts,
  placeYear,
  plainYearStart,
  sunUpAtPhotoperiod,
} from '@neckfall/answers';
import {
  type ClassAnswer,
  type DayRow,
  medianSeasonDays,
  type Site,
  type SurveyOptions,
} from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';
import { surveyAt } from './survey.ts';

export type WhereAsked = { site: SiteAsked; today: number; options: SurveyOptions };

/** What the year line is drawn from: the place's year, and the crop that is advised in a middling season. */
export type WherePicture = { year: PlaceYear; needSunUpH: number; days: DayRow[] };
export type WhereReply = {
  facts: PlaceFacts;
  /** The class that suits the place best. */
  lead: ClassAnswer;
  /** Where that one is not good: another that ends better, of which the headline must not speak ill. */
  better: ClassAnswer | null;
  picture: WherePicture;
};

/** Which onion suits a place, and the year there. */
export function where({ site: asked, today, options }: WhereAsked): WhereReply {
  const site = siteOf(asked);
  const survey = surveyAt(asked, today, options);
  const lead = survey.lead();
  return {
    facts: placeFacts(site, today),
    lead,
    // the others take their time, and no headline speaks of all where the lead is good
    better: lead.verdict === 'good' ? null : betterThanLead(survey.classes()),
    picture: pictureOf(site, today, lead),
  };
}

/** All classes, the leading one first; the same survey goes on from there. */
export function whereClasses({ site, today, options }: WhereAsked): ClassAnswer[] {
  return surveyAt(site, today, options).classes();
}

function pictureOf(site: Site, today: number, { summary, verdict, gamble }: ClassAnswer): WherePicture {
  const { climate } = site;
  const { plan } = summary;
  const isAdvised = verdict === 'good' || verdict === 'small' || gamble;
  const days = isAdvised ? medianSeasonDays(site, plan) : [];
  const shown = isAdvised
    ? cropYear(plan.startDay, days.at(-1)?.day ?? plan.startDay)
    : { firstDay: plainYearStart(today, climate.latitudeDeg), days: yearDays };
  return {
    year: placeYear(climate, shown.firstDay, shown.days),
    needSunUpH: sunUpAtPhotoperiod(climate.latitudeDeg, climate.longitudeDeg, summary.needPhotoperiodH),
    days,
  };
}

const yearDays = 365;

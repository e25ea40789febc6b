/** What every face of Neckfall says of an answer: places, facts and whole sentences, without any layout. */
export { bestStart } from './facts/best-start.ts';

export { betterThanLead } from './facts/better-than-lead.ts';
export { type CultivarFact, cultivarFacts } from './facts/cultivar-facts.ts';
export { round } from './facts/figures.ts';
export { type MonthFacts, monthsOf } from './facts/months.ts';
export { choicesHereFirst, namesHereFirst } from './facts/names-here.ts';
export { offerOfOwn, offersOf, ordinaryKeeping } from './facts/offers.ts';
export { type PlaceFacts, placeFacts } from './facts/place-facts.ts';
export { type PlaceYear, placeYear, sunUpAtPhotoperiod } from './facts/place-year.ts';
export { runsAlike } from './facts/runs-alike.ts';
export { dayOf } from './facts/season-days.ts';
export { seasonEnds } from './facts/season-ends.ts';
export { type StandOn, standOn } from './facts/stand-on.ts';
export { cropYear, plainYearStart } from './facts/told-year.ts';
export { worthShowing } from './facts/worth-showing.ts';
export { type SeasonJob, seasonJobs } from './jobs/season-jobs.ts';
export { type WeekCode, weekOf } from './jobs/week-of.ts';
export { countryOf } from './place/country-of.ts';
export { elevationIsUnsure } from './place/elevation-is-unsure.ts';
export { locatePoint, locateTown, type PlaceAssets, type PlaceProblem, type Point } from './place/locate.ts';
export type { Place } from './place/place.ts';
export { placeLabel, pointLabel, townLabel } from './place/place-label.ts';
export {
  districtAssumption,
  placeAssumptions,
  practiceAssumptions,
  type SiteSettings,
  sizesAssumption,
} from './sentences/assumptions.ts';
export {
  alikeSentence,
  choiceWhy,
  namesOf,
  rankingSentence,
  setsWarning,
  whichHeadline,
} from './sentences/choice-sentences.ts';
export { coldBedSentence } from './sentences/cold-bed-sentence.ts';
export { comingDay } from './sentences/coming-day.ts';
export { cultivarHeadline } from './sentences/cultivar-headline.ts';
export { type Grounds, howWeKnowLines, sourceNames } from './sentences/how-we-know.ts';
export { leafCheckSentence } from './sentences/leaf-check.ts';
export {
  elsewhereSentence,
  kindsElsewhereSentence,
  noNameHereSentence,
} from './sentences/names-here-sentences.ts';
export { autumnAssumption, cultivarAssumption, packetAssumptions } from './sentences/onion-assumptions.ts';
export { type SeasonRow, type SeasonRowKey, seasonRows } from './sentences/season-rows.ts';
export {
  leavesGoneSentence,
  plantSpreadSentence,
  seasonHeadline,
  sharesSentence,
} from './sentences/season-sentences.ts';
export {
  seeSentence,
  topsSentence,
  weekSentence,
  weekWords,
} from './sentences/season-week.ts';
export { skyAndFrost } from './sentences/sky-and-frost.ts';
export { spanPartsSentence, spanSentence } from './sentences/span-sentences.ts';
export { todaySentence } from './sentences/today-sentence.ts';
export { tropicsSentence } from './sentences/tropics-sentence.ts';
export { whatItHangsOn } from './sentences/what-it-hangs-on.ts';
export { type WindowEdges, windowEdges } from './sentences/when-edges.ts';
export { whenHeadline } from './sentences/when-headline.ts';
export { whereHeadline } from './sentences/where-headline.ts';
export { keepingWords } from './sentences/which-keeping.ts';
export { packetHeadline } from './sentences/which-packet-headline.ts';

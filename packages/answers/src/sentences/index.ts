export { alliumSentence, alliumWarnings } from './allium-sentences.ts';
export {
  districtAssumption,
  placeAssumptions,
  practiceAssumptions,
  type SiteSettings,
  sizesAssumption,
} from './assumptions.ts';
export { atlasLead } from './atlas-lead.ts';
export { type AtlasRow, atlasRows } from './atlas-rows.ts';
export {
  adviceOfList,
  adviceOfPlace,
  alikeSentence,
  choiceWhy,
  isDoubtful,
  namesOf,
  type PlaceAdvice,
  rankingSentence,
  setsWarning,
} from './choice-sentences.ts';
export { coldBedSentence } from './cold-bed-sentence.ts';
export { comingDay } from './coming-day.ts';
export { cultivarHeadline } from './cultivar-headline.ts';
export {
  type FeedRow,
  feedAssumptions,
  feedBesidesSentences,
  feedCautions,
  feedHeadline,
  feedNeedSentences,
  feedRows,
  feedSources,
  feedStopSentences,
  limeSentence,
  productName,
} from './feed-sentences.ts';
export { type Grounds, howWeKnowLines, sourceNames } from './how-we-know.ts';
export { cautionSentence, jobName, jobSentence, jobSourceName, openSentence } from './job-sentences.ts';
export {
  keepEatFirst,
  storedEatFirst,
  storedInOrder,
  storedSentence,
} from './keep-eat-first.ts';
export { keepGrounds, storeName, useSource } from './keep-grounds.ts';
export { isGreenLot, keepKind, keepLotSentence, keepNames, neededOf, ofLot } from './keep-lots.ts';
export { keepCautions, keepGapSentence, keepHeadline, keepUnmetSentence } from './keep-sentences.ts';
export { type ShoppingItem, shoppingOf, shoppingSentence } from './keep-shopping.ts';
export {
  type LatitudeTold,
  latitudeHeadline,
  latitudeKindWords,
  latitudeName,
  latitudeSentences,
  sameWinterSentences,
  warmthWords,
} from './latitude-sentences.ts';
export { leafCheckSentence } from './leaf-check.ts';
export { shiftSentence } from './learnt-sentences.ts';
export { type LiftTold, liftTold } from './lift-told.ts';
export { mapSource } from './map-source.ts';
export { elsewhereSentence, kindsElsewhereSentence, noNameHereSentence } from './names-here-sentences.ts';
export { leastBulbMm, seeSentence, topsSentence } from './now-sentences.ts';
export { oddSentence } from './odd-sentence.ts';
export { autumnAssumption, cultivarAssumption, packetAssumptions } from './onion-assumptions.ts';
export { type PictureSource, pictureSource, sourcePlace } from './picture-source.ts';
export { type Elsewhere, type QuestionsMeant, questionAsked, questionsMeant } from './question-asked.ts';
export type { QuestionContext, QuestionSaid } from './question-context.ts';
export { peopleIn } from './question-people.ts';
export { type QuestionTable, questionTable } from './question-rows.ts';
export { questionSaid } from './question-said.ts';
export { type SeasonRow, type SeasonRowKey, seasonRows } from './season-rows.ts';
export {
  leavesGoneSentence,
  plantSpreadSentence,
  seasonHeadline,
  sharesSentence,
} from './season-sentences.ts';
export { plantsSentences, seenSentences } from './seen-sentences.ts';
export { freezesEachWinter, skyAndFrost } from './sky-and-frost.ts';
export { spanPartsSentence, spanSentence } from './span-sentences.ts';
export { meanwhileSentence, todaySentence } from './today-sentence.ts';
export { type OnOwnDay, togetherDate, togetherHeadline } from './together-headline.ts';
export { kindsSentence, zoneSentence } from './together-kinds.ts';
export { lineSentence, type SetBeside, startName } from './together-line.ts';
export { type LineOn, type OnWords, onWords } from './together-on.ts';
export { startsHeadline } from './together-starts.ts';
export { togetherTable } from './together-table.ts';
export { tropicsSentence } from './tropics-sentence.ts';
export {
  saltSentence,
  type WaterRow,
  waterAssumptions,
  waterCautions,
  waterRows,
  waterSentences,
} from './water-sentences.ts';
export { whatItHangsOn } from './what-it-hangs-on.ts';
export { type WindowEdges, windowEdges } from './when-edges.ts';
export { whenHeadline } from './when-headline.ts';
export {
  type Advice,
  bestOfYearSentence,
  namedOf,
  type Told,
  toldOf,
  whereHeadline,
} from './where-headline.ts';
export { keepingWords } from './which-keeping.ts';
export { type PacketAdvice, packetHeadline } from './which-packet-headline.ts';
export { symptomCalled } from './why-called.ts';
export { causeAdvice, causeLabel, causeLook } from './why-causes.ts';
export { changePhrase, nextYearSentence, whatIfSentence } from './why-changes.ts';
export { evidenceSentence } from './why-evidence.ts';
export { measureOf } from './why-grown.ts';
export { chanceText, leadOf, unseenSentence, whyLead } from './why-lead.ts';
export { answerLabel, questionText } from './why-questions.ts';
export { rescueSentences, whyCautionSentences } from './why-rescue.ts';
export { symptomsLike } from './why-search.ts';
export { symptomLabel, symptomNote } from './why-symptoms.ts';

import type { ClassNow } from '../choice/index.ts';
import type { KeepYear } from '../keep/index.ts';
import type { ClassAnswer, SeasonSummary, TodayAnswer, WhenAnswer } from '../season/index.ts';

/** An onion that waits for days which never come, with the days it waits for, sun-up, h. */
type Stranger = { summary: SeasonSummary; neededSunUpH: number };

/** Seed sown in the bed so late that it mostly makes no bulb. */
export type LateSowing = {
  summary: SeasonSummary;
  /** Share of the years in which no bulb comes of it, that of winter among them, 0…1. */
  bulblessShare: number;
  /** More often winter takes the plants than that they stay green. */
  isWinter: boolean;
};

/** “Why did mine never bulb?”: the place, an onion that waits for longer days, one sown too late. */
export type NeverBulbedAnswer = {
  question: 'never-bulbed';
  /** The onion that suits the place, at its best start. */
  own: SeasonSummary;
  /** Longest day of the place, sun-up, h. */
  longestSunUpH: number;
  /** The kind that often makes no bulbs here even at its best start, and waits for the longest days; null: each mostly makes some. */
  stranger: Stranger | null;
  /** Of the own onion, else of another of the place; null where no sowing comes too late. */
  late: LateSowing | null;
  /** Hardly any start of any kind does well here. */
  isPlace: boolean;
};

/** “Which onion do I buy here?”: each class at its best start, and what is in time today. */
export type WhichOnionAnswer = {
  question: 'which-onion';
  /** All classes, the leading one first. */
  classes: readonly ClassAnswer[];
  now: ClassNow | null;
};

/** “Is it too late today?”: what is still in time, and the weeks of the year. */
export type TooLateAnswer = {
  question: 'too-late';
  classes: readonly ClassAnswer[];
  now: ClassNow | null;
  today: readonly TodayAnswer[];
  /** The onion to start today, else that of the year, tried in every week. */
  starts: WhenAnswer;
};

/** What makes bulbs small, and the season with that alone done otherwise. */
export const smallCauses = ['late', 'crowded', 'unwatered', 'shaded', 'other-kind'] as const;
export type SmallCause = (typeof smallCauses)[number];
/** A season in which one thing alone makes bulbs smaller. */
export type SmallTrial = { cause: SmallCause; summary: SeasonSummary };

/** “Why are mine so small?”: the season at its best beside seasons with one fault each. */
export type TooSmallAnswer = {
  question: 'too-small';
  own: SeasonSummary;
  /** The smallest bulbs first. */
  trials: readonly SmallTrial[];
};

/** “Why do my neighbour’s sets flower?”: sets by size and store. */
export type SetsFlowerAnswer = {
  question: 'sets-flower';
  /** Small sets from a cold store, large ones from the same, and large ones kept warm. */
  small: SeasonSummary;
  large: SeasonSummary;
  warm: SeasonSummary;
};

/** “Can I plant supermarket onions?”: a kitchen bulb planted beside a set. */
export type KitchenOnionsAnswer = {
  question: 'kitchen-onions';
  /** A bulb from a kitchen planted as a set that met the cold, the same kept warm, and a set as shops sell it. */
  bulb: SeasonSummary;
  warm: SeasonSummary;
  set: SeasonSummary;
};

/** Where a friend may live. */
export type Abroad = 'tropics' | 'north';
/** A kind of a far latitude grown here, with where it is at home. */
export type FromAbroad = Stranger & { from: Abroad };

/** “Can I grow the onion my friend abroad grows?”: kinds of far latitudes at their best start here. */
export type FromAbroadAnswer = {
  question: 'from-abroad';
  own: SeasonSummary;
  longestSunUpH: number;
  /** Kinds of far latitudes at their best start here, those alone that are no kinds of the place; one at least. */
  kinds: readonly FromAbroad[];
};

/** “Can I sow in autumn?”: the best sowing that is to stand the winter beside that of spring. */
export type SowAutumnAnswer = {
  question: 'sow-autumn';
  /** The best sowing in the bed that is to stand the winter, in the open and under fleece. */
  autumn: SeasonSummary;
  fleece: SeasonSummary;
  /** The best sowing in the bed in the other half of the year. */
  spring: SeasonSummary;
  /** Days by which tops of the autumn sowing go over sooner than those of spring (later: less than 0); null where one's do not. */
  soonerDays: number | null;
  /** Between the tropics there is no winter to stand. */
  isTropical: boolean;
};

/** “How early can I sow indoors?”: trays started first, best and last, beside seed in the bed. */
export type StartIndoorsAnswer = {
  question: 'start-indoors';
  /** The onion of the place from trays, tried in every week. */
  starts: WhenAnswer;
  /** The first, best and last start about the best, while trays hold the same onion; null where none is in time. */
  stretch: { first: SeasonSummary; best: SeasonSummary; last: SeasonSummary; isAllYear: boolean } | null;
  /** The same onion sown in the bed at its best. */
  bed: SeasonSummary;
};

/** “How many do I plant for a year?”: the year of a kitchen, as `keep` plans it. */
export type HowManyAnswer = { question: 'how-many'; year: KeepYear };

/** What growers ask, answered for a place by runs: told apart by `question`. */
export type CommonAnswer =
  | NeverBulbedAnswer
  | WhichOnionAnswer
  | TooLateAnswer
  | TooSmallAnswer
  | SetsFlowerAnswer
  | KitchenOnionsAnswer
  | FromAbroadAnswer
  | SowAutumnAnswer
  | StartIndoorsAnswer
  | HowManyAnswer;

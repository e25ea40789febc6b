import type { DayNumber } from '../calendar/index.ts';
import type { OnionType, StartMethod } from '../plant/index.ts';
import type { AnswerOf, Question } from './questions.ts';
import type { Symptom } from './symptoms.ts';

/**
 * What speaks for a cause or against it, with its numbers: the code of a sentence. Tenths are seasons of ten, or plants or
 * bulbs of ten where the name says so; sizes are of the middle season.
 */
export type Evidence =
  /** Of the seasons run again as told, and without the cause, those in which one would have seen this. */
  | { code: 'run-with-and-without'; withTenths: number; withoutTenths: number }
  /** The season as told shows nothing of it: only with the cause put in would one have seen this. */
  | { code: 'run-only-if'; ifTenths: number; asToldTenths: number }
  /** It would have come about as often without the cause. */
  | { code: 'run-no-matter'; withTenths: number; withoutTenths: number }
  | { code: 'longest-day'; longestH: number; neededH: number }
  | { code: 'needed-day-comes'; day: DayNumber; neededH: number }
  | { code: 'bulbs-began'; day: DayNumber; leaves: number }
  | { code: 'never-began'; leaves: number }
  | { code: 'leaves-if-earlier'; weeks: number; leaves: number; mm: number }
  | { code: 'bulbs-without'; mm: number }
  | { code: 'size-without'; mm: number; asToldMm: number }
  | { code: 'ripens-without'; day: DayNumber }
  | { code: 'cold-met'; weeks: number; plantsTenths: number }
  | { code: 'flowering-without'; plantsTenths: number; asToldTenths: number }
  | { code: 'set-size'; mm: number; plantsTenths: number; smallMm: number; smallTenths: number }
  | { code: 'sets-not-said'; plantsTenths: number }
  | { code: 'winter-losses'; plantsTenths: number; coldestC: number }
  | { code: 'frost-lifted'; plantsTenths: number }
  | { code: 'thirsty-days'; days: number }
  | { code: 'mean-warmth'; tempC: number }
  | { code: 'plants-per-m2'; perM2: number; usualPerM2: number }
  | { code: 'sun-hours'; hours: number }
  | { code: 'at-home'; type: OnionType }
  /** Of the ground in the fortnight from the start, and seedlings of ten that came up. */
  | { code: 'soil-at-start'; tempC: number; upTenths: number }
  | { code: 'store-air'; tempC: number; humidityPct: number }
  | { code: 'store-coldest'; tempC: number }
  | { code: 'keeps-usually'; fromMonths: number; toMonths: number; keptMonths: number }
  | { code: 'bulbs-lost'; lossTenths: number; withoutTenths: number }
  | { code: 'flies-came'; day: DayNumber }
  | { code: 'wet-spells'; tenths: number }
  | { code: 'warm-soil'; tempC: number }
  | { code: 'hot-and-dry'; tempC: number; rainMm: number }
  | { code: 'drying-took'; days: number }
  /** What was seen is common with it, or hardly ever comes with it. */
  | { code: 'goes-with'; symptom: Symptom }
  | { code: 'not-with'; symptom: Symptom }
  | { [Q in Question]: { code: 'said'; question: Q; answer: AnswerOf<Q> } }[Question]
  /** The grower said it otherwise than the cause needs it. */
  | { code: 'plan-says'; field: 'water' | 'density' | 'sun' | 'set-size' | 'set-store'; start: StartMethod };

/** What speaks for or against a cause, as the code of a message. */
export type EvidenceCode = Evidence['code'];

import {
  type AnswerOf,
  answerOdds,
  type Cause,
  causeKinds,
  passedOver,
  type Question,
  questionAnswers,
  type RandomSource,
  randomSource,
  type Said,
  type SeasonFacts,
  type Symptom,
  seenShare,
  symptoms,
  symptomTimes,
  tryTrial,
  type WhyAnswer,
  whyOf,
} from '../../packages/engine/src/index.ts';
import type { StudyPlace } from './places.ts';
import { putInBed } from './put-in-bed.ts';
import { putInSeen } from './put-in-seen.ts';
import { putInStore } from './put-in-store.ts';
import { soundPlans } from './sound-plans.ts';
import type { Spoilt } from './spoilt.ts';

/** A case asked: the cause put in, and what was answered at once and after the questions. */
export type Asked = {
  place: string;
  cause: Cause;
  told: readonly Symptom[];
  questions: number;
  first: WhyAnswer;
  last: WhyAnswer;
};

/** A symptom is told by its grower who sees it so often; of many the most striking three are. */
const toldShare = 0.85;
const mostTold = 3;
/** A cause is at work where it makes what is told likely that would not have been without it. */
const atWork = { withAtLeast: 0.6, withoutAtMost: 0.2 } as const;
/** It spoils most seasons of a crop that is good in most without it. */
const spoils = { goodAtMost: 0.4, soundAtLeast: 0.6 } as const;
/** What causes show that no run knows differs so much from the tables that are asked, as a factor. */
const showsOtherwise = [0.6, 1.2] as const;
/** A question is passed over so often. */
const passedShare = 0.15;

/** Tries causes in some seasons of a place. @param each seasons of each cause */
export function studyOf(
  place: StudyPlace,
  seed: number,
  each: number,
  isTried: (cause: Cause) => boolean = () => true,
): Asked[] {
  const random = randomSource(seed);
  const ways = soundPlans(place).flatMap((plan) => [
    ...putInBed(place, plan),
    ...putInStore(place, plan),
    ...putInSeen(place, plan),
  ]);
  return [...new Set(ways.map(({ cause }) => cause))].filter(isTried).flatMap((cause) => {
    const cases = ways.filter((way) => way.cause === cause && doesSpoil(way)).flatMap(casesOf);
    const asked: Asked[] = [];
    while (asked.length < each && cases.length > 0) {
      const [one] = cases.splice(Math.floor(random.uniform() * cases.length), 1);
      const told = tell(one, random);
      if (told.some((symptom) => isMark(symptom, one))) asked.push(ask(place, one.way, told, random));
    }
    return asked;
  });
}

function doesSpoil({ cause, lived, sound }: Spoilt): boolean {
  if (lived.store !== null || causeKinds[cause] === 'seen') return true;
  const goodShare = (trial: Spoilt['lived']) => tryTrial(trial, false).grown.goodShare;
  return goodShare(lived) <= spoils.goodAtMost && goodShare(sound) >= spoils.soundAtLeast;
}

/** One season of a crop with a cause in it, and the same without. */
type Case = { way: Spoilt; lived: SeasonFacts; sound: SeasonFacts };

function casesOf(way: Spoilt): Case[] {
  const sound = tryTrial(way.sound, false).facts;
  return tryTrial(way.lived, false).facts.flatMap((lived, at) => {
    const hopedDryG = Math.max(lived.bulbDryG, sound[at].bulbDryG);
    const one = { way, lived: { ...lived, hopedDryG }, sound: { ...sound[at], hopedDryG } };
    return symptoms.some((symptom) => isMark(symptom, one)) ? [one] : [];
  });
}

const inGrowth = ['no-bulb', 'tops-stood', 'small', 'thick-necks', 'fell-early'] as const;

/** What a cause must bring to have been at work, whatever else a season shows; others may bring anything. */
const marks: Partial<Record<Cause, readonly Symptom[]>> = {
  'days-too-short': inGrowth,
  'type-too-late': inGrowth,
  'type-too-early': inGrowth,
  'started-too-late': inGrowth,
  // that seed was another is told by nothing else
  'wrong-seed': ['no-bulb', 'tops-stood'],
  'cold-on-large-plants': ['flowered'],
  'large-sets': ['flowered'],
  'winter-cold': ['died-in-winter'],
};

/** Whether a symptom shows that the cause was at work. */
function isMark(symptom: Symptom, { way, lived, sound }: Case): boolean {
  if (marks[way.cause]?.includes(symptom) === false || !isAsked(symptom, way)) return false;
  if (way.shows[symptom] !== undefined) return way.shows[symptom] >= atWork.withAtLeast / 2;
  return seenShare(symptom, lived) >= atWork.withAtLeast && seenShare(symptom, sound) <= atWork.withoutAtMost;
}

/** Growers tell of a store or of a bed. */
function isAsked(symptom: Symptom, { lived }: Spoilt): boolean {
  return (lived.store !== null) === (symptomTimes[symptom] === 'store');
}

function tell({ way, lived, sound }: Case, random: RandomSource): Symptom[] {
  const [low, high] = showsOtherwise;
  return symptoms
    .filter((symptom) => isAsked(symptom, way))
    .map((symptom) => {
      const own = (way.shows[symptom] ?? 0) * (low + (high - low) * random.uniform());
      const share = 1 - (1 - seenShare(symptom, lived)) * (1 - Math.min(0.97, own));
      return { symptom, share, gain: share - seenShare(symptom, sound) };
    })
    .filter(({ share }) => random.uniform() < share * toldShare)
    .sort((a, b) => b.gain - a.gain)
    .slice(0, mostTold)
    .map(({ symptom }) => symptom);
}

function ask(place: StudyPlace, way: Spoilt, told: Symptom[], random: RandomSource): Asked {
  const { store, isStoreSaid, keepsMonths } = way;
  const whyWith = (answers: Said) =>
    whyOf(place.asked, {
      plan: way.told,
      said: new Set(way.said),
      isAbout: false,
      today: place.year,
      symptoms: told,
      noticed: null,
      store,
      isStoreSaid,
      keepsMonths,
      answers,
    });
  const first = whyWith({});
  let last = first;
  let answers: Said = {};
  while (last.ask !== null) {
    answers = { ...answers, [last.ask]: answerOf(last.ask, way, random) };
    last = whyWith(answers);
  }
  return { place: place.name, cause: way.cause, told, questions: Object.keys(answers).length, first, last };
}

/** What a grower answers: as it was where the season has it, else as others with the cause do. */
function answerOf(
  question: Question,
  { cause, lived: { plan } }: Spoilt,
  random: RandomSource,
): AnswerOf | typeof passedOver {
  if (random.uniform() < passedShare) return passedOver;
  if (question === 'watering' && plan.water === 'rain') return 'rain-only';
  if (question === 'sun') return plan.sunHours === null ? 'all-day' : 'shade';
  if (question === 'set-size' && plan.start === 'sets') return plan.setSizeMm > 20 ? 'walnut' : 'hazelnut';
  const { usual, with: of } = answerOdds[question];
  const drawn = random.uniform();
  let below = 0;
  const at = (of[cause] ?? usual).findIndex((share) => {
    below += share;
    return drawn < below;
  });
  return questionAnswers[question][Math.max(0, at)];
}

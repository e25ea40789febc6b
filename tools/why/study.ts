import {
  type AnswerOf,
  answerOdds,
  type Cause,
  dayNumber,
  type Plan,
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
  type Trial,
  tryTrial,
  type WhyAnswer,
  whyOf,
} from '../../packages/engine/src/index.ts';
import type { StudyPlace } from './places.ts';
import { type Spoilt, soundPlans, spoiltOf } from './put-in.ts';

/** A case asked: the cause put in, and what was answered at once and after the questions. */
export type Asked = {
  place: string;
  cause: Cause;
  symptoms: readonly Symptom[];
  questions: number;
  first: WhyAnswer;
  last: WhyAnswer;
};

/** A symptom is told by its grower who sees it so often; of many the most striking three are. */
const toldShare = 0.85;
const mostTold = 3;
/** A cause is at work where it makes what is told likely that would not have been without it. */
const atWork = { withAtLeast: 0.6, withoutAtMost: 0.2 } as const;
const today = dayNumber(2027, 1, 1);

/** Tries every cause in some seasons of a place. @param each seasons of each way of putting it in */
export function studyOf(place: StudyPlace, seed: number, each: number): Asked[] {
  const random = randomSource(seed);
  const asked: Asked[] = [];
  const all = soundPlans(place, today).flatMap((plan) => spoiltOf(place, plan));
  for (const cause of new Set(all.map((way) => way.cause))) {
    const cases = all.filter((way) => way.cause === cause).flatMap(casesOf);
    for (let i = 0; i < each && cases.length > 0; i++) {
      const [one] = cases.splice(Math.floor(random.uniform() * cases.length), 1);
      const seen = tell(one, random);
      if (!seen.some((symptom) => (marks[cause] ?? symptoms).includes(symptom) && isMark(symptom, one))) {
        i--;
        continue;
      }
      asked.push(askOf(place, cause, one.way, seen, random));
    }
  }
  return asked;
}

type Case = { way: Spoilt; lived: SeasonFacts; sound: SeasonFacts };

function casesOf(way: Spoilt): Case[] {
  const lived = tryTrial(way.lived as Trial, false).facts;
  const sound = tryTrial(way.sound as Trial, false).facts;
  return lived.flatMap((of, at) => {
    const other = sound[at];
    const hopedDryG = Math.max(of.bulbDryG, other.bulbDryG);
    const one = { way, lived: { ...of, hopedDryG }, sound: { ...other, hopedDryG } };
    return strikes(one) ? [one] : [];
  });
}

const isOf = (symptom: Symptom, { lived }: Case['way']) =>
  lived.store === null ? symptomTimes[symptom] !== 'store' : symptomTimes[symptom] === 'store';

const inGrowth = ['no-bulb', 'tops-stood', 'small', 'thick-necks', 'fell-early'] as const;

/** What a cause must bring to have been at work, whatever else a season shows; others may bring anything. */
const marks: Partial<Record<Cause, readonly Symptom[]>> = {
  'days-too-short': inGrowth,
  'type-too-late': inGrowth,
  'type-too-early': inGrowth,
  'started-too-late': inGrowth,
  'wrong-seed': inGrowth,
  'cold-on-large-plants': ['flowered'],
  'large-sets': ['flowered'],
  'winter-cold': ['died-in-winter'],
};

function strikes({ way, lived, sound }: Case): boolean {
  const marking = marks[way.cause] ?? symptoms;
  return marking.some((symptom) => isMark(symptom, { way, lived, sound }));
}

function isMark(symptom: Symptom, { way, lived, sound }: Case): boolean {
  return (
    isOf(symptom, way) &&
    seenShare(symptom, lived) >= atWork.withAtLeast &&
    seenShare(symptom, sound) <= atWork.withoutAtMost
  );
}

function tell({ lived, sound }: Case, random: RandomSource): Symptom[] {
  const shares = symptoms
    .filter((symptom) => (lived.stored !== null) === (symptomTimes[symptom] === 'store'))
    .map((symptom) => ({
      symptom,
      share: seenShare(symptom, lived),
      extra: seenShare(symptom, lived) - seenShare(symptom, sound),
    }));
  return shares
    .filter(({ share }) => random.uniform() < share * toldShare)
    .sort((a, b) => b.extra - a.extra)
    .slice(0, mostTold)
    .map(({ symptom }) => symptom);
}

function askOf(place: StudyPlace, cause: Cause, way: Spoilt, seen: Symptom[], random: RandomSource): Asked {
  const ask = (answers: Said) =>
    whyOf(place.asked, {
      plan: way.told as Plan,
      said: new Set(way.said),
      isAbout: false,
      today,
      symptoms: seen,
      noticed: null,
      store: way.store,
      isStoreSaid: way.isStoreSaid,
      keepsMonths: way.keepsMonths,
      answers,
    });
  const first = ask({});
  let last = first;
  let answers: Said = {};
  while (last.ask !== null) {
    answers = { ...answers, [last.ask]: answerOf(last.ask, cause, way, random) };
    last = ask(answers);
  }
  return { place: place.name, cause, symptoms: seen, questions: Object.keys(answers).length, first, last };
}

/** What a grower answers: as it was where the season has it, else as others with the cause do. */
function answerOf(question: Question, cause: Cause, { lived }: Spoilt, random: RandomSource): AnswerOf {
  const { plan } = lived;
  if (question === 'watering' && plan.water === 'rain') return 'rain-only';
  if (question === 'sun') return plan.sunHours === null ? 'all-day' : 'shade';
  if (question === 'set-size' && plan.start === 'sets') return plan.setSizeMm > 20 ? 'walnut' : 'hazelnut';
  const { usual, with: of } = answerOdds[question];
  const odds = of[cause] ?? usual;
  const drawn = random.uniform();
  let below = 0;
  const at = odds.findIndex((share) => {
    below += share;
    return drawn < below;
  });
  return questionAnswers[question][Math.max(0, at)];
}

import type { WhyAsked } from './answer.ts';
import { answerOdds, answerShare } from './answer-odds.ts';
import type { Chances } from './chances.ts';
import { mostQuestions, type Question, questionAnswers, questions } from './questions.ts';
import { type Symptom, symptomTimes } from './symptoms.ts';

/** A question that is expected to take away less doubt than this is not worth a tap, nats (set by hand). */
const leastGain = 0.06;

/** The question that is expected to take away most of the doubt between the causes; null: none is worth it. */
export function questionToAsk(chances: Chances, asked: WhyAsked): Question | null {
  if (Object.keys(asked.answers).length >= mostQuestions) return null;
  let best: Question | null = null;
  let most = leastGain;
  for (const question of questions) {
    if (question in asked.answers || !fits(question, asked)) continue;
    const gain = expectedGain(question, chances);
    if (gain > most) {
      most = gain;
      best = question;
    }
  }
  return best;
}

/** Expected information of a question on which cause it is (Lindley 1956), nats. */
export function expectedGain(question: Question, chances: Chances): number {
  if (![...chances.keys()].some((cause) => cause && answerOdds[question].with[cause])) return 0;
  const before = entropy([...chances.values()]);
  return questionAnswers[question].reduce((gain, _, at) => {
    const joint = [...chances].map(([cause, chance]) => chance * answerShare(question, at, cause));
    const share = joint.reduce((a, b) => a + b, 0);
    return share > 0 ? gain - share * entropy(joint.map((of) => of / share)) : gain;
  }, before);
}

function entropy(shares: readonly number[]): number {
  return shares.reduce((sum, share) => (share > 0 ? sum - share * Math.log(share) : sum), 0);
}

/** Whether a question can be asked of this crop: no one with seed is asked about sets, nor about a store before lifting. */
function fits(question: Question, { plan, said, symptoms, isStoreSaid }: WhyAsked): boolean {
  const sawAny = (...of: Symptom[]) => symptoms.some((symptom) => of.includes(symptom));
  const inStore = symptoms.some((symptom) => symptomTimes[symptom] === 'store');
  switch (question) {
    case 'set-size':
      return plan.start === 'sets' && !said.has('setSizeMm');
    case 'seed-from':
    case 'seed-age':
      return plan.start === 'direct-seed' || plan.start === 'raised-seedlings';
    case 'watering':
      return !said.has('water');
    case 'sun':
      return !said.has('sunHours');
    case 'stems-before-cold':
      return plan.start !== 'sets' && sawAny('flowered', 'stalk-in-bulb', 'died-in-winter');
    case 'store-warmth':
    case 'store-frost':
      return inStore && !isStoreSaid;
    case 'drying':
      return inStore || sawAny('scalded', 'soft');
    case 'tops-at-lifting':
      return inStore || sawAny('thick-necks', 'soft');
    case 'rot':
      return sawAny('rotted-in-store', 'soft', 'neck-rot');
    // what was told already is not asked
    case 'leaf-marks':
      return !sawAny('silver-streaks', 'purple-spots', 'grey-fur');
    case 'roots':
      return !sawAny('pink-roots');
    case 'base':
      return !sawAny('white-fluff', 'maggots');
    case 'stem-ends':
      return sawAny('gone-in-a-row', 'seedlings-toppled', 'few-came-up');
    case 'last-fed':
    case 'weeds':
    case 'salty':
    case 'alliums-before':
      return true;
  }
}

import type { Evidence, EvidenceCode } from '@neckfall/engine';
import type { MessageValues, Speaker } from '@neckfall/words';
import { answerLabel, questionText } from './why-questions.ts';
import { symptomLabel } from './why-symptoms.ts';

/** Of what tenths are; of all others, they are seasons. */
const tenthsOf: Partial<Record<EvidenceCode, 'plants' | 'bulbs' | 'seeds'>> = {
  'cold-met': 'plants',
  'flowering-without': 'plants',
  'set-size': 'plants',
  'sets-not-said': 'plants',
  'winter-losses': 'plants',
  'frost-lifted': 'plants',
  'bulbs-lost': 'bulbs',
  'soil-at-start': 'seeds',
};

/** What speaks for a cause or against it, in one sentence. */
export function evidenceSentence(evidence: Evidence, speaker: Speaker): string {
  const { say, numberRange } = speaker;
  switch (evidence.code) {
    case 'said': {
      const { question, answer } = evidence;
      const words = {
        question: questionText(question, speaker),
        answer: answerLabel(question, answer, speaker),
      };
      return say('why.evidence.said', words);
    }
    case 'plan-says':
      return planSays(evidence, speaker);
    case 'goes-with':
    case 'not-with':
      return say(`why.evidence.${evidence.code}`, { symptom: symptomLabel(evidence.symptom, speaker) });
    case 'at-home':
      return say('why.evidence.at-home', { type: say(`type-head.${evidence.type}`) });
    case 'keeps-usually': {
      const { fromMonths, toMonths } = evidence;
      const months = numberRange(fromMonths, toMonths);
      return say('why.evidence.keeps-usually', { ...valuesOf(evidence, speaker), months });
    }
    default:
      return say(`why.evidence.${evidence.code}`, valuesOf(evidence, speaker));
  }
}

function planSays({ field, start }: Extract<Evidence, { code: 'plan-says' }>, { say }: Speaker): string {
  const isOfSets = field === 'set-size' || field === 'set-store';
  if (isOfSets && start !== 'sets')
    return say('why.evidence.plan-says.no-sets', { start: say(`start.${start}`) });
  return say(`why.evidence.plan-says.${field}`);
}

/** Its numbers in words: the end of a name tells the unit. */
function valuesOf({ code, ...numbers }: Evidence, speaker: Speaker): MessageValues {
  const { say, day, dayLength, quantity } = speaker;
  const inWords = (name: string, value: number): string | number => {
    if (name === 'day') return day(value);
    if (name.endsWith('H')) return dayLength(value);
    if (name.endsWith('C')) return quantity('temperature', value);
    if (name.endsWith('erM2')) return quantity('density', value);
    if (name === 'rainMm') return quantity('rain', value);
    if (/mm$/i.test(name)) return quantity('bulbLength', value);
    if (/tenths$/i.test(name))
      return say(`why.of.${tenthsOf[code] ?? 'seasons'}`, { tenths: Math.round(value) });
    return Math.round(value);
  };
  return Object.fromEntries(
    Object.entries(numbers).map(([name, value]) => [name, inWords(name, Number(value))]),
  );
}

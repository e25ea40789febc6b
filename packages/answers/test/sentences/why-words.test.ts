import { loadLanguage, loadLater, speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import {
  type AnswerOf,
  causeKinds,
  causes,
  passedOver,
  type Question,
  questionAnswers,
  questions,
  rescueOf,
  symptoms,
  whyCautions,
} from '../../../engine/src/index.ts';
import {
  answerLabel,
  causeAdvice,
  causeLabel,
  causeLook,
  questionText,
  rescueSentences,
  symptomLabel,
  symptomNote,
  whyCautionSentences,
} from '../../src/index.ts';

await loadLater();
await loadLanguage('es');
const [british, american, spanish] = [speaker('metric'), speaker('us'), speaker('metric', 'es')];

const isSentence = /^[\p{Lu}¿].*[.?]$/u;
const isLabel = /^\p{Lu}.*[^.]$/u;

describe.each([british, american, spanish])('in the voice of $locale', (voice) => {
  test('every symptom has a label of its own, what tells it apart, and what to do today', () => {
    const labels = symptoms.map((symptom) => symptomLabel(symptom, voice));
    expect(new Set(labels).size).toBe(symptoms.length);
    for (const label of labels) {
      expect(label).toMatch(isLabel);
      expect(label.length).toBeLessThanOrEqual(38);
    }
    for (const symptom of symptoms) {
      expect(symptomNote(symptom, voice)).toMatch(isSentence);
      const rescue = { ...rescueOf[symptom], symptoms: [symptom] };
      const told = rescueSentences({ rescue }, voice);
      expect(told).toHaveLength(3);
      for (const sentence of told) expect(sentence).toMatch(isSentence);
    }
  });

  test('every cause has a headline of its own and advice, and those no run knows what to look at', () => {
    const labels = causes.map((cause) => causeLabel(cause, voice));
    expect(new Set(labels).size).toBe(causes.length);
    for (const label of labels) expect(label).toMatch(isLabel);
    for (const cause of causes) {
      expect(causeAdvice(cause, voice)).toMatch(isSentence);
      const look = causeLook(cause, voice);
      if (causeKinds[cause] === 'seen') expect(look).toMatch(isSentence);
      else expect(look).toBeNull();
    }
  });

  test('every question is one, and its answers are told apart', () => {
    for (const question of questions) {
      expect(questionText(question, voice)).toMatch(/\?$/);
      const all: readonly (AnswerOf | typeof passedOver)[] = [...questionAnswers[question], passedOver];
      const answers = all.map((answer) => answerLabel<Question>(question, answer, voice));
      expect(new Set(answers).size).toBe(answers.length);
      for (const answer of answers) expect(answer).toMatch(/^\p{Lu}/u);
    }
  });

  test('every caution is a sentence of its own', () => {
    const told = whyCautionSentences({ cautions: whyCautions }, voice);
    expect(new Set(told).size).toBe(whyCautions.length);
    for (const sentence of told) expect(sentence).toMatch(isSentence);
  });
});

test('advice comes in the units of the reader', () => {
  expect(causeAdvice('cold-soil', british)).toContain('10°C');
  expect(causeAdvice('cold-soil', american)).toContain('50°F');
  expect(causeAdvice('dry-seedbed', british)).toContain('15 mm');
  expect(causeAdvice('dry-seedbed', american)).toContain('0.6 in');
});

test('what may be eaten is told as strictly as it is meant', () => {
  const said = (eating: 'yes' | 'cut-away' | 'no', storing: 'yes' | 'eat-first' | 'no') =>
    rescueSentences({ rescue: { eating, storing, symptoms: ['soft', 'neck-rot'] } }, british);
  const [soft, neck, eating, storing, ...none] = said('no', 'no');
  expect([soft, neck]).toEqual([british.say('why.rescue.soft'), british.say('why.rescue.neck-rot')]);
  expect(eating).toMatch(/^Do not eat/);
  expect(storing).toMatch(/^Do not store/);
  expect(none).toEqual([]);
  expect(said('cut-away', 'eat-first')[2]).toMatch(/^Cut the bad part away/);
  expect(said('cut-away', 'eat-first')[3]).toMatch(/eat them before/);
  expect(said('yes', 'yes')[2]).toMatch(/good to eat/);
});

test('cautions name what poisons and whom to ask', () => {
  const told = (caution: (typeof whyCautions)[number]) =>
    whyCautionSentences({ cautions: [caution] }, british)[0];
  expect(told('mould-throw-away')).toMatch(/Throw .* away whole/);
  expect(told('pets')).toMatch(/dogs, cats/);
  expect(told('not-sure-is-it-onion')).toMatch(/does not smell of onion, do not eat/);
  expect(told('pesticide-local-rules')).toMatch(/Local rules, licensed advice and the label/);
  expect(told('green-is-not-potato')).toMatch(/not the poison of green potatoes/);
});

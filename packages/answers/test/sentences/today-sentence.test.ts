import { type ClassAnswer, dayNumber, type Plan, type StartMethod, type TodayAnswer } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import { expect, test } from 'vitest';
import { comingDay } from '../../src/sentences/coming-day.ts';
import { meanwhileSentence, todaySentence } from '../../src/sentences/today-sentence.ts';

const voice = speaker('metric');
const today = dayNumber(2027, 5, 3);
const lead = {
  class: 'long',
  type: 'northern-long',
  isAtHome: true,
  summary: { plan: { start: 'sets', startDay: dayNumber(2027, 9, 27) } },
} as ClassAnswer;
const other = { class: 'short', type: 'short', isAtHome: true } as ClassAnswer;

const closed = { verdict: 'small', stillGoodUntil: null, nextFrom: null } as const;
const sets: TodayAnswer = { ...closed, class: 'long', type: 'northern-long', start: 'sets' };
const seed: TodayAnswer = { ...closed, class: 'long', type: 'northern-long', start: 'direct-seed' };

test('says until when a start is in time, and what comes next', () => {
  const sentence = todaySentence(
    {
      classes: [lead],
      today: [
        { ...sets, stillGoodUntil: dayNumber(2027, 5, 13) },
        { ...seed, nextFrom: dayNumber(2028, 2, 26) },
      ],
    },
    today,
    voice,
  );
  expect(sentence).toBe(
    'Still in time: sets until 13 May. Next in turn: seed in place from 26 February 2028.',
  );
});

test('starts of one day are said together', () => {
  const until = dayNumber(2027, 5, 28);
  const next = dayNumber(2027, 8, 20);
  const answers: TodayAnswer[] = [
    { ...seed, stillGoodUntil: dayNumber(2027, 5, 21) },
    { ...sets, start: 'bought-transplants', stillGoodUntil: until },
    { ...sets, stillGoodUntil: until, nextFrom: next },
    { ...sets, start: 'raised-seedlings', nextFrom: next },
  ];
  expect(todaySentence({ classes: [lead], today: answers }, today, voice)).toBe(
    'Still in time: seed in place until 21 May; bought plants and sets until 28 May. Next in turn: sets and seed in trays from 20 August.',
  );
});

test('the last week of a start is said so', () => {
  const answers = [{ ...sets, stillGoodUntil: today }];
  expect(todaySentence({ classes: [lead], today: answers }, today, voice)).toBe(
    'Still in time: sets this week only.',
  );
});

test('a start that is good for a year ahead is so in nearly every week: single weeks may fail', () => {
  const answers = [{ ...sets, stillGoodUntil: today + 357 }];
  expect(todaySentence({ classes: [lead], today: answers }, today, voice)).toBe(
    'Still in time: sets now and in nearly every week of the year.',
  );
});

test('where the best onion must wait, what is in time for another at home there is said, and for none from far off', () => {
  const answers = [
    { ...sets, nextFrom: dayNumber(2027, 9, 20) },
    { ...sets, class: 'short' as const, stillGoodUntil: dayNumber(2027, 5, 20) },
  ];
  const say = (isAtHome: boolean) =>
    todaySentence({ classes: [lead, { ...other, isAtHome }], today: answers }, today, voice);
  expect(say(true)).toBe(
    'In time now, though second best here: short-day onions from sets until 20 May. No long-day onions to start just now; next in turn: sets from 20 September.',
  );
  expect(say(false)).toBe(
    'Nothing to start just now. Next in turn: sets from 20 September. Until then: order sets in good time, and keep those you have dry, airy and cool until 27 September.',
  );
});

test('where the best onion has no start at all, that is said of it alone', () => {
  const answers = [sets, { ...sets, class: 'short' as const, stillGoodUntil: dayNumber(2027, 5, 20) }];
  expect(todaySentence({ classes: [lead, other], today: answers }, today, voice)).toBe(
    'In time now, though second best here: short-day onions from sets until 20 May. However long-day onions are started here, most years bring no good bulbs.',
  );
});

test('until then seed is ordered in time, and sets that would not last are eaten green', () => {
  const until = (start: StartMethod, startDay: number) =>
    meanwhileSentence({ plan: { start, startDay } as Plan }, today, voice);
  expect(until('direct-seed', dayNumber(2027, 8, 12))).toContain('get fresh seed by 22 July');
  expect(until('direct-seed', today + 5)).toContain('get fresh seed by 3 May');
  expect(until('bought-transplants', dayNumber(2027, 9, 1))).toContain('to come around 1 September');
  expect(until('sets', today + 200)).toContain('keep those you have');
  expect(until('sets', today + 201)).toContain('eat as green onions');
});

test('days far ahead are said with their year', () => {
  expect(comingDay(today + 200, today, voice)).toBe('19 November');
  expect(comingDay(today + 300, today, voice)).toBe('27 February 2028');
});

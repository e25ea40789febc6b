import type { Choice, SeasonSummary } from '@neckfall/engine';
import { loadLater, speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import { alikeSentence, choiceWhy, packetHeadline } from '../../src/index.ts';

await loadLater();
const british = speaker('metric');
const american = speaker('us');

describe('why a choice comes before the next', () => {
  const choice = (why: { code: string; values: object }) => ({ why }) as unknown as Choice;

  test('sets it against the next kind', () => {
    const values = { months: 9, nextMonths: 4, nextType: 'early-long', nextStart: 'raised-seedlings' };
    expect(choiceWhy(choice({ code: 'choice-keeping', values }), british)).toBe(
      'Keeps about 9 months; the next best, early long-day onions sown in trays, about 4.',
    );
  });

  test('says the fact alone where no kind comes after', () => {
    expect(choiceWhy(choice({ code: 'choice-last', values: { goodYearShare: 1, years: 30 } }), british)).toBe(
      'Good bulbs come in all 30 years tried; no other kind comes after.',
    );
  });
});

describe('what is just as good', () => {
  const choices = [
    [1, 'northern-long', 'sets'],
    [1, 'early-long', 'sets'],
    [3, 'short', 'sets'],
  ].map(([rank, type, start]) => ({ rank, kind: { type, start } }) as Choice);

  test('leaves out the kind that is told, whichever of the best that is', () => {
    expect(alikeSentence(choices, choices[0], british)).toBe(
      'Just as good here: early long-day onions from sets.',
    );
    expect(alikeSentence(choices, choices[1], british)).toBe(
      'Just as good here: northern long-day onions from sets.',
    );
  });

  test('is not said of a kind that others come before', () => {
    expect(alikeSentence(choices, choices[2], british)).toBeNull();
  });
});

describe('whether the onion in the hand suits', () => {
  const from = (outcome: SeasonSummary['outcome'], good: number, gamble = false) =>
    ({
      kind: { type: 'northern-long', start: 'sets', names: ['Rumba'] },
      summary: {
        outcome,
        gamble,
        years: 30,
        plan: { startDay: 20_544 },
        bulbDiameterMm: { p50: 48 },
        neckFall: { days: { p50: 20_667 } },
        seasonShares: { good },
      },
    }) as unknown as Choice;
  const today = 20_500;
  const advice = (choices: readonly Choice[]) => ({ choices, now: null, isHeld: false });

  test.each([
    [
      from('good', 0.9),
      'Lyon: yes, Rumba suits. Get it as sets and plant them around 1 April; tops go over around ',
    ],
    [from('good', 0.6), 'Lyon: Rumba may do: good bulbs in 6 years in 10. Get it as sets'],
    [from('good', 0.4, true), 'Lyon: Rumba is a gamble here.'],
    [from('small', 0.1), 'Lyon: Rumba stays small here, about 48 mm.'],
    [from('small', 0.4), 'Lyon: Rumba all but suits: bulbs of about 48 mm, full-sized in 4 years in 10.'],
    [from('bolts', 0.1), 'Lyon: not Rumba. However it is started, it runs to flower in most years.'],
    [from('no-bulb', 0), 'Lyon: not Rumba. However it is started, it makes no bulbs in most years.'],
    [from('winter-killed', 0), 'Lyon: not Rumba. However it is started, winter takes it in most years.'],
    [
      from('not-ripe', 0),
      'Lyon: not Rumba. However it is started, it stays thick-necked and unfinished in most years.',
    ],
  ])('is said as often as it is so', (choice, start) => {
    const said = packetHeadline(advice([choice]), 'Lyon', today, british);
    expect(said.slice(0, start.length)).toBe(start);
  });

  test('is said of one start only where another ends otherwise', () => {
    const said = (...choices: Choice[]) => packetHeadline(advice(choices), 'Lyon', today, british);
    const flowers = from('bolts', 0.1);
    expect(said(flowers, from('bolts', 0))).toContain('However it is started');
    for (const other of [from('good', 0.9), from('bolts', 0.4, true), from('small', 0)])
      expect(said(flowers, other)).toBe('Lyon: not Rumba. From sets, it runs to flower in most years.');
  });

  test('is said in American words', () => {
    expect(packetHeadline(advice([from('good', 0.6)]), 'Lyon', today, american)).toContain(
      'tops fall around',
    );
  });
});

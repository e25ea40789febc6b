import type { Choice, Kind, SeasonSummary } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import { choiceWhy, packetHeadline } from '../../src/index.ts';

const british = speaker('metric');
const american = speaker('us');

type Told = Pick<Kind, 'type' | 'start'> & { name: string; rank: number };

/** A choice of which only what is said matters. */
function choice({ type, start, name, rank }: Told, next?: Told): Choice {
  const values = next && {
    months: 9,
    nextMonths: 4,
    nextName: next.name,
    nextType: next.type,
    nextStart: next.start,
  };
  return {
    rank,
    kind: { type, start, names: [name] },
    why: { code: 'choice-keeping', values: values ?? { months: 9 } },
  } as unknown as Choice;
}

describe('why a choice comes before the next', () => {
  const sets: Told = { type: 'northern-long', start: 'sets', name: 'Rumba', rank: 1 };
  const trays: Told = { type: 'early-long', start: 'raised-seedlings', name: 'Armada', rank: 3 };

  test('sets it against the kind of the next', () => {
    expect(choiceWhy(choice(sets, trays), british, [choice(sets), choice(trays)])).toBe(
      'Keeps about 9 months, against 4 for early long-day onions sown in trays.',
    );
  });

  test('names the next where another onion of its kind is level with this one', () => {
    const level = choice({ ...trays, name: 'Valenciana', rank: 1 });
    expect(choiceWhy(choice(sets, trays), british, [choice(sets), level, choice(trays)])).toBe(
      'Keeps about 9 months, against 4 for Armada sown in trays.',
    );
  });

  test('names the next alone where it is of the same kind', () => {
    const other = { ...sets, name: 'Setton', rank: 2 };
    expect(choiceWhy(choice(sets, other), british, [choice(sets), choice(other)])).toBe(
      'Keeps about 9 months, against 4 for Setton.',
    );
  });
});

describe('whether the onion in the hand suits', () => {
  const from = (outcome: SeasonSummary['outcome'], good: number, gamble = false) =>
    ({
      kind: { type: 'northern-long', start: 'sets', names: ['Rumba'] },
      summary: { outcome, gamble, neckFall: { p50: 20_667 }, seasonShares: { good } },
    }) as unknown as Choice;
  const at = { place: 'Lyon', date: '1 April 2027' };

  test.each([
    [
      from('good', 0.9),
      'Lyon: yes, Rumba suits. Get it as sets and plant them around 1 April 2027; tops go over around ',
    ],
    [from('good', 0.6), 'Lyon: Rumba may do: good bulbs in 6 years in 10. Get it as sets'],
    [from('good', 0.4, true), 'Lyon: Rumba is a gamble here.'],
    [from('small', 0.1), 'Lyon: Rumba stays small here.'],
    [from('bolts', 0.1), 'Lyon: not Rumba. However it is started, it mostly runs to flower.'],
    [from('no-bulb', 0), 'Lyon: not Rumba. However it is started, it mostly makes no bulbs.'],
    [from('winter-killed', 0), 'Lyon: not Rumba. However it is started, winter mostly takes it.'],
    [
      from('not-ripe', 0),
      'Lyon: not Rumba. However it is started, it mostly stays thick-necked and unfinished.',
    ],
  ])('is said as often as it is so', (choice, start) => {
    const said = packetHeadline(choice, at, british);
    expect(said.slice(0, start.length)).toBe(start);
  });

  test('is said in American words', () => {
    expect(packetHeadline(from('good', 0.6), at, american)).toContain('tops fall around');
  });
});

import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import {
  type Choice,
  type ChoiceReason,
  choiceReasonCodes,
  chooseKinds,
  groupKinds,
  type Kind,
  rankChoices,
} from '../../src/choice/index.ts';
import { onionTypes, startMethods } from '../../src/plant/index.ts';
import { openSite, reasonCodes } from '../../src/season/index.ts';
import { climateOf } from '../weather/climates.ts';

const mean = [4, 5, 7, 10, 13, 16, 19, 19, 16, 11, 7, 4];
const site = openSite({ climate: climateOf({ latitudeDeg: 47, mean }), years: 12, seed: 1 });
const firstDay = dayNumber(2027, 2, 1);
const kinds = onionTypes.flatMap((type) =>
  startMethods.map(
    (start): Kind => ({
      names: [`${type} ${start}`],
      type,
      traits: null,
      start,
      keepsMonths: type === 'northern-long' ? [8, 10] : [2, 4],
      keepsFrom: 'type',
    }),
  ),
);
const choices = chooseKinds(site, kinds, firstDay) ?? [];

const isOfChoice = (why: Choice['why']): why is ChoiceReason => why.code.startsWith('choice-');

describe('a ranking', () => {
  test('goes down in worth among those that ripen, and ranks say how many came before', () => {
    const ripe = choices.filter(({ summary }) => summary.neckFall.share >= 0.5);
    for (let at = 1; at < ripe.length; at++) expect(ripe[at].worth).toBeLessThanOrEqual(ripe[at - 1].worth);
    for (const [at, { rank }] of choices.entries()) expect(rank).toBeLessThanOrEqual(at + 1);
    expect(choices[0].rank).toBe(1);
  });

  test('shares a rank only where shares of so few years cannot tell', () => {
    const head = choices[0];
    for (const { rank, worth } of choices) {
      // two shares of twelve years are at most a third apart by chance
      if (rank === 1) expect(head.worth - worth).toBeLessThan(0.34);
    }
  });

  test('is the same in whatever order the kinds are given', () => {
    const order = (of: readonly Kind[]) =>
      (chooseKinds(site, of, firstDay) ?? []).map(({ kind, rank }) => `${rank} ${kind.names[0]}`).sort();
    expect(order([...kinds].reverse())).toEqual(order(kinds));
  });

  test('gives reasons that are known, with the number that decided on its side', () => {
    for (const { why } of choices) {
      expect([...reasonCodes, ...choiceReasonCodes]).toContain(why.code);
      if (!isOfChoice(why)) continue;
      const { values } = why;
      const sides: Partial<Record<ChoiceReason['code'], unknown[]>> = {
        'choice-size': [values.diameterMm, values.nextDiameterMm],
        'choice-keeping': [values.months, values.nextMonths],
        'choice-time': [values.nextWeeks, values.weeks],
        'choice-chance': [values.goodYearShare, values.nextGoodYearShare],
        'choice-flower': [values.nextBoltedPlantShare, values.boltedPlantShare],
      };
      const [own, next] = sides[why.code] ?? [1, 0];
      expect(Number(own)).toBeGreaterThan(Number(next));
    }
  });

  test('sets each against the first of the next kind, never against another name of a kind that is listed', () => {
    const copies = kinds.map((kind) => ({
      ...kind,
      names: [`${kind.names[0]} too`],
      keepsMonths: [1, 2] as const,
    }));
    const doubled = chooseKinds(site, [...kinds, ...copies], firstDay) ?? [];
    const firsts = groupKinds(doubled).map(({ choices: [first] }) => first);
    let compared = 0;
    for (const { why, rank } of doubled) {
      if (!isOfChoice(why) || why.values.nextType === undefined) continue;
      compared++;
      const { nextType, nextStart } = why.values;
      const next = firsts.find(({ kind }) => kind.type === nextType && kind.start === nextStart);
      expect(next?.rank).toBeGreaterThan(rank);
      expect(next).toBe(firsts.find((first) => first.rank > rank));
    }
    expect(compared).toBeGreaterThan(3);
  });

  test('counts what is usual for a type half where an onion is known to differ', () => {
    const [{ kind, summary, parts }] = choices;
    const odd = { ...summary, seasonShares: { ...summary.seasonShares, good: 0, small: 0, 'no-bulb': 1 } };
    const [both] = rankChoices(site, [{ kind, summary, usual: odd }]);
    expect(both.parts.chance).toBeCloseTo(parts.chance / 2, 9);
  });
});

describe('two kinds that end well in all of twelve years', () => {
  const [{ kind, summary }] = choices;
  const shares = { 'winter-killed': 0, bolts: 0, 'no-bulb': 0, 'not-ripe': 0, small: 0, good: 1 };
  const grown = (inFlower: number) => {
    const flower = { ...summary.boltedPlantsShare!, p50: inFlower };
    const sure = { ...summary, outcome: 'good' as const, seasonShares: shares, boltedPlantsShare: flower };
    return { kind, summary: sure, usual: sure };
  };
  const ranks = (inFlower: number) =>
    rankChoices(site, [grown(0), grown(inFlower)]).map(({ rank, alike }) => [rank, alike]);

  // half a season added to both sides (Jeffreys' prior): a share of 12.5 / 13, whose error is 0.056; of two, 0.078
  test('share a rank where their worth differs by less than so few years can tell', () => {
    expect(ranks(0.25)).toEqual([
      [1, 1],
      [1, 1],
    ]);
  });

  test('do not where it differs by more', () => {
    expect(ranks(0.27)).toEqual([
      [1, 0],
      [2, 0],
    ]);
  });
});

test('a choice is given up when told to', () => {
  let steps = 0;
  expect(chooseKinds(site, kinds, firstDay, {}, () => ++steps < 3)).toBeNull();
  expect(steps).toBe(3);
});

test('all kinds are known coarsely before any weather year is tried', () => {
  const seen: number[] = [];
  chooseKinds(site, kinds, firstDay, {}, ({ coarse, done }) => {
    if (coarse) {
      expect(done).toBe(0);
      seen.push(coarse.length);
      for (let at = 1; at < coarse.length; at++)
        expect(coarse[at].trial.worth).toBeLessThanOrEqual(coarse[at - 1].trial.worth);
    }
    return true;
  });
  expect(seen).toEqual([kinds.length]);
});

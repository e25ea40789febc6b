import { dayLengthClasses, soilTextures, startMethods } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import { nearest } from '../../src/refusal/nearest.ts';
import { refusalOf } from '../../src/refusal/refusal.ts';
import { parseChoice } from '../../src/values/choice.ts';

const voice = speaker('metric');

describe('a choice', () => {
  test('is taken whatever its case', () => {
    expect(parseChoice('Long', '--class', dayLengthClasses, voice)).toBe('long');
  });

  test.each([
    ['logn', dayLengthClasses, ['long']],
    ['long-day', dayLengthClasses, ['long']],
    ['intermediat', dayLengthClasses, ['intermediate']],
    ['seed', startMethods, ['direct-seed', 'raised-seedlings']],
    ['seedlings', startMethods, ['raised-seedlings', 'direct-seed']],
    ['set', startMethods, ['sets']],
    ['transplants', startMethods, ['bought-transplants']],
    ['sandy', soilTextures, ['sand', 'sandy-loam']],
  ])('"%s" is refused with the nearest', (text, choices, expected) => {
    let refusal = null;
    try {
      parseChoice(text, '--x', choices as readonly string[], voice);
    } catch (error) {
      refusal = refusalOf(error);
    }
    expect(refusal).toMatchObject({ code: 'choice', exit: 2 });
    expect(refusal?.nearest).toEqual(expected);
  });

  test('far from all of them has no nearest', () => {
    expect(nearest('turnip', dayLengthClasses)).toEqual([]);
  });
});

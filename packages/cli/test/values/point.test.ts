import { describe, expect, test } from 'vitest';
import { refusalOf } from '../../src/refusal/refusal.ts';
import { parsePoint } from '../../src/values/point.ts';

function codeOf(text: string) {
  try {
    parsePoint(text);
  } catch (error) {
    return refusalOf(error)?.code;
  }
  return null;
}

describe('a point', () => {
  test('is latitude, longitude and perhaps elevation', () => {
    expect(parsePoint('45.76,4.84')).toEqual({ latitudeDeg: 45.76, longitudeDeg: 4.84, elevationM: null });
    expect(parsePoint('-33.87, 151.21, 20')).toEqual({
      latitudeDeg: -33.87,
      longitudeDeg: 151.21,
      elevationM: 20,
    });
  });

  test('takes decimal commas between semicolons', () => {
    expect(parsePoint('45,76;4,84')).toEqual(parsePoint('45.76,4.84'));
    expect(parsePoint('45,76; 4,84; 175,5')).toEqual(parsePoint('45.76,4.84,175.5'));
    expect(parsePoint('45.76;4.84')).toEqual(parsePoint('45.76,4.84'));
  });

  test.each(['', '45.76', '45,76,4,84', 'Lyon', '45.76,', '45.76,east', 'NaN,4', '45°N,5°E', '1;2;3;4'])(
    'of another form is refused: "%s"',
    (text) => expect(codeOf(text)).toBe('at-form'),
  );

  test('out of range is refused by the coordinate that is', () => {
    expect(codeOf('91,4')).toBe('latitude-range');
    expect(codeOf('-90.1,4')).toBe('latitude-range');
    expect(codeOf('45,181')).toBe('longitude-range');
    expect(codeOf('45,1e9')).toBe('longitude-range');
    expect(codeOf('45,4,9000')).toBe('elevation-range');
    expect(codeOf('45,4,-500')).toBe('elevation-range');
  });

  test('may lie on the limits', () => {
    expect(codeOf('90,180,6000')).toBeNull();
    expect(codeOf('-90,-180,-430')).toBeNull();
  });
});

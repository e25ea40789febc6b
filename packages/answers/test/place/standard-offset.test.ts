import { expect, test } from 'vitest';
import { standardOffsetH } from '../../src/index.ts';

// standard times as the zones' governments have them (IANA time zone database)
test.each([
  ['Europe/London', 0],
  ['Europe/Berlin', 1],
  ['America/Sao_Paulo', -3],
  ['America/St_Johns', -3.5],
  ['Australia/Adelaide', 9.5],
  ['Asia/Kathmandu', 5.75],
  ['Pacific/Auckland', 12],
  ['America/New_York', -5],
])('the standard time of %s is %s h from UTC', (zone, hours) => {
  expect(standardOffsetH(zone, 0, 2026)).toBe(hours);
});

test('a zone that is not known goes by its longitude', () => {
  expect(standardOffsetH('Nowhere/Onionville', -48.6, 2026)).toBe(-3);
  expect(standardOffsetH('', 2, 2026)).toBe(0);
});

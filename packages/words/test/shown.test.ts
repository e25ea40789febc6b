import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadLater, shown, speaker } from '../src/index.ts';

await loadLater();

describe('text is shown so that all of it is seen', () => {
  test.each([
    ['an escape code', '\u001b[31mred', '\\u{1b}[31mred'],
    ['bell and backspace', 'a\u0007b\u0008', 'a\\u{7}b\\u{8}'],
    [
      'line breaks of every kind',
      'a\r\nb\u2028c\u2029d\u0085e',
      'a\\u{d}\\u{a}b\\u{2028}c\\u{2029}d\\u{85}e',
    ],
    ['the short way to begin an escape code', '\u009b31m', '\\u{9b}31m'],
    [
      'overrides of direction',
      '\u202egnol\u202c \u2067x\u2069',
      '\\u{202e}gnol\\u{202c} \\u{2067}x\\u{2069}',
    ],
    ['what takes no room', 'Stu\u200bron\ufeff\u00ad\u2060', 'Stu\\u{200b}ron\\u{feff}\\u{ad}\\u{2060}'],
    ['joiners that join nothing', 'Stu\u200dron', 'Stu\\u{200d}ron'],
    ['half a character', '\ud800', '\\u{d800}'],
    ['letters that hide in tags', '\u{e0041}', '\\u{e0041}'],
  ])('%s', (_, text, seen) => {
    expect(shown(text)).toBe(seen);
  });

  test.each(['Réd of Ōtaki, 7 × 2', 'बैंगनी', 'پیاز‌قرمز', '👩‍🌾 🧅 1️⃣', 'a\u00a0b\u202fc', '\\u{1b}'])(
    'and %s stays as it is',
    (text) => {
      expect(shown(text)).toBe(text);
    },
  );

  test('once and for all', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const seen = shown(text);
        expect(shown(seen)).toBe(seen);
        expect(seen).not.toMatch(
          /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069\u200b\u200e\u200f\ufeff]/u,
        );
      }),
      { seed: 20_270_503, numRuns: 2000 },
    );
  });
});

test('sentences show the names that are filled in', () => {
  const { say, all, any } = speaker('metric');
  expect(say('app.garden.onion.bare', { name: 'Bed\n\u202e1' })).toContain('Bed\\u{a}\\u{202e}1');
  expect(all(['a\u0007', 'b'])).toBe('a\\u{7} and b');
  expect(any(['a\u0007', 'b'])).toBe('a\\u{7} or b');
});

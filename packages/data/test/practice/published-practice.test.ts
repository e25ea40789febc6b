import { dayLengthClasses, startMethods } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { practiceNear } from '../../src/practice/index.ts';
import { publishedPractice } from '../../src/practice/node.ts';

describe('published practice', () => {
  test('has a source, a known class and way of starting, and a window for every row, each once', () => {
    expect(publishedPractice.length).toBeGreaterThan(60);
    expect(new Set(publishedPractice.map(({ id }) => id)).size).toBe(publishedPractice.length);
    for (const { id, source, class: dayLengthClass, start, span } of publishedPractice) {
      expect(source, id).not.toBe('');
      expect(dayLengthClasses, id).toContain(dayLengthClass);
      expect(startMethods, id).toContain(start);
      for (const day of [span.from, span.to]) {
        expect(day, id).toBeGreaterThanOrEqual(0);
        expect(day, id).toBeLessThan(365);
      }
    }
  });

  test('is found about its place and not far off or far up', () => {
    // Boyhan et al. 2009: Vidalia's short-day seedlings are sown from late September.
    const vidalia = practiceNear(publishedPractice, {
      latitudeDeg: 32.2,
      longitudeDeg: -82.4,
      elevationM: 60,
    });
    expect(vidalia.map((row) => row.class)).toContain('short');
    expect(vidalia.map((row) => row.class)).not.toContain('intermediate');
    expect(
      practiceNear(publishedPractice, { latitudeDeg: 32.2, longitudeDeg: -82.4, elevationM: 1500 }),
    ).toEqual([]);
    expect(practiceNear(publishedPractice, { latitudeDeg: 0, longitudeDeg: -150, elevationM: 0 })).toEqual(
      [],
    );
  });
});

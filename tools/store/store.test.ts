import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { storeStudy, storeTwinFigures } from '../twins/store-study.ts';
import { storePages, storeTwinsEach } from '../validate/store-pages.ts';
import { scoreStore } from './score-store.ts';

const cases = scoreStore();
const twins = storeStudy(storeTwinsEach);

describe('published losses in store', () => {
  test('lie outside their band no oftener than now', () => {
    expect(cases).toHaveLength(32);
    expect(cases.filter(({ isIn }) => !isIn).map(({ of }) => of.name).length).toBeLessThanOrEqual(7);
  });

  test('stand in the page, each miss with its reason', () => {
    const page = storePages(cases, twins);
    for (const { of } of cases) expect(page).toContain(`${of.name} (${of.source})`);
    expect(page).not.toContain('no reason known');
    expect(readFileSync(new URL('../../docs/validation.md', import.meta.url), 'utf8')).toContain(page.trim());
  });
});

test('three looks bring the forecast of the day on which half are lost a third nearer', () => {
  expect(storeTwinFigures(twins).lessShare).toBeGreaterThan(1 / 3);
});

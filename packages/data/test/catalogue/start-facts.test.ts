import { startMethods } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { catalogueSources, startFacts, startTopics } from '../../src/index.ts';

test.each(startMethods)('%s has facts on each topic, each with a source or marked', (start) => {
  for (const topic of startTopics) {
    const facts = startFacts[start].facts[topic];
    expect(facts.length).toBeGreaterThan(0);
    for (const { origin, values } of facts) {
      if (origin !== 'memory' && origin !== 'practice')
        expect(Object.keys(catalogueSources)).toContain(origin);
      for (const value of Object.values(values)) expect(value).toEqual(expect.any(Number));
    }
  }
});

test('ways of starting differ in every topic they are compared by', () => {
  for (const topic of ['choice', 'bolting', 'losses', 'work', 'cost'] as const) {
    expect(new Set(startMethods.map((start) => startFacts[start].levels[topic])).size).toBeGreaterThan(2);
  }
});

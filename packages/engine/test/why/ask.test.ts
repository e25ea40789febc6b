import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerOdds, answerShare } from '../../src/why/answer-odds.ts';
import { expectedGain } from '../../src/why/ask.ts';
import { type Cause, causes } from '../../src/why/causes.ts';
import { chancesOf } from '../../src/why/chances.ts';
import { passedOver, questionAnswers, questions } from '../../src/why/questions.ts';

const settings = { seed: 16, numRuns: 300 };
const anyCredits = fc
  .uniqueArray(
    fc.tuple(fc.constantFrom<Cause | null>(...causes, null), fc.double({ min: 0, max: 1, noNaN: true })),
    {
      minLength: 1,
      maxLength: 8,
      selector: ([cause]) => cause,
    },
  )
  .map((entries) => new Map(entries));

describe('chances', () => {
  test('sum to one whatever was answered', () => {
    const said = fc
      .constantFrom(...questions)
      .chain((question) =>
        fc.constantFrom(...questionAnswers[question], passedOver).map((answer) => ({ [question]: answer })),
      );
    fc.assert(
      fc.property(anyCredits, said, (credits, answers) => {
        const sum = [...chancesOf(credits, answers).values()].reduce((a, b) => a + b, 0);
        expect(sum).toBeCloseTo(1, 9);
      }),
      settings,
    );
  });

  test('stay as they are where a question is passed over', () => {
    fc.assert(
      fc.property(anyCredits, fc.constantFrom(...questions), (credits, question) => {
        expect(chancesOf(credits, { [question]: passedOver })).toEqual(chancesOf(credits, {}));
      }),
      settings,
    );
  });

  test('rise for the cause that an answer speaks for', () => {
    const even = new Map<Cause | null, number>([
      ['white-rot', 1],
      ['bacterial-rot', 1],
      [null, 1],
    ]);
    const after = chancesOf(even, { base: 'white-mould' });
    expect(after.get('white-rot')).toBeGreaterThan(0.9);
    expect(chancesOf(even, { base: 'firm' }).get('white-rot')).toBeLessThan(0.1);
  });
});

describe('the answers that a cause makes likely', () => {
  test.each(questions)('%s: shares of every row sum to one', (question) => {
    const { usual, with: of } = answerOdds[question];
    for (const row of [usual, ...Object.values(of)]) {
      expect(row).toHaveLength(questionAnswers[question].length);
      expect(row.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
    }
  });
});

describe('what a question is expected to tell', () => {
  // mutual information, Cover & Thomas, Elements of Information Theory, eq. 2.28 (from memory): H(X) − H(X|Y) = Σ p log p/(p p)
  test('is the mutual information of cause and answer, never below nothing', () => {
    fc.assert(
      fc.property(anyCredits, fc.constantFrom(...questions), (credits, question) => {
        const chances = chancesOf(credits, {});
        const tells = [...chances.keys()].some((cause) => cause && answerOdds[question].with[cause]);
        let information = 0;
        for (const at of questionAnswers[question].keys()) {
          const shareOf = (cause: Cause | null) => answerShare(question, at, cause);
          const all = [...chances].reduce((sum, [cause, chance]) => sum + chance * shareOf(cause), 0);
          for (const [cause, chance] of chances)
            if (chance > 0) information += chance * shareOf(cause) * Math.log(shareOf(cause) / all);
        }
        const gain = expectedGain(question, chances);
        expect(gain).toBeGreaterThanOrEqual(-1e-12);
        if (tells) expect(gain).toBeCloseTo(information, 9);
        else expect(gain).toBe(0);
      }),
      settings,
    );
  });
});

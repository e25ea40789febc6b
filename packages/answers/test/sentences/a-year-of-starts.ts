import {
  type SeasonSummary,
  type StartWindow,
  type Verdict,
  verdicts,
  type WhenAnswer,
  weekStarts,
} from '@neckfall/engine';

/** An invented year of starts: what each week comes to, all alike but for that. */
export function aYearOfStarts(outcomes: readonly Verdict[], windows: StartWindow[]): WhenAnswer {
  const starts = weekStarts.map((dayOfYear, week) => ({
    dayOfYear,
    hindrance: null,
    summary: {
      plan: { type: 'short', traits: null, start: 'bought-transplants', startDay: 20_818 + dayOfYear },
      outcome: outcomes[week],
      gamble: false,
      years: 30,
      seasonShares: Object.fromEntries(
        verdicts.map((verdict) => [verdict, verdict === outcomes[week] ? 0.8 : 0.04]),
      ),
      bulbDiameterMm: { p10: 40, p50: 50, p90: 60 },
      reason: {
        code: outcomes[week] === 'bolts' ? 'bolts-cold' : 'small-few-leaves',
        values: { boltedTenths: week, leaves: 5, diameterMm: 40 },
      },
    } as unknown as SeasonSummary,
  }));
  return {
    starts,
    windows,
    best: windows[0]?.best ?? 1,
    reason: { code: 'window', values: { leaves: 9, sunUpH: 12 } as WhenAnswer['reason']['values'] },
  };
}

/** Good from week `first` to week `last` of the circle of weeks; before it plants flower, after it bulbs stay small. */
export function goodBetween(first: number, last: number): WhenAnswer {
  const weeks = weekStarts.length;
  const length = (last - first + weeks) % weeks;
  const outcomes = weekStarts.map((_, week): Verdict => {
    const after = (week - first + weeks) % weeks;
    if (after <= length) return 'good';
    return after <= length + (weeks - length) / 2 ? 'small' : 'bolts';
  });
  const window = { from: weekStarts[first], to: weekStarts[last], best: weekStarts[first] };
  return aYearOfStarts(outcomes, [window]);
}

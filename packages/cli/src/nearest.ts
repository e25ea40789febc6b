/**
 * Edit distance with neighbouring letters swapped counted as one (optimal string alignment).
 * Source: Damerau 1964; Boytsov 2011, J. Exp. Algorithmics 16.
 */
export function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min(previous[j] + 1, row[j - 1] + 1, previous[j - 1] + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        cost = Math.min(cost, before[j - 2] + 1);
      }
      row.push(cost);
    }
    before = previous;
    previous = row;
  }
  return previous[b.length];
}

/** The choices that a mistyped word may have meant, likeliest first; at most two. */
export function nearest(word: string, choices: readonly string[]): string[] {
  const typed = word.toLowerCase();
  const rated = choices.map((choice) => {
    const distance = editDistance(typed, choice);
    // part of a choice ("seedlings", "long-day") says more than a few letters changed
    const isPart = typed.length >= 3 && choice.includes(typed);
    const hasPart = choice.split('-').some((part) => part.length > 3 && typed.includes(part));
    const cost = Math.min(distance, isPart ? 1 : hasPart ? 1.5 : distance);
    return { choice, cost };
  });
  const limit = Math.max(2, Math.floor(typed.length / 3));
  return rated
    .filter(({ cost }) => cost <= limit)
    .sort((a, b) => a.cost - b.cost)
    .slice(0, 2)
    .map(({ choice }) => choice);
}

import { editDistance } from '@neckfall/data';

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

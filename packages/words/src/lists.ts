import type { Say } from './speaker.ts';

/** "a, b and c", "a, b or c" */
export function formatList(items: readonly string[], word: 'and' | 'or', say: Say): string {
  if (items.length < 2) return items[0] ?? '';
  const before = items.slice(0, -1).reduce((before, next) => say('list.more', { before, next }));
  const key = items.length === 2 ? (`list.pair-${word}` as const) : (`list.${word}` as const);
  return say(key, { before, last: items[items.length - 1] });
}

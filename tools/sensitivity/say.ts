import type { Plan } from '../../packages/engine/src/index.ts';
import { speaker } from '../../packages/words/src/index.ts';

const { say, day: dayWords } = speaker('metric');

/** "northern long-day bought plants" */
export function cropWords({ type, start }: Plan): string {
  return say(`crop-kind.${start}`, { type: say(`type.${type}`) });
}

/** A day number as "12 July". */
export function dateWords(day: number | null): string {
  return day === null ? 'never' : dayWords(day);
}

/** A change with its sign; null: the thing does not happen then. */
export function signed(change: number | null, digits = 0): string {
  if (change === null) return 'never';
  const size = Math.abs(change).toFixed(digits);
  return Number(size) === 0 ? '0' : `${change < 0 ? '−' : '+'}${size}`;
}

/** "3 days later" */
export function laterWords(days: number | null): string {
  if (days === null) return 'never';
  const size = Math.abs(Math.round(days));
  if (size === 0) return 'no day';
  return `${size} ${size === 1 ? 'day' : 'days'} ${days > 0 ? 'later' : 'sooner'}`;
}

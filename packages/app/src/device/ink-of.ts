import type { InkColours } from '@neckfall/pictures';

const names = ['paper', 'paper-2', 'ink', 'ink-2', 'line', 'leaf', 'skin', 'skin-2', 'alarm', 'sky', 'earth'];

/** The colours in force at an element of a page. */
export function inkOf(element: Element): InkColours {
  const style = getComputedStyle(element);
  return Object.fromEntries(names.map((name) => [name, style.getPropertyValue(`--${name}`).trim()]));
}

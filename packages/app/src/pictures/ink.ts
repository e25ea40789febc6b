/** The colours of the page's look; a picture follows its theme. */
export const ink = {
  paper: 'var(--paper)',
  paper2: 'var(--paper-2)',
  ink: 'var(--ink)',
  ink2: 'var(--ink-2)',
  line: 'var(--line)',
  leaf: 'var(--leaf)',
  skin: 'var(--skin)',
  skin2: 'var(--skin-2)',
  alarm: 'var(--alarm)',
  sky: 'var(--sky)',
  earth: 'var(--earth)',
} as const;

/** Colours by the name of their custom property, without the dashes. */
export type InkColours = Readonly<Record<string, string>>;

const names = ['paper', 'paper-2', 'ink', 'ink-2', 'line', 'leaf', 'skin', 'skin-2', 'alarm', 'sky', 'earth'];

/** The colours in force at an element of a page. */
export function inkOf(element: Element): InkColours {
  const style = getComputedStyle(element);
  return Object.fromEntries(names.map((name) => [name, style.getPropertyValue(`--${name}`).trim()]));
}

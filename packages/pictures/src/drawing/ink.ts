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

export type InkName = keyof typeof ink;

/** Colours by the name of their custom property, without the dashes. */
export type InkColours = Readonly<Record<string, string>>;

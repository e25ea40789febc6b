import type { InkColours } from './ink.ts';

/** The light colours of the look, for what is drawn without a page. They are those of colours.css, and a test holds them to it. */
export const paperColours = {
  paper: '#fbf7ee',
  'paper-2': '#f3ebdb',
  ink: '#231b12',
  'ink-2': '#5a4c3a',
  line: '#cdbd9f',
  leaf: '#35632a',
  skin: '#8c4712',
  'skin-2': '#d3924a',
  alarm: '#a01f18',
  sky: '#2f6083',
  earth: '#6b4a2f',
} as const satisfies InkColours;

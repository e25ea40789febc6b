import { paperColours } from '@neckfall/pictures';

/** After dark, on pages that say they follow the reader's choice of it (`color-scheme: light dark`): those of the app. */
const nightColours: Readonly<Record<keyof typeof paperColours, string>> = {
  paper: '#1b1610',
  'paper-2': '#282017',
  ink: '#f4ecdd',
  'ink-2': '#c9bba4',
  line: '#5c4f3d',
  leaf: '#a3cf8f',
  skin: '#eab077',
  'skin-2': '#b97a3d',
  alarm: '#ff9a8b',
  sky: '#9ac6e2',
  earth: '#c49c74',
};

type Name = keyof typeof paperColours;
const names = Object.keys(paperColours) as Name[];

/** A page sets a colour by the property `--neckfall-NAME`. */
function properties(colourOf: (name: Name) => string): string {
  return names.map((name) => `--${name}: var(--neckfall-${name}, ${colourOf(name)});`).join(' ');
}

const byDay = properties((name) => paperColours[name]);
const byBoth = properties((name) => `light-dark(${paperColours[name]}, ${nightColours[name]})`);

const rules = `
:host { display: block; padding-block: 0.4rem; ${byDay} background: var(--paper); color: var(--ink); font: 1rem/1.4 var(--neckfall-font, "Source Sans 3", Helvetica, Arial, sans-serif); }
:host([hidden]) { display: none; }
@supports (color: light-dark(#000, #fff)) { :host { ${byBoth} } }
figure { margin: 0; }
svg { display: block; max-width: 100%; height: auto; font-family: inherit; }
p, details { margin: 0.4rem 0; padding-inline: 6px; }
.told { font-weight: 600; }
.source { color: var(--ink-2); font-size: 0.875rem; }
.problem { border-left: 4px solid var(--alarm); padding-left: 0.6rem; }
summary { cursor: pointer; }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; margin: 0.6rem 0; font-variant-numeric: tabular-nums; }
caption { text-align: start; font-weight: 600; }
th, td { text-align: start; vertical-align: top; padding: 0.2rem 0.9rem 0.2rem 0; border-top: 1px solid var(--line); font-weight: 400; }
thead th { font-weight: 600; border-top: 0; }
`;

let made: CSSStyleSheet | null = null;

/** One for all elements of a page; made by script, since a strict policy lets in no style of the markup. */
export function sheet(): CSSStyleSheet {
  if (made === null) {
    made = new CSSStyleSheet();
    made.replaceSync(rules);
  }
  return made;
}

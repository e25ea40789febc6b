/** What stands there at harvest. */
export type OnionForm = 'bulb' | 'thick-neck' | 'bolted' | 'green' | 'lost';
export type OnionColour = 'yellow' | 'brown' | 'red' | 'white' | 'pink';
export const onionColours: readonly OnionColour[] = ['yellow', 'brown', 'red', 'white', 'pink'];

/** As in the catalogue: `top` tapers to the root, `long` is a torpedo; of a `cluster` one bulb is drawn. */
export type OnionShape = 'flat' | 'flattened-globe' | 'globe' | 'tall-globe' | 'top' | 'long' | 'cluster';
/** Skin and shape. */
export type OnionLook = { colour: OnionColour; shape: OnionShape };

/** One onion to be drawn cut through. */
export type Onion = OnionLook & {
  form: OnionForm;
  /** Across at its widest as a globe of its mass, mm; above 0. A green onion's is its stem's. */
  acrossMm: number;
  /** Size of the leaf behind each ring, from the outside in, in any unit; above 0. */
  ringLeaves: readonly number[];
  /** Dry skins outside, at least one. */
  skins: number;
};

/**
 * Colours of a cut onion, the same by day and by night since an onion keeps its colour: common practice, no source.
 * `edge` is the skin of each ring, `flesh` and `flesh2` two neighbouring rings.
 */
export const onionPaint: Readonly<
  Record<OnionColour, { skin: string; skinLine: string; edge: string; flesh: string; flesh2: string }>
> = {
  yellow: { skin: '#d69a3c', skinLine: '#8f5d17', edge: '#c9b26a', flesh: '#fcf6df', flesh2: '#f4e9c2' },
  brown: { skin: '#a9672e', skinLine: '#69390f', edge: '#bfa268', flesh: '#fbf4de', flesh2: '#f1e3bd' },
  red: { skin: '#8a2b4e', skinLine: '#54122c', edge: '#a34a78', flesh: '#fbf1f5', flesh2: '#f0dbe6' },
  white: { skin: '#e8e0c6', skinLine: '#9c9272', edge: '#cfc9a6', flesh: '#fefdf4', flesh2: '#f4f1dd' },
  pink: { skin: '#cd8478', skinLine: '#8a4238', edge: '#d39b9b', flesh: '#fdf5ef', flesh2: '#f5e2dc' },
};

/** Leaf green and stalk of a cut onion, as {@link onionPaint}. */
export const leafPaint = { blade: '#5d8a3c', line: '#385c22', pale: '#dbe6b4' } as const;

/** The size of a small coin, mm; no currency is meant. */
export const discMm = 23;

/** A line of a sheet; `spare`: it may be left out where the page is full, those with the lowest number first. */
export type HandoutLine = { text: string; spare: number | null };

/** A row of the year of work. */
export type HandoutWork = HandoutLine & { days: string };

/** A date or a figure, its middle and where it lies in 8 years of 10 ('' where it has no span). */
export type HandoutWhen = { what: string; middle: string; range: string };

/** All that one sheet says, in the words of its reader: plain data, to be set as a page. */
export type Handout = {
  /** BCP 47. */
  language: string;
  heading: string;
  /** The place and the day on which it was worked out. */
  dateline: string;
  verdict: string;
  because: HandoutLine[];
  /** The teacher's own words, a paragraph each. */
  note: string[];
  buy: string[];
  whenHead: HandoutWhen;
  when: HandoutWhen[];
  signs: string[];
  /** Of a place where no crop is advised: its days and frosts. */
  year: string[];
  work: HandoutWork[];
  cautions: string[];
  sure: HandoutLine[];
  sources: HandoutLine[];
  titles: Record<'buy' | 'when' | 'signs' | 'year' | 'work' | 'cautions' | 'sure', string>;
};

/** What the teacher says on the sheet; null: nothing. */
export type HandoutOwn = { heading: string | null; note: string | null };

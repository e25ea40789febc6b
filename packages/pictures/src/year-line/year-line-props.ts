/** A level day length must reach, in words of the packet. */
type Need = { hours: number; text: string };

export type CropMarkKind = 'start' | 'out' | 'long' | 'big' | 'bulbs' | 'tops';

/** Something of the crop at a day, in words; `span` is where it falls in 8 years of 10. */
export type CropMark = {
  kind: CropMarkKind;
  day: number;
  text: string;
  span: { from: number; to: number } | null;
};

/** A piece of work at its day, by the number and in the words under which it is told beside the picture. */
export type WorkMark = { number: number; day: number; text: string };

/** A crop on the year line. */
export type CropLine = {
  /** Leaves made, in rising order of days. */
  leaves: { day: number; made: number }[];
  leavesText: { day: number; text: string } | null;
  /** The bulb across, mm, in rising order of days; empty where none forms. */
  bulb: { day: number; acrossMm: number }[];
  /** Day on which the tops go over; null where they stand to the end. */
  topsOver: number | null;
  /** Leaves counted, as many as a plant would have made that has so many green ones, with the count in words. */
  counted: { day: number; made: number; text: string }[];
  marks: CropMark[];
  work: readonly WorkMark[];
};

/** What years that stand under each other have in common. */
export type CommonScale = {
  /** Hours at the foot and the top of the ridge. */
  lowH: number;
  highH: number;
  /** Leaves that reach the top of the stairs, and a bulb that fills the soil, mm across. */
  leaves: number;
  bulbMm: number;
  /** Room over the ridge's top, px. */
  skyPx: number;
};

export type YearLineProps = {
  /** Tells the patterns of pictures on one page apart. */
  id: string;
  /** px; see FitWidth. */
  width: number;
  /** What the picture says, for those who don't see it. */
  summary: string;
  /** What the water means, in words under the picture; null where there is none. */
  note: string | null;
  firstDay: number;
  sunUpH: readonly number[];
  rainMm: readonly number[];
  frostShare: readonly number[];
  highC: readonly number[];
  need: Need | null;
  /** Said at the day they name: the longest and the shortest, or what the sun does beyond the polar circles. */
  dayTexts: { day: number; text: string; place: 'peak' | 'trough' | 'foot' }[];
  today: { day: number; text: string } | null;
  /** Short names, January first. */
  months: readonly string[];
  frostText: string;
  heatText: string;
  /** What one stroke of rain stands for. */
  rainText: string;
  /** In the tropics days hardly change: rain and heat lead. */
  lead: 'days' | 'weather';
  crop: CropLine | null;
  /**
   * Given where several stand under each other: each is low, without rain, and leaves the words of its marks to what is
   * said beside it.
   */
  common?: CommonScale;
};

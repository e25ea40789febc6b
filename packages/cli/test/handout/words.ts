/** 80 words, near the most that a note may have, in two paragraphs; the people and the place are made up. */
export const longNote = `${'We meet on the first Saturday of each month in the old school hall. '.repeat(4).trim()}\n${'Bring a jar of your own soil and we look at it. '.repeat(2).trim()}`;

export const longHeading =
  'Pencarreg Bank growers’ evening class: onions from seed, sets and plants, this year';

/**
 * Places where none of the first-ranked kinds is of a class that the calendars published there use, with the reason.
 * Names are those of the calendar rows; kept in one list because the model moves. Of all 68 places 14 are so, most of
 * them between 33° and 39°, where short-day, intermediate and early long-day kinds come near to each other; the test looks
 * at 24.
 */
const wintersOnly =
  'the calendar is of the crop that stands the winter; in spring long-day onions are grown there too';

const earlyLong =
  'early long-day kinds stand first by a little; the calendar has intermediate ones, from memory, and both are sold there';

export const exceptions: Readonly<Record<string, string>> = {
  'North Willamette, overwintered': wintersOnly,
  'Kraków, overwintered': wintersOnly,
  'Maryland / N Virginia': earlyLong,
  Missouri: earlyLong,
  'Middle Tennessee':
    'short-day kinds set out in winter stand first by a little; the calendar has intermediate ones, from memory',
  'Chile, early short-day':
    'intermediate kinds, between the short-day and the long-day ones of its two calendars, stand first',
  'Shandong, overwintered': earlyLong,
};

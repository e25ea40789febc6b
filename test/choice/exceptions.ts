/**
 * Places where none of the first-ranked kinds is of a class that the calendars published there use, with the reason.
 * Names are those of the calendar rows; kept in one list because the model moves.
 */
const wintersOnly =
  'the calendar is of the crop that stands the winter; in spring long-day onions are grown there too';
const middleBelt =
  'between 35 and 39° both are sold; early long-day kinds come out as large here and keep months longer, calendars name intermediate-day ones';

export const exceptions: Readonly<Record<string, string>> = {
  'North Willamette, overwintered': wintersOnly,
  'Kraków, overwintered': wintersOnly,
  'Shandong, overwintered': wintersOnly,
  'Maryland / N Virginia': middleBelt,
  Missouri: middleBelt,
  'Middle Tennessee': middleBelt,
};

/** Pictures that are taken along: what they are kept as, and where they come from. */
export const takeAlong = {
  'picture.source':
    'Neckfall {version} · {place} · {weather, select, measured {days as measured there} some {{years, plural, one {# year} other {# years}} of weather: days as measured there, the rest drawn from the climate of 1961–2013} other {{years, plural, one {# year} other {# years}} of weather drawn from the climate of 1961–2013}} · {sources} · made {date}',
  'picture.source.place': '{name}, {latitude}, {longitude}',

  'app.take.svg': 'Drawing that stays sharp (SVG)',
  'app.take.png': 'Image for slides and letters (PNG)',
  'app.take.html': 'Page with its numbers (HTML)',
  'app.take.lead':
    'Each has the line that says where it comes from. Nothing is sent: the files are made on this device.',
  'app.take.title': '{what}: {place}',
  'app.take.of.place-year': 'The year and the onion for it',
  'app.take.of.weather': 'The days that were measured',
  'app.take.of.store': 'Onions in store through the year',
  'app.take.of.what-if': 'The crop with and without the cause',
  'app.why.picture.comes': 'What comes of it',
  'app.when.take.year': 'Keep the year',
  'app.when.take.starts': 'Keep the starts',
} as const;

/** What an American gardener says otherwise on the page that walks through the latitudes. */
export const americanLatitudes = {
  'latitude.end.good':
    'they have {leaves, plural, one {# leaf} other {# leaves}} when bulbs start on {date}, and the tops fall on {tops}',
  'latitude.end.small':
    'they have {leaves, plural, one {# leaf} other {# leaves}} when bulbs start on {date}, too few for more than a small bulb, and the tops fall on {tops}',
  'picture.latitude.column-tops': 'Tops fall',
} as const;

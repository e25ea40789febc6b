/** The picture of a year in somebody’s own page: `<neckfall-year-line>`. */
export const element = {
  'element.numbers': 'The numbers',
  'element.sky-alone':
    'Day lengths alone: they need nothing but the latitude. Weather and a crop come with data.',
  'element.waiting': 'Weather and crop are being fetched.',
  'element.no-data': '{url}: no weather and no crop could be had from there ({reason}).',
  'element.no-place': 'Say where: latitude and longitude in degrees, or data.',
  'element.other-data':
    '{attribute} is not that of the data, which is {found}. Leave it out, or name other data.',
  'element.degrees':
    '{attribute} “{value}”: expected degrees from −{limit, number} to {limit, number}, such as 45.76.',
  'element.day': '{attribute} “{value}”: expected a day as YYYY-MM-DD.',
  'element.choice': '{attribute} “{value}”: expected {expected}.',
  'element.point': '{latitude}, {longitude}',
  'element.source': 'Neckfall {version} · {place} · day lengths computed from the latitude',
  'element.crop': 'The crop',
  'element.crop.what': 'What happens',
  'element.crop.range': 'In 8 years of 10',
  'element.needs': 'What onions ask of the days here',
  'element.needs.class': 'On the packet',
  'element.needs.hours': 'Sun up at least',
  'element.needs.days': 'Days that long',
  'element.needs.never': 'none',
  'element.needs.always': 'all',
  'element.needs.count': '{count, plural, one {# day} other {# days}} around {longest}',
} as const;

/** `neckfall feed` explaining itself. */
export const feedOptions = {
  'help.feed':
    'How much nitrogen a crop asks for over what its bed gives, in feeds of your own product, and when to stop.',
  'help.feed.product':
    'what you feed with: the numbers of the bag, such as 10-10-10, or {organic} (default: 10-10-10)',
  'help.feed.soil':
    'texture, what the soil gives (poor, ordinary or rich), or both with a comma: --soil sand,poor (default: loam,ordinary)',
  'help.feed.aim':
    'the crop aimed at, in kg per m², {min} to {max} (default: what these onions come to here)',
  'help.feed.bed-m2': 'size of the bed, in m², for the amounts of the whole bed',
  'help.feed.compost': 'compost dug in for this crop, in kg per m², {min} to {max} (default: none)',
  'help.feed.after-legume': 'peas, beans or clover stood there last',
  'help.feed.ph': 'pH of the soil, {min} to {max}, to be told of lime',
  'error.feed-product':
    '--product {value}: expected the three numbers of the bag, such as 10-10-10 (with some nitrogen, and 100 at most together), or {expected}.{near, plural, =0 {} other { Nearest: {nearest}.}}',
  'error.feed-soil':
    '--soil {value}: expected a texture, one of poor, ordinary and rich, or one of each with a comma, such as --soil sand,poor.{near, plural, =0 {} other { Nearest: {nearest}.}}',
} as const;

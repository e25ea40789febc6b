/** Sources of the rules of work on a crop; null where the page itself was not named. */
export const jobSources = {
  'california-nitrogen': {
    title:
      'Onion nitrogen, California Department of Food and Agriculture and University of California, Davis',
    url: 'https://www.cdfa.ca.gov/is/ffldrs/frep/FertilizationGuidelines/N_Onion.html',
  },
  'davis-dry-onions': {
    title: 'Suslow, Dry onions: postharvest facts, University of California, Davis',
    url: null,
  },
  'fao-56': {
    title:
      'Allen, Pereira, Raes & Smith 1998, Crop evapotranspiration (FAO Irrigation and Drainage Paper 56)',
    url: null,
  },
  'funderburk-1984': {
    title: 'Seedcorn maggot degree-days, University of Minnesota, after Funderburk et al. 1984',
    url: null,
  },
  'hildebrand-1982': {
    title: 'Hildebrand & Sutton 1982, Phytopathology 72:219–224 (downy mildew)',
    url: null,
  },
  'illinois-sets': {
    title: 'Mason, Time to plant onions, University of Illinois Extension',
    url: 'https://web.extension.illinois.edu/cfiv/homeowners/100318.html',
  },
  'iowa-2020': {
    title: 'Start onions the right way 2020, Iowa State University Extension',
    url: 'https://www.extension.iastate.edu/news/yard-and-garden-start-onions-right-way',
  },
  'iowa-seedlings': {
    title: 'Starting onion plants indoors, Iowa State University Extension',
    url: 'https://hortnews.extension.iastate.edu/faq/i-would-start-some-onion-plants-indoors-when-should-i-sow-seeds',
  },
  'jamieson-2012': {
    title: 'Jamieson et al. 2012, New Zealand Plant Protection 65:126–132 (onion thrips)',
    url: null,
  },
  'kansas-curing': {
    title: 'Curing onions, a Kansas extension agent (newspaper column)',
    url: null,
  },
  minnesota: {
    title: 'Tong, Growing onions in Minnesota home gardens, University of Minnesota Extension',
    url: 'http://www.extension.umn.edu/Garden/yard-garden/vegetables/growing-onions-in-minnesota-home-gardens/',
  },
  'nebraska-weeds': {
    title: 'Weed competition in irrigated Spanish onions, Nebraska (abstract)',
    url: 'https://scilit.net/publications/7245d75b152531fec34a1beb12b33acf',
  },
  'texas-planting': {
    title: 'Planting onions, Texas Extension',
    url: 'https://www.plantanswers.com/garden_column/012602/012602.htm',
  },
  'utah-nitrogen': {
    title: 'Advice on onions after Utah State University Extension 2019 (seen second-hand)',
    url: null,
  },
  'wisconsin-maggot': {
    title: 'Onion maggot, University of Wisconsin Extension XHT1087',
    url: null,
  },
  'wright-2001': {
    title: 'Wright et al. 2001, New Zealand Journal of Crop and Horticultural Science 29:85–91 (abstract)',
    url: null,
  },
} as const satisfies Record<string, { title: string; url: string | null }>;

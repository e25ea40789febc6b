import type { Source } from './cultivar.ts';

/** Sources of facts on ways to start; those that onions have too are in the asset. */
export const startSources = {
  'brewster-sowing': {
    title: 'Brewster 2008, Onions and Other Vegetable Alliums, on sowing dates',
    url: 'http://what-when-how.com/Tutorial/topic-894gk04/Onions-and-other-Vegetable-Alliums-290.html',
  },
  'heath-1943': {
    title: 'Heath 1943, Annals of Applied Biology, onion sets and bolting (abstract)',
    url: 'http://onlinelibrary.wiley.com/doi/10.1111/j.1744-7348.1943.tb06191.x/abstract',
  },
  'herison-1993': {
    title: 'Herison, Masabni & Zandstra 1993, HortScience (abstract)',
    url: 'https://vivo.library.tamu.edu/vivo/display/n318868SE',
  },
  'hoepting-2009': {
    title: 'Hoepting 2009, project ONE08-085, Cornell Cooperative Extension',
    url: 'https://projects.sare.org/project-reports/one08-085',
  },
  'iowa-2018': {
    title: 'Planting onions in the home garden 2018, Iowa State University Extension',
    url: 'https://yardandgarden.extension.iastate.edu/article/2018/01/planting-onions-home-garden',
  },
  'leskovar-1999': {
    title: 'Leskovar & Vavrina 1999, Scientia Hort., transplant age and cell volume (abstract)',
    url: 'https://vivo.library.tamu.edu/vivo/display/n346179SE',
  },
  mason: {
    title: 'Mason, Time to plant onions, University of Illinois Extension',
    url: 'https://web.extension.illinois.edu/cfiv/homeowners/100318.html',
  },
  minnesota: {
    title: 'Tong, Growing onions in Minnesota home gardens, University of Minnesota Extension',
    url: 'http://www.extension.umn.edu/Garden/yard-garden/vegetables/growing-onions-in-minnesota-home-gardens/',
  },
  'ontario-trays': {
    title: 'Growing onion transplants in plug trays, factsheet 01-019, Ontario',
    url: 'http://www.omafra.gov.on.ca/english/crops/facts/01-019.htm',
  },
  'oregon-1987': {
    title: 'Overwintered onion trials 1980–82 and recommendations 1987, Oregon State University',
    url: 'https://agsci.oregonstate.edu/oregon-vegetables/overwinterd-onion-variety-trials-1980-1982',
  },
  'overwintered-spacing': {
    title: 'Plant spacing, yield and bolting of two overwintered cultivars (abstract)',
    url: 'https://scilit.com/publications/4fc1ce4269c4e1118e37b793790d1145',
  },
  'peffley-2017': {
    title: 'Peffley 2017, onion transplants for the South Plains (newspaper column)',
    url: 'http://www.lubbockonline.com/life/2017-01-30/peffley-south-plains-gardeners-should-plant-onion-transplants-march',
  },
  'russo-2004': {
    title: 'Russo 2004, HortScience 39:1267–1271 (abstract)',
    url: 'https://www.ars.usda.gov/research/publications/publication/?seqNo115=147398',
  },
  'sideman-2014': {
    title: 'Sideman et al. 2014, HortTechnology 24:655–662 (abstract)',
    url: 'https://findscholars.unh.edu/display/publication76614',
  },
  'texas-2021': {
    title: 'Onion plants 2021, Texas A&M AgriLife Extension (newspaper column)',
    url: 'https://www.oaoa.com/people/lifestyle/gardening/gardening-tips-for-successful-onion-growth/article_8a9d46da-7351-11eb-9733-7b69ba868a1c.html',
  },
  'zandstra-1985': {
    title: 'Zandstra 1985, Hortopics 8, bolting, Michigan State University Extension',
    url: 'https://www.oldhouseweb.com/gardening/onion-bolting.shtml',
  },
} as const satisfies Record<string, Source>;

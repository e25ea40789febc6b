/** The foot of every answer. */
export const howWeKnow = {
  'how.title': 'How we know',
  'how.climate':
    'Climate: fitted by us to the records of weather stations, temperatures of 1979–2013, the rest of 1961–1990; the nearest climate point is {distance} away.',
  'how.years':
    'Tried in {years, plural, one {# made-up year} other {# made-up years}} of weather drawn from that climate (series {seed}), each with plants a little earlier or later than the middle of their kind.',
  'how.past':
    'Such years are made from past climate: they know no pest, no hail and no neglect, and of disease only what long wet spells cost.',
  'how.sure': 'Least sure: the day length at which this kind starts its bulbs, known to about half an hour.',
  'how.sure-tropics':
    'Least sure: what long wet spells cost here, and the kinds sold: days hardly change near the equator, so rain and heat decide.',
  'how.sure-mountain':
    'Least sure: the climate of this slope; ground nearby differs by more than {spread} in height. Give the elevation of your own ground.',
  'how.span.parts':
    'In {some, select, some {8 in 10 of the years with a crop} other {8 years in 10}}, tops go over within {days} of each other, and bulbs are within {size}. {rest, select, none {The weather of the year alone makes that.} other {The weather of the year alone would make that about {weatherDays} and {weatherSize}; what is not known of this onion makes the rest.}}',
  'how.span.lead':
    'In {some, select, some {8 in 10 of the years with a crop} other {8 years in 10}}, tops of the crop named first go over {dates}, on bulbs of {sizes}.',
  'how.span.best-start':
    'In {some, select, some {8 in 10 of the years with a crop} other {8 years in 10}}, tops from the best start go over {dates}, on bulbs of {sizes}.',
  'how.hangs.warmth':
    'What the tops hang on most here: how warm the season is. {amount} {way, select, more {warmer} other {cooler}}, and {end}.',
  'how.hangs.day-length':
    'What the tops hang on most here: the day length this onion needs. {amount} {way, select, more {more} other {less}}, and {end}.',
  'how.hangs.start':
    'What the tops hang on most here: the day you start. {amount} {way, select, more {later} other {earlier}}, and {end}.',
  'how.hangs.start-too': 'Started {amount} later, {end}.',
  'how.minutes': '{minutes} min',
  'how.days': '{days, plural, one {# day} other {# days}}',
  'how.end.later': 'they go over about {days} later',
  'how.end.sooner': 'they go over about {days} sooner',
  'how.end.same': 'they go over on about the same day',
  'how.end.bolts': 'more than a quarter of the plants run to flower',
  'how.end.winter-killed': 'most plants are lost to winter',
  'how.end.no-bulb': 'no bulbs form',
  'how.end.not-ripe': 'they do not go over in time',
  'how.end.with-size': '{end}, on bulbs {size} {way, select, more {wider} other {narrower}}',
  'how.sources': 'Sources: {sources}. `neckfall --about` has them in full.',
  'assumed.elevation-town': 'Elevation {elevation}, taken from {town}.',
  'assumed.elevation-near': 'Elevation {elevation}, taken from {town}, {distance} away.',
  'assumed.elevation-node': 'Elevation {elevation}, taken from the nearest climate point, {distance} away.',
  'assumed.elevation-given': 'Elevation {elevation}, as given.',
  'assumed.warmer': 'Taken as {warmer} warmer than that record, for the warming since.',
  'assumed.warmer-given':
    '{way, select, same {Taken as no warmer than that record, as asked.} cooler {Taken as {warmer} cooler than that record, as asked.} other {Taken as {warmer} warmer than that record, as asked.}}',
  'assumed.district':
    'Where kinds or dates come out alike, what growers of the district do goes first: {sources}.',
  'assumed.type': 'A packet that says {class} is taken as {type} here.',
  'assumed.type-autumn': 'Started from autumn to winter, it is taken as {type}, the kind sold for that.',
  'assumed.sun': '{hours} of direct sun at midsummer, as given.',
  'assumed.open': 'Open ground: full sun.',
  'assumed.sizes':
    'Sizes are those of beds {water, select, rain {fed and weeded} other {fed, watered and weeded}} as in field trials; an ordinary garden gives about four fifths of the weight (common practice, no source).',
  'assumed.weather': 'Days from {from} to {to} as measured, where {file} has them.',
  'assumed.practice': '{density}, {soil} soil, {water}, {cover}.',
  'assumed.sets': 'Sets of {size}, {store}.',
  'assumed.season-of-sets':
    'Where summer days are long, sets are taken to be sound from late summer until three weeks before the longest day; later they have sprouted or dried up (common practice, no source).',
  'assumed.season-of-plants':
    'Where summer days are long, plants are taken to be on sale from late summer until three weeks before the longest day (common practice, no source).',
  'assumed.season-of-trays':
    'Trays are not sown more than {weeks} weeks before the bed is warm enough for the seedlings (common practice, no source).',
  'assumed.nursery':
    '{temperature, select, outdoors {Seedlings raised in a seedbed outdoors} varies {Seedlings raised in a seedbed outdoors where days are at {warm} and more at sowing, else in trays at {indoors}} other {Trays at {temperature}}}, {lamps, select, none {in daylight alone} other {under {lamps} of lamps}}.',
  'assumed.plant-out':
    'Planted out once seedlings have {leaves} leaves or have stood for {weeks} weeks, and the bed is at {temperature}.',
  'warning.ambiguous': '"{asked}" could also be {others}. Taken: {taken}, the one with the most people.',
  'warning.hilly':
    'Ground within {reach} differs by more than {spread} in height: the elevation {elevation} is a guess. Give your own with --at LAT,LON,ELEV.',
  'warning.weather-unused':
    '{file} has no day of the seasons tried, so it changes nothing. Give dates in the years it covers.',
  'warning.more-places': '{more} more',
  'source.chelsa': 'CHELSA V1.1 (Karger et al. 2017)',
  'source.cru': 'CRU CL 2.0 (New et al. 2002)',
  'source.geonames': 'GeoNames (CC BY 4.0)',
  'source.model': 'the crop model in docs/how-it-works.md',
} as const;

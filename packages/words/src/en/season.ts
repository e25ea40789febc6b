/** One crop, many years. */
export const season = {
  'crop.direct-seed': '{type} onions sown in place on {date}',
  'crop.raised-seedlings': '{type} onions sown in trays on {date}',
  'crop.bought-transplants': '{type} onions set out as bought plants on {date}',
  'crop.sets': '{type} onions from sets planted on {date}',
  'season.good': '{place}: {crop} make good bulbs {years}; tops go over around {neckFall}.',
  'season.small':
    '{place}: {crop} make small bulbs {years}, about {diameter} across; tops go over around {neckFall}.',
  'season.no-bulb': '{place}: {crop} stay green {years}: no bulbs. Eat them as spring onions.',
  'season.bolts': '{place}: {crop} run to flower {years}, too many to keep.',
  'season.winter-killed': '{place}: {crop} are lost to winter {years}.',
  'season.not-ripe':
    '{place}: {crop} stay thick-necked and unfinished {years}. Eat them fresh; they do not keep.',
  'season.gamble': '{place}: {crop} are a gamble: good bulbs {years}. What mostly goes wrong: {failure}.',
  'season.table': 'What to expect',
  'season.column.likely': 'Middle',
  'season.column.range': '8 years in 10',
  'season.row.emergence': 'Come up',
  'season.row.sprouting': 'Sets sprout',
  'season.row.plant-out': 'Planted out',
  'season.row.onset': 'Bulbs start',
  'season.row.day-length': 'Day length then',
  'season.row.leaves-green': 'Green leaves standing then',
  'season.row.neck-fall': 'Tops go over',
  'season.row.diameter': 'Bulb across',
  'season.row.mass': 'Bulb weight',
  'season.row.yield': 'Crop worth keeping',
  'season.row.bolted': 'Run to flower',
  'season.row.winter-killed': 'Lost to winter',
  'season.row.thirsty': 'Thirsty days',
  'season.shares': 'Year by year: {shares}.',
  'season.share': '{verdict} {years}',
  'season.spread':
    'Bulbs differ from plant to plant: for a middle bulb of {middle}, two in three weigh {range}.',
  'season.leaves-gone':
    'By the time bulbs start, {made} leaves have been made; the oldest {gone, plural, one {one has} other {# have}} died back.',
  'leaf-check.see':
    'Around {date}, three weeks before bulbs start, you should see {most, plural, one {one green leaf} other {{leaves} green leaves}} on each plant.',
  'leaf-check.parting':
    'Count green leaves around {date}, three weeks before bulbs start: with {many} or more, bulbs of about {good} are on course; with {few} or fewer expect small ones, about {small}.',
  'season.range-some': '{range}, {years}',
  'season.days': 'Week by week, in a middling year',
  'season.day.date': 'Day',
  'season.day.sun-up': 'Sun up',
  'season.day.mean': 'Mean',
  'season.day.leaves': 'Green leaves',
  'season.day.bulb': 'Bulb',
  'season.cold-bed':
    'Around {date} beds here are usually too cold to work, about {soil}: wait until about {from}.',
  'season.cold-bed-always':
    'Beds here are too cold to work the whole year, about {soil} around {date}: only a frame or a tunnel will do.',
} as const;

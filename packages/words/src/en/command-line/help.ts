/** The command line explaining itself. */
export const help = {
  'help.program':
    'Plans an onion crop for any place on land: which onion suits it, when and how to start, and what the season will look like.',
  'help.where': 'Which onion to buy here, when to start it, and what is still in time today.',
  'help.season':
    'What one crop will do: when it comes up, when bulbs start, when tops go over, and how large bulbs get.',
  'help.when': 'The year tried week by week: when a start ends in good bulbs.',
  'help.example': 'For example:',
  'help.about': 'what Neckfall rests on: sources and licences',
  'help.version': 'the version',
  'help.help': 'this help',
  'help.place': 'a town of 1,000 people or more, such as Lyon or "Springfield MO"',
  'help.at': 'a point instead: degrees, and metres above the sea, such as 45.76,4.84,175',
  'help.today': 'the day it is, as YYYY-MM-DD (default: this machine’s date)',
  'help.sun': 'hours of direct sun on the bed at midsummer (default: open ground)',
  'help.warmer': 'how much warmer than the recorded climate (default: see How we know)',
  'help.weather':
    'measured days in place of made-up ones: a CSV file with date, temp_min_c, temp_max_c and, if at hand, rain_mm and solar_mj_m2',
  'help.years': 'how many years of weather to try, 1 to 200 (default: 30)',
  'help.seed': 'another series of weather years (default: 1)',
  'help.json': 'one JSON document, in metric units',
  'help.csv': 'a table of comma-separated values, in metric units',
  'help.out': 'write to a file instead of printing',
  'help.units': 'units and words (default: metric)',
  'help.lang': 'language of the words (default: that of this machine, where it is spoken here)',
  'help.debug': 'show where an error arose',
  'help.start': 'direct-seed, raised-seedlings, bought-transplants or sets',
  'help.class': 'short, intermediate or long, as on the packet',
  'help.date': 'sowing, or planting of bought plants and sets: MM-DD is the next such day, or YYYY-MM-DD',
  'help.plant-out':
    'when seedlings from trays go out (default: once they have 2.5 leaves or have stood for 12 weeks, and the bed is at 7 °C)',
  'help.nursery-temp':
    'warmth of the trays for seedlings (default: 15 indoors, or a seedbed outdoors where it is warm at sowing)',
  'help.lamp-hours': 'hours of lamps over the trays (default: daylight alone)',
  'help.density': 'plants per m², 5 to 400 (default: 40)',
  'help.set-size': 'across a set, in mm, {min} to {max} (default: 16)',
  'help.set-store': 'how sets were kept over winter (default: cold)',
  'help.cover': 'over the bed for the first six weeks and in frost (default: none)',
  'help.water': 'watered as needed, or rain alone (default: watered)',
  'help.soil': 'such as sand, loam or clay (default: loam)',
  'help.days': 'add the season day by day',
} as const;

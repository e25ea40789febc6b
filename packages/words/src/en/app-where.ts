/** The Where page. */
export const appWhere = {
  'app.welcome': 'Where do you grow?',
  'app.welcome.lead':
    'Name a town. You get the onion that suits it, when to start it and when its tops go over, worked out here on your device.',
  'app.where.next': 'Go on',
  'app.where.next.which': 'Which: what to get',
  'app.where.next.when': 'When: week by week',
  'app.where.next.season': 'Season: what to do and see',
  'app.where.tropics':
    'Days hardly change here ({shortest} to {longest}), so rain and heat lead: grow through the drier, cooler months. Driest: {driest}. Hottest: {hottest}.',
  'app.where.kinds': 'Each kind of onion here',
  'app.where.kind.good':
    '{buy}. Bulbs start around {onset}, tops go over around {neckFall}; good bulbs {years}.',
  'app.where.kind.gamble': 'A gamble. Best odds: {buy}; good bulbs {years}.',
  'app.where.kind.small': 'Small bulbs {years}. Best: {buy}.',
  'app.where.kind.no-bulb': 'Stays green {years}, even from its best start: no bulbs.',
  'app.where.kind.bolts': 'Runs to flower {years}, even from its best start.',
  'app.where.kind.winter-killed': 'Lost to winter {years}, even from its best start.',
  'app.where.kind.not-ripe': 'Thick-necked and unfinished {years}, even from its best start.',
  'app.where.kind.far':
    'It belongs to another latitude: shops here seldom have it, and what is said of it is less sure.',
  'app.where.winter': 'Can young plants stand the winter?',
  'app.where.winter.mild':
    'Yes: of plants sown in late summer or autumn, frost takes hardly any, even without a cover.',
  'app.where.winter.some':
    'Mostly: of plants sown in autumn, frost takes {lost}, in a hard winter {hard}. Fleece helps ({fleece} lost).',
  'app.where.winter.fleece': 'Not in the open ({lost} lost); under fleece frost takes {fleece}.',
  'app.where.winter.no':
    'No: frost takes {lost} of those sown in autumn, and {fleece} even under fleece. Start in spring.',
  'app.where.year': 'The year here',
  'app.where.year.caption': 'Means of each month, with the warming since the records',
  'app.where.frost': 'Frost and day length',
  'app.where.frost-free': '{days, plural, one {# day} other {# days}} without air frost in a middling year.',
  'app.where.coldest': 'The coldest night of the year is about {coldest}.',
  'app.ground': 'Your ground',
  'app.ground.is': 'Your ground: {list}.',
  'app.ground.change': 'Tell us more of it, and the answer gets sharper',
  'app.ground.sun': 'Hours a day that the sun reaches the bed',
  'app.ground.sun.hint': 'On a clear day when days are longest. Leave empty for open ground.',
  'app.ground.elevation': 'Height above the sea, {unit, select, feet {feet} other {metres}}',
  'app.ground.elevation.hint': 'Taken as {elevation} unless you say.',
  'app.ground.hollow': 'A frost hollow: cold air gathers here',
  'app.ground.cover': 'Cover in the cold weeks',
  'app.ground.water': 'Water',
  'app.ground.soil': 'Soil',
  'app.ground.bad': '“{value}” won’t do: give a number from {min} to {max}.',
  'app.ground.open': 'full sun',
  'app.ground.hours': '{hours} hours of sun',
  'app.ground.in-hollow': 'in a frost hollow',
  'app.caution.bought':
    'Bought plants and sets can bring diseases (white rot, smut) or a pest (leaf miner): buy from a clean source, and keep to the rules on moving onions across borders.',
  'app.caution.treated': 'Treated seed and sets are not food.',
  'app.caution.promise': 'Dates are likelihoods from past weather, not a forecast and not a promise.',
} as const;

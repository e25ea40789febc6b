/** How a crop is to be fed. Amounts come with their units. */
export const feed = {
  'feed.lead.feeds':
    '{place}: give {crop} {count, plural, one {one feed} other {# feeds}} of {product}{evenly, select, yes {, {rate} each} one {, {rate},} other {, {rate} in all}}{count, plural, one { around {first}} other {, from about {first} to {last}}}, and nothing once bulbs begin.',
  'feed.lead.leafy':
    '{place}: {crop} make no bulbs in the years tried. For leaves, {count, plural, one {one feed} other {# feeds}} of {product} will do, {rate} in all.',
  'feed.lead.bed-gives': '{place}: {crop} need no feed: the bed gives all the nitrogen they want.',
  'feed.lead.fed': '{place}: {crop} have had all the feed they want.',
  'feed.lead.no-time': '{place}: {crop} have no use for feed: bulbs may begin before it is taken up.',
  'feed.crop.direct-seed': 'onions sown in place',
  'feed.crop.raised-seedlings': 'onions from your own seedlings',
  'feed.crop.bought-transplants': 'onions from bought plants',
  'feed.crop.sets': 'onions from sets',

  'feed.product.blood-meal': 'blood meal',
  'feed.product.feather-meal': 'feather meal',
  'feed.product.fish-emulsion': 'fish emulsion',
  'feed.product.cottonseed-meal': 'cottonseed meal',
  'feed.product.soybean-meal': 'soybean meal',
  'feed.product.alfalfa-meal': 'alfalfa meal',
  'feed.product.poultry-compost': 'composted poultry manure',
  'feed.product.compost': 'compost',

  'feed.table': 'Feeds',
  'feed.column.stage': 'When',
  'feed.column.date': 'Around',
  'feed.column.nitrogen': 'Nitrogen',
  'feed.column.rate': 'Of {product}',
  'feed.column.bed': 'For the bed',
  'feed.stage.sowing': 'Before sowing',
  'feed.stage.planting': 'Before planting',
  'feed.stage.leaves': 'At {leaves, number} leaves',
  'feed.stage.given': '{stage} (given)',

  'feed.from.need':
    'A crop of {aim} takes {taken} of nitrogen away with it, and must be able to draw on about {all}.',
  'feed.from.bed':
    '{fertility, select, poor {A poor soil} rich {A rich soil} other {An ordinary soil}} gives about {soil} of it{compost, select, zero {} other {, the compost {compost}}}{legume, select, zero {} other {, what peas, beans or clover left {legume}}}.',
  'feed.from.give': '{give} is left for you to give.',
  'feed.from.coarse':
    '{give} is left for you to give: rain washes part of it through sandy ground, so there is more of it, in more feeds.',
  'feed.from.nothing': 'That is enough.',
  'feed.from.left-out':
    'Of that {left} stays out of the feeds: {stop, select, none {more at once burns roots and washes out} other {before bulbs begin there is no time for more, and more at once burns roots and washes out}}.',
  'feed.given': 'What you noted so far comes to {given} of nitrogen; it is taken off, the first feed first.',
  'feed.given-unknown':
    'You noted feed, but how much that is on the ground can’t be told: the size of the bed is not known.',
  'feed.split':
    'It is split because onions take little at first: by five leaves about {five}% of their nitrogen, when bulbs begin under {onset}%.',
  'feed.slow':
    'It lets its nitrogen go slowly: only about {percent}% of it in the first season, so it is given early.',
  'feed.stop':
    'No nitrogen from {date} on, the first day bulbs may begin: later feed makes late, soft, thick-necked onions that keep badly.',
  'feed.stop-never':
    'Bulbs don’t begin in the years tried, so there is no last day. Little and seldom is enough.',
  'feed.besides':
    'The feeds listed also bring {phosphate} of phosphorus (as P₂O₅) and {potash} of potassium (as K₂O). Give more of either only if a soil test asks for it.',
  'feed.besides-none':
    'It brings no phosphorus and no potassium. Give either only if a soil test asks for it.',
  'feed.besides-unknown':
    'It brings some phosphorus and potassium as well; how much is on its label. Give more of either only if a soil test asks for it.',
  'feed.sulphur':
    'Sulphur makes onions sharper. Give it only if a soil test asks for it, and none once bulbs begin.',
  'feed.trays':
    'In trays: begin with soluble feed at {least} to {most} tall. Feed with 150 to 225 mg of nitrogen a litre grew better seedlings than 75.',

  'feed.lime.lime':
    'At pH {ph} the soil is too acid for onions: they want {low} to {high}. Lime it; how much depends on the soil, so have it tested and go by what is advised locally.',
  'feed.lime.lime-perhaps':
    'At pH {ph} the soil is a little acid: some guides ask for {low} or more, others are content. A soil test tells whether lime is worth it, and how much.',
  'feed.lime.fits': 'At pH {ph} the soil suits onions, which want {low} to {high}: no lime.',
  'feed.lime.no-lime':
    'At pH {ph} the soil is above the {low} to {high} that onions like: no lime, and no wood ash. If leaves stay pale, have it tested.',

  'feed.caution.label': 'Go by the label and by local rules where they say less than this.',
  'feed.caution.leaves': 'Keep feed off the leaves, which it burns, work it in lightly and water it in.',
  'feed.caution.run-off': 'Don’t feed before heavy rain or near ditches, ponds and wells.',
  'feed.caution.manure': 'Raw manure: dig it in at least 120 days before you lift, or use it composted.',
  'feed.caution.dust': 'Feed meals and lime are dusty: keep them out of eyes and lungs, and away from pets.',
  'feed.caution.lime':
    'Don’t give lime and feed with ammonium or manure together: the nitrogen goes off as gas. Keep some weeks between them.',
  'feed.cautions': 'Take care',

  'feed.assumed.soil': 'Nothing was said of what the soil gives: an ordinary one is assumed.',
  'feed.assumed.product':
    '{said, select, none {No product was named} other {“{said}” is no feed known here}}: {product} is assumed.',
  'feed.assumed.aim':
    'The crop aimed at is what these onions come to here in a middling year when they want for nothing.',
  'feed.assumed.leafy': 'The crop aimed at is a small one of leaves.',
  'feed.assumed.values':
    'What soils, compost and legumes give, how fast organic feed works and how feeds are spaced is common practice, not measured here; a soil test knows better.',
  'feed.assumed.oxides':
    'The numbers of a bag are nitrogen, phosphorus as P₂O₅ and potassium as K₂O, in percent.',
  'feed.source.uptake': 'Khokhar 2019 and CDFA (nitrogen of onions)',
  'feed.source.feeds': 'Limpopo Department of Agriculture and Iowa State University (feeds)',
} as const;

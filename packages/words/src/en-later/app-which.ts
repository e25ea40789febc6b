/** The Which page. */
export const appWhich = {
  'app.which.ways': 'What do you have?',
  'app.which.way.packet': 'I have this packet',
  'app.which.way.list': 'What can I get here?',

  'app.which.title': 'What can I get in {place}?',
  'app.which.progress': 'Tried {done} of {total}',
  'app.which.stop': 'Stop here',
  'app.which.stopped': 'Stopped after the first look, which knows one middling year only.',
  'app.which.go-on': 'Try the years after all',
  'app.which.coarse': '{kind}: start around {date}; tops go over around {neckFall}.',
  'app.which.coarse-none': '{kind}: {comes}.',

  'app.which.kinds': 'Kinds, each at its best start',
  'app.which.sections': 'All to one scale, in a middling year',
  'app.which.level-best': '{count, plural, one {Best here} other {Best here, one as good as the other}}',
  'app.which.level-next': '{count, plural, one {Next} other {Next, one as good as the other}}',
  'app.which.kind.good':
    '{buy}. Tops go over around {fall}. Good bulbs {years}; run to flower: {plants}. Keeps {keeps}.',
  'app.which.kind.poor':
    '{buy}: {comes}. Good bulbs {good}; run to flower: {plants}. {fall, select, never {Tops don’t go over in most years.} other {Where tops go over, they do so around {fall}, and bulbs keep {keeps}.}}',
  'app.which.more-names': '{count, plural, one {# more name} other {# more names}} of this kind',
  'app.which.months': '{names}: keeps {months} months.',
  'app.which.months-same': '{names}: the same as far as we know; keep {months} months.',
  'app.which.when': 'When: week by week',
  'app.which.season': 'Season: what to do and see',
  'app.which.put-beside': 'Set beside others',
  'app.which.take-away': 'Take it away again',
  'app.which.see-beside': 'See them side by side',
  'app.which.for': '{what}: {name}, {start}',
  'app.which.show-all': 'Show all {count} kinds and names, the poor ones too',
  'app.which.show-fewer': 'Show the best only',
  'app.which.nothing':
    'No onion we know is all of that: {list}. Leave one out; many more onions are on sale than we know of.',

  'app.which.names-level': 'By name: {names}; one as good as the other here.',
  'app.which.far.sooner': 'Sooner, and good here too: {kind}, around {soon}, with good bulbs {years}.',
  'app.which.far.none': 'No kind that does well here has its best start before that.',
  'app.which.far.today': 'What is still in time today',

  'app.which.came.kind': '{type} onions',
  'app.which.came.first': 'You were looking at {kind}: nothing does better here.',
  'app.which.came.further':
    'You were looking at {kind}: they come further down, with good bulbs {years}. Their place in the list is marked.',
  'app.which.came.absent': 'You were looking at {kind}: there are none in this list.',
  'app.which.came.this': 'You were looking at these.',

  'app.which.sets.are': 'Sets are taken as {size} across, {store}.',
  'app.which.sets.change': 'Say what yours are',

  'app.which.narrow.is': 'Among all onions we know.',
  'app.which.narrow.among': 'Only: {list}.',
  'app.which.narrow.change': 'Narrow it down',
  'app.which.narrow.clear': 'All onions again',
  'app.which.narrow.any': 'any',
  'app.which.narrow.colour': 'Skin',
  'app.which.narrow.keeps': 'Keeps at least, months',
  'app.which.narrow.keeps.hint': 'Leave empty if it need not keep.',
  'app.which.narrow.keeps-is': 'keeps {months, plural, one {# month} other {# months}} or more',
  'app.which.narrow.mild': 'Only mild ones',
  'app.which.narrow.mild-is': 'mild',
  'app.which.narrow.start': 'Started as',
  'app.which.narrow.day': 'Day length on the packet',
  'app.which.narrow.have': 'Only names I can get',
  'app.which.narrow.have.hint': 'As your shop or list has them, with commas: Copra, Walla Walla.',
  'app.which.narrow.have-unknown':
    '“{name}” is not in our list.{near, plural, =0 {} other { Did you mean {nearest}?}} It is left out.',

  'app.which.beside': 'Side by side',
  'app.which.beside.one': 'Pick one to three more to set beside it.',
  'app.which.beside.full': 'Four stand side by side. Take one away to add another.',
  'app.which.beside.fact': 'What',
  'app.which.row.start': 'Start',
  'app.which.row.onset': 'Bulbs start',
  'app.which.row.neck-fall': 'Tops go over, 8 years in 10',
  'app.which.row.across': 'Bulb across, 8 years in 10',
  'app.which.row.leaves': 'Green leaves when bulbs start',
  'app.which.row.weeks': 'In the ground and tray',
  'app.which.row.good': 'Good bulbs',
  'app.which.row.flower': 'Run to flower',
  'app.which.row.keeps': 'Keeps',
  'app.which.row.choice': 'Choice',
  'app.which.row.losses': 'Losses',
  'app.which.row.work': 'Work',
  'app.which.row.bolting': 'Flowers, as gardeners have it',
  'app.which.row.cost': 'Cost',

  'app.which.packet.is': 'Your packet: {list}.',
  'app.which.packet.change': 'Change it, or say more of it',
  'app.which.packet.hours-is': '{hours} of day',
  'app.which.packet.days-is': '{days} days',
  'app.which.packet.stranger': 'We don’t know “{name}” by name: this goes by what its packet says.',
  'app.which.packet.also-called': '“{typed}” is {name} in our list.',
  'app.which.packet.holds': 'What do you have in your hand?',
  'app.which.packet.holds.seed': 'seed',
  'app.which.packet.holds-none': 'nothing yet',
  'app.which.packet.ask-it': 'Does it suit?',
  'app.which.packet.more': 'What else it says',
  'app.which.packet.holds.plants': 'young plants',
  'app.which.packet.holds.sets': 'sets',
  'app.which.packet.ask-unknown': 'We don’t know “{name}”. What else does the packet say?',
  'app.which.packet.lead-unknown':
    'Our list has what was found written down, and many more onions are on sale. The day length it is for is enough to go by.',
  'app.which.packet.lead-days':
    'Days to maturity alone don’t say when bulbs start: give its name or its day length too.',
  'app.which.packet.skin-is': '{colour} skin',
  'app.which.packet.ask': 'What do you have in your hand?',
  'app.which.packet.lead':
    'Seed, plants or sets: that alone is enough for an answer. Its name, or the day length it is for, makes it sharper.',
  'app.which.packet.name-field': 'Its name, if it has one',
  'app.which.packet.name-hint': 'As printed; accents and “F1” don’t matter.',
  'app.which.packet.unknown':
    'No onion “{name}” in our list: say what it is, seed, plants or sets, or go by the day length on it.',
  'app.which.packet.like': 'Did you mean {name}?',
  'app.which.packet.other-crop':
    '{name} is a shallot or multiplier onion: it grows from bulbs that split, and how it will do can’t be told here.',
  'app.which.packet.day': 'Day length',
  'app.which.packet.day-none': 'not said',
  'app.which.packet.hours': 'or hours of day',
  'app.which.packet.hours-hint': 'Such as 14, if it gives hours.',
  'app.which.packet.days': 'Days to maturity',
  'app.which.packet.days-hint': 'Such as 110, if it gives days.',
  'app.which.packet.colour': 'Skin',
  'app.which.packet.this': 'your onion',
  'app.which.packet.good':
    '{place}: yes, {name} suits. {start}; tops go over around {neckFall}, on bulbs of about {size}.',
  'app.which.packet.mostly':
    '{place}: {name} may do: good bulbs {years}. {start}; tops go over around {neckFall}, on bulbs of about {size}.',
  'app.which.packet.gamble': '{place}: {name} is a gamble here. Best odds: {start}; good bulbs {years}.',
  'app.which.packet.nearly':
    '{place}: {name} all but suits: bulbs of about {size}, full-sized {years}. Best: {start}; tops go over around {neckFall}.',
  'app.which.packet.small':
    '{place}: {name} stays small here, about {size}. Best: {start}; tops go over around {neckFall}.',
  'app.which.packet.no-bulb':
    '{place}: not {name}. {however, select, yes {However it is started} other {From {from}}}, it makes no bulbs{all, select, yes {} other { in most years}}.',
  'app.which.packet.bolts':
    '{place}: not {name}. {however, select, yes {However it is started} other {From {from}}}, it runs to flower{all, select, yes {} other { in most years}}.',
  'app.which.packet.winter-killed':
    '{place}: not {name}. {however, select, yes {However it is started} other {From {from}}}, winter takes it{all, select, yes {} other { in most years}}.',
  'app.which.packet.not-ripe':
    '{place}: not {name}. {however, select, yes {However it is started} other {From {from}}}, it stays thick-necked and unfinished{all, select, yes {} other { in most years}}.',
  'app.which.packet.start.direct-seed': 'sow it in place {now, select, yes {now} other {around {date}}}',
  'app.which.packet.start.raised-seedlings': 'sow it in trays {now, select, yes {now} other {around {date}}}',
  'app.which.packet.start.bought-transplants':
    '{held, select, yes {set your plants out} other {get it as plants and set them out}} {now, select, yes {now} other {around {date}}}',
  'app.which.packet.start.sets':
    '{held, select, yes {plant your sets} other {get it as sets and plant them}} {now, select, yes {now} other {around {date}}}',
  'app.which.packet.start-head.direct-seed': 'Sow it in place {now, select, yes {now} other {around {date}}}',
  'app.which.packet.start-head.raised-seedlings':
    'Sow it in trays {now, select, yes {now} other {around {date}}}',
  'app.which.packet.start-head.bought-transplants':
    '{held, select, yes {Set your plants out} other {Get it as plants and set them out}} {now, select, yes {now} other {around {date}}}',
  'app.which.packet.start-head.sets':
    '{held, select, yes {Plant your sets} other {Get it as sets and plant them}} {now, select, yes {now} other {around {date}}}',
  'app.which.packet.in-time': 'In time until {until}.',
  'app.which.packet.this-week': 'In time this week only.',
  'app.which.packet.taken':
    'Taken as {type}, what suits best here: its name, or the day length on it, tells more surely.',
  'app.which.packet.against': 'Beside the best here',
  'app.which.packet.level': 'Crop, size, keeping and work taken together, nothing we know does better here.',
  'app.which.packet.behind': 'Others come before it here, first of all {kind} ({names}): {why}.',
  'app.which.packet.surer': 'good bulbs {years}, with this one {ownYears}',
  'app.which.packet.keeps-longer': 'they keep {months} months, this one {ownMonths}',
  'app.which.packet.keeps': 'they are known to keep {months} months',
  'app.which.packet.easier': 'as sure of good bulbs, but bigger, less work, or easier to come by',
  'app.which.packet.comparing': 'Setting it beside all others…',
  'app.which.packet.best': 'Best here: {name}',

  'app.which.starts': 'Ways to start {name}',
  'app.which.starts.chosen': '{start}, as you chose',
  'app.which.starts.perhaps': 'Whether it is sold as plants or sets, your packet does not say.',
  'app.which.starts.facts': 'What comes of each way',
  'app.which.starts.known': 'What is known of each way',
  'app.which.starts.practice': 'common practice, no source',
  'app.which.starts.memory': 'memory, not checked',
  'app.which.starts.sources': 'Sources',
  'app.caution.sets':
    'Large sets that were kept cold run to flower: plant small ones, or heat-treated ones, and eat the large ones green.',
} as const;

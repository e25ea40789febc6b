/** Where American gardeners say something else. */
export const american = {
  'cover.fleece': 'under row cover',
  'buy.bought-transplants': 'buy {type} plants (bundles) and set them out around {date}',
  'buy-head.bought-transplants': 'Buy {type} plants (bundles) and set them out around {date}',
  'where.good': '{place}: {buy}; tops fall around {neckFall}.',
  'where.nearly':
    '{place}: {buy}; bulbs come near to full size, about {size} across, and reach it {years}. Tops fall around {neckFall}.',
  'where.small':
    '{place}: expect small bulbs{among, select, list { of these} other {}}, about {size} across. Best: {buy}; tops fall around {neckFall}.',
  'where.small-but':
    '{place}: {buy}, but expect small bulbs, about {size} across; tops fall around {neckFall}. Good ones are likelier if you {better}: {betterYears}.',
  'where.column.neck-fall': 'Tops fall',
  'season.good': '{place}: {crop} make good bulbs {years}; tops fall around {neckFall}.',
  'season.small':
    '{place}: {crop} make small bulbs {years}, about {diameter} across; tops fall around {neckFall}.',
  'season.no-bulb': '{place}: {crop} stay green {years}: no bulbs. Eat them as green onions.',
  'season.row.neck-fall': 'Tops fall',
  'when.column.neck-fall': 'Tops fall',
  'which.column.neck-fall': 'Tops fall',
  'reason.choice-drying':
    'Tops fall while it is warm enough to cure bulbs; those of the next best, {next}, do so in cooler weather.',
  'how.span.parts':
    'In {some, select, some {8 in 10 of the years with a crop} other {8 years in 10}}, tops fall within {days} of each other, and bulbs are within {size}. {rest, select, none {The weather of the year alone makes that.} other {The weather of the year alone would make that about {weatherDays} and {weatherSize}; what is not known of this onion makes the rest.}}',
  'how.span.lead':
    'In {some, select, some {8 in 10 of the years with a crop} other {8 years in 10}}, tops of the crop named first fall {dates}, on bulbs of {sizes}.',
  'how.span.best-start':
    'In {some, select, some {8 in 10 of the years with a crop} other {8 years in 10}}, tops from the best start fall {dates}, on bulbs of {sizes}.',
  'how.end.later': 'they fall about {days} later',
  'how.end.sooner': 'they fall about {days} sooner',
  'how.end.same': 'they fall on about the same day',
  'how.end.not-ripe': 'they do not fall in time',
  'picture.mark.tops': 'tops fall {date}',
  'picture.green': 'no bulb: a green onion',
  'app.where.kind.good':
    '{buy}. Bulbs start around {onset}, tops fall around {neckFall}; good bulbs {years}.',
  'app.welcome.lead':
    'Name a town. You get the onion that suits it, when to start it and when its tops fall, worked out here on your device.',
  'app.where.winter.some':
    'Mostly: of plants sown in fall, frost takes {lost}, in a hard winter {hard}. Row cover helps ({fleece} lost).',
  'app.where.winter.mild':
    'Yes: of plants sown in late summer or fall, frost takes hardly any, even without a cover.',
  'app.where.winter.fleece': 'Not in the open ({lost} lost); under row cover frost takes {fleece}.',
  'app.where.winter.no':
    'No: frost takes {lost} of those sown in fall, and {fleece} even under row cover. Start in spring.',
  'see.fallen': 'Tops are down by now {years}.',
  'tops.ahead': 'Tops fall about {date} ({range}).',
  'tops.some':
    'Tops fall about {date} ({range}), {years}. In the other years {otherwise, select, neck {they stay up and necks stay thick} bulb {no bulbs form} winter {winter takes the plants} other {they stay up}}.',
  'job-name.watch-seedcorn-fly': 'Look for seedcorn maggot',
  'job-name.watch-onion-fly': 'Look for onion maggot',
  'lift.title': 'Pull and cure',
  'job-name.lift': 'Pull',
  'job-name.dry': 'Cure',
  'job.trim':
    'Trim tops to about 4 inches {when}, once they reach 5 inches: seedlings stay stout until they go out about {plantDay}.',
  'job.thin':
    'Pull every other plant as a green onion {when}: plants have {leaves, plural, one {# leaf} other {# leaves}} by then, and those that stay need the room before bulbs start about {onsetDay}.',
  'job.water-stop':
    'Stop watering {when}: tops fall about {fallDay}, and water after that brings rot into storage.',
  'job.onion-fly':
    'Keep net or row cover closed against onion maggot {when}, and pull plants that wilt: flight {flight} of the fly comes at {degreeDaysC}, here about {flightDay}.',
  'job.seedcorn-fly':
    'Keep net or row cover closed against seedcorn maggot {when}: it eats seed and seedlings, and flight {flight} of the fly peaks at {degreeDaysC}, here about {flightDay}.',
  'job.mildew':
    'Look for gray fuzz on leaves, downy mildew, {when}: cool, wet days that suit it come {share} about {spellDay}, and spots show 10 to 16 days later.',
  'job.check-tops':
    'Look at the tops twice a week {when}: they fall about {fallDay}, and the first in ten tells that the bed is ripening.',
  'job.tops-over':
    'Pull {when}, once more than half the tops are down: they fall about {fallDay}{some, select, yes {, {share}} other {}}, and left three weeks longer more of them rot.',
  'job.tops-seen':
    'Pull {when}, in dry weather: on {seenDay} tops were down on {topsPlantShare}, and left three weeks after half of them more bulbs rot.',
  'job.lift-unripe':
    'Pull {when}, whatever the tops do: bulbs start about {onsetDay}, but below {restTempC} they gain no more; eat the thick-necked ones first.',
  'job.pull-green':
    'Pull these as green onions {when}: they have {leaves, plural, one {# leaf} other {# leaves}} by then, and in most years no bulbs start.',
  'job.lifted': 'Pull: pulled on {liftedDay}.',
  'job.dry':
    'Cure bulbs {when}, warm and airy and out of the rain: pulled about {liftDay}, they take {fromDays} to {toDays} days until necks are tight.',
  'job.dry-unripe':
    'Cure bulbs {when} as well as they will: pulled about {liftDay} with thick necks, they do not keep; eat them first.',
  'job.clean':
    'Clean {when}, cutting tops and roots once necks are dry right through: {days, plural, one {# day} other {# days}} after pulling about {liftDay} they mostly are.',
  'job.store':
    'Take sound bulbs to a dry, cool, airy place {when}: pulled about {liftDay}, they are cured by then.',
  'keep-table.lift': '{name}, pulling and curing:',
  'keep.in-store':
    '{name}, pulled {date}: {amount, select, none {} other {{amount} sound, }}{percent}% of what was pulled; over about {last}.',
  'keep.eat.unripe':
    'The {kind} are pulled unripe {years}: eat thick-necked ones first, as they do not keep.',
  'keep.shop.trays':
    'Trays with {cells, plural, one {# cell} other {# cells}} in all, and {compost} of seed-starting mix.',
  'keep.store.fridge': 'refrigerator',
  'job-caution.labels':
    'If you spray at all, the label is the law: crop, rate, days before harvest, bees. Ask your extension office first.',
  'job-caution.nets': 'Hold nets tight to the ground, so that birds and snakes are not caught.',
  'job-caution.heaters':
    'Never burn charcoal, gas or kerosene to dry bulbs in a closed room; keep electric heaters clear of dry tops.',
  'job-caution.dust': 'Clean outdoors, or with a mask where dust and mold trouble you.',
  'app.seen.ask.topsOverShare': 'Of 10 plants, how many have their tops down?',
  'app.seen.topsOverShare.label': 'Of 10 plants, tops down on',
  'app.seen.is.topsOverShare': 'tops down on {value}',
  'app.seen.lifted.label': 'Pulled that day',
  'app.seen.kind.tops': 'Tops down',
  'app.seen.kind.lifted': 'Pulled or weighed',
  'app.seen.is.lifted': 'pulled',
  'words.tops': 'Tops fall',
  'words.tops.is': 'Necks soften and leaves fall: the onions have finished, and can soon be pulled.',
  'tops.past': 'Tops fell about {date} ({range}).',
  'app.which.coarse': '{kind}: start around {date}; tops fall around {neckFall}.',
  'app.which.row.neck-fall': 'Tops fall, 8 years in 10',
  'app.which.packet.good':
    '{place}: yes, {name} suits. {start}; tops fall around {neckFall}, on bulbs of about {size}.',
  'app.which.packet.mostly':
    '{place}: {name} may do: good bulbs {years}. {start}; tops fall around {neckFall}, on bulbs of about {size}.',
  'app.which.packet.nearly':
    '{place}: {name} all but suits: bulbs of about {size}, full-sized {years}. Best: {start}; tops fall around {neckFall}.',
  'app.which.packet.small':
    '{place}: {name} stays small here, about {size}. Best: {start}; tops fall around {neckFall}.',
  'where.best-of-year': 'Best of the whole year: {buy}; tops fall around {neckFall}.',
  'about.licence': 'Free software under the MIT license. Works offline; nothing leaves this computer.',
  'about.geonames': 'Towns, their elevation and time zones: GeoNames, geonames.org, license CC BY 4.0.',
  'help.record.watered': 'water given to the planting, in liters (--units us: gallons)',
  'help.record.tops-over': 'share of plants whose tops are down, from 0 to 1',
  'help.record.lifted': 'it was pulled',
  'record.column.lifted': 'Pulled',
  'record.column.topsOverShare': 'Tops down',
  'help.about': 'what Neckfall rests on: sources and licenses',
  'app.how.more': 'All sources, licenses and limits',
  'app.about.sources': 'Sources and licenses',
  'app.about.version': 'Version {version}, free software under the MIT license.',
  'app.about.libraries': 'Licenses of the data and of the libraries inside',
  'help.at': 'a point instead: degrees, and meters above the sea, such as 45.76,4.84,175',
  'error.at-form':
    '--at {value}: expected LAT,LON or LAT,LON,ELEV in degrees and meters, for example --at 45.76,4.84,175 (with decimal commas: --at "45,76;4,84").',
  'app.ground.elevation': 'Height above the sea, {unit, select, feet {feet} other {meters}}',
  'help.season':
    'What one crop will do: when it comes up, when bulbs start, when tops fall, and how large bulbs get.',
  'demo.people':
    'Ines Tarrant grows onions on three terraces above the river; her neighbor Bram Okoro teaches the Tuesday growers there.',
  'assumed.type-autumn': 'Started from fall to winter, it is taken as {type}, the kind sold for that.',
  'where.frost-spring': 'Last frost of spring: around {date} ({range}).',
  'where.frost-spring-some': 'Last frost of spring: around {date}, in years that have one ({years}).',
  'app.where.frost-free': '{days, plural, one {# day} other {# days}} without frost in a middling year.',
  'where.frost-autumn': 'First frost of fall: around {date} ({range}).',
  'where.frost-autumn-some': 'First frost of fall: around {date}, in years that have one ({years}).',
  'where.frost-never': 'Frost hardly ever comes.',
  'reason.winter-lifted':
    'Plants go into winter too small to hold on: frost heaves the wet ground and pushes out {killedTenths, plural, =0 {a few plants} =10 {nearly every plant} one {about # plant in 10} other {about # plants in 10}}. Sow earlier, or press them back and cover them.',
  'which.ranking':
    'Ranked by the share of good years, years of small bulbs counting {small}, less {flower} of the share of plants that run to flower; a full-sized bulb adds up to {size}, a hard keeper up to {keeping}; taken off are care beyond five months ({careYear} a year), thinning and trays, beds too cold to work, tops that fall in cool weather, and what shops seldom have: sets of other than long-day onions and kinds that winter, and onions of another latitude. What growers of the district do, where that is published, adds {practice}. What is known of one onion counts half, what is usual for its kind the other half. Those no further apart than so few years can tell share a rank.',
  'app.which.kind.good':
    '{buy}. Tops fall around {fall}. Good bulbs {years}; run to flower: {plants}. Keeps {keeps}.',
  'app.which.kind.poor':
    '{buy}: {comes}. Good bulbs {good}; run to flower: {plants}. {fall, select, never {Tops don’t fall in most years.} other {Where tops fall, they do so around {fall}, and bulbs keep {keeps}.}}',
  'start-level.cost.more': 'expensive',
  'start-level.cost.most': 'most expensive',
  'start-fact.seed-days-autumn': 'Short-day onions sown in fall take {fromDays}–{toDays} days.',
  'start-fact.raised-cost': 'Seed is cheap; trays, potting mix, light and warmth are not.',
  'start-fact.lamps-and-water': 'Keep lamps, heat mats and their cords away from water.',
  'start-fact.bought-heavier': 'Bare-root plants made bulbs {pct}% heavier than plants from trays.',
  'start-fact.bought-plugs-cost': 'Plugs cost {from}–{to} times as much as bare-root plants.',
  'start-fact.sets-choice': 'Usually sold by color alone: names are lost in the trade.',
  'start-fact.sets-cost': 'Costlier than seed, and cheaper than plugs.',
  'learnt.phyllochron':
    'Your leaves come {percent}% {way, select, more {slower} other {faster}} than is usual for the kind{tops, select, later {: tops fall about {days, plural, one {# day} other {# days}} later} earlier {: tops fall about {days, plural, one {# day} other {# days}} sooner} other {}}.',
  'learnt.ripening':
    'Your bulbs ripen {percent}% {way, select, more {slower} other {faster}} than is usual for the kind{tops, select, later {: tops fall about {days, plural, one {# day} other {# days}} later} earlier {: tops fall about {days, plural, one {# day} other {# days}} sooner} other {}}.',
  'learnt.criticalH':
    'To start bulbs, your onions want days about {minutes} minutes {way, select, more {longer} other {shorter}} than is usual for the kind{tops, select, later {: tops fall about {days, plural, one {# day} other {# days}} later} earlier {: tops fall about {days, plural, one {# day} other {# days}} sooner} other {}}.',
  'learnt.lifted': 'Pulled on {date}: what is said of later days is what the crop would have done if left.',
  'standing.means':
    'Tops then {tops, select, same {still fall} other {fall}} around {date}{tops, select, later {, {days, plural, one {# day} other {# days}} later than expected} earlier {, {days, plural, one {# day} other {# days}} sooner than expected} other {}}, on bulbs of about {diameter}{size, select, same {, as expected} other { instead of {expected}}}.',
  'standing.do.late':
    'Bulbs have started, so more leaves no longer help: weed, do not feed, water in dry weather until the tops fall, and reckon with smaller bulbs.',
  'feed.sulphur':
    'Sulfur makes onions sharper. Give it only if a soil test asks for it, and none once bulbs begin.',
  'feed.trays':
    'In trays: begin with soluble fertilizer at {least} to {most} tall. Feeding with 150 to 225 mg of nitrogen a liter grew better seedlings than 75.',
  'feed.caution.manure':
    'Raw manure: dig it in at least 120 days before you pull onions, or use it composted.',
  'app.feed': 'Fertilizer',
  'app.feed.product': 'Fertilizer you use',
  'feed.table': 'Feedings',
  'feed.lead.feeds':
    '{place}: give {crop} {count, plural, one {one feeding} other {# feedings}} of {product}{evenly, select, yes {, {rate} each} one {, {rate},} other {, {rate} in all}}{count, plural, one { around {first}} other {, from about {first} to {last}}}, and nothing once bulbs begin.',
  'feed.lead.leafy':
    '{place}: {crop} make no bulbs in the years tried. For leaves, {count, plural, one {one feeding} other {# feedings}} of {product} will do, {rate} in all.',
  'feed.lead.bed-gives': '{place}: {crop} need no fertilizer: the bed gives all the nitrogen they want.',
  'feed.lead.fed': '{place}: {crop} have had all the fertilizer they want.',
  'feed.lead.no-time': '{place}: {crop} have no use for fertilizer: bulbs may begin before it is taken up.',
  'help.feed':
    'How much nitrogen a crop asks for over what its bed gives, in feedings of your own fertilizer, and when to stop.',
} as const;

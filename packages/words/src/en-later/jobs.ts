/** Work on a crop: what to do, when and why; codes and values come from the engine. */
export const jobs = {
  'job.when.today': 'today',
  'job.when.on': 'on {date}',
  'job.when.now': 'now ({range})',
  'job.when.about': 'about {date} ({range})',
  'job.state.gone-by': '{name}: due about {date} ({range}), gone by.',
  'job.state.done': '{name}: done.',
  'job.state.left-out': '{name}: left out.',

  'job.event': '{job}: {crop}',
  'job.source': 'Source: {source}.',

  'job-name.sow': 'Sow',
  'job-name.prick-out': 'Prick out',
  'job-name.trim': 'Trim the tops',
  'job-name.harden': 'Harden off',
  'job-name.plant': 'Plant',
  'job-name.weed': 'Weed',
  'job-name.thin': 'Thin',
  'job-name.feed': 'Feed',
  'job-name.feed-stop': 'Stop feeding',
  'job-name.water': 'Water',
  'job-name.water-stop': 'Stop watering',
  'job-name.watch-onion-fly': 'Look for onion fly',
  'job-name.watch-seedcorn-fly': 'Look for bean seed fly',
  'job-name.watch-thrips': 'Look for thrips',
  'job-name.watch-mildew': 'Look for downy mildew',
  'job-name.check-tops': 'Look at the tops',
  'job-name.lift': 'Lift',
  'job-name.lift.pull-green': 'Pull green',
  'job-name.dry': 'Dry off',
  'job-name.clean': 'Clean',
  'job-name.store': 'Store',
  'job-name.check-store': 'Look through the store',
  'job-name.flight': '{name}, flight {flight}',
  'job-name.numbered': '{name} ({number})',

  'job.sow':
    'Sow {tray, select, yes {in trays } other {}}{when}, {depthMm} deep: it is up about {upDay}{tray, select, yes {, goes out about {plantDay}} other {}}, and has about {leaves, plural, one {# leaf} other {# leaves}} when bulbs start about {onsetDay}; each can be a ring.',
  'job.sow-leaves':
    'Sow {tray, select, yes {in trays } other {}}{when}, {depthMm} deep: it is up about {upDay}, and no bulbs start in most years.',
  'job.sow-never-up':
    'Sow {when}, {depthMm} deep, and expect little: in most years the seed does not come up.',
  'job.prick-out':
    'Prick seedlings out {when}, if they stand crowded: they were due up about {upDay}, and two to three weeks later they want room.',
  'job.trim':
    'Trim tops to about 100 mm {when}, once they reach 125 mm: seedlings stay stout until they go out about {plantDay}.',
  'job.harden':
    'Harden seedlings off {when}, outdoors longer each day: they are due out about {plantDay}, and 7 to 10 days make them tough.',
  'job.plant-ready':
    'Plant out {when}, {depthMm} deep: seedlings have about {madeLeaves, number} leaves or {weeks} weeks behind them by then, and the bed is at {bedTempC} or more.',
  'job.plant':
    'Plant {when}, {depthMm} deep: about {leaves, plural, one {# leaf is} other {# leaves are}} made from then until bulbs start about {onsetDay}, and each can be a ring.',
  'job.plant-leaves': 'Plant {when}, {depthMm} deep: leaves will come of it, but in most years no bulbs.',
  'job.weed':
    'Keep the bed free of weeds {when}: what weeds take before bulbs start, about {untilDay}, is not made good, and left for eight weeks they took {percent}% of a crop.',
  'job.weed-leaves':
    'Keep the bed free of weeds {when}: left for eight weeks they took {percent}% of a crop.',
  'job.thin':
    'Pull every other plant as a spring onion {when}: plants have {leaves, plural, one {# leaf} other {# leaves}} by then, and those that stay need the room before bulbs start about {onsetDay}.',
  'job.feed-ground':
    'Rake in {gramsPerM2}{bed, select, yes {, {gramsForBed} for the bed,} other {}} of {product} {when}, before the crop goes in: leaves make the bulbs, and they are fed before {onsetDay}, when bulbs start.',
  'job.feed-ground-leaves':
    'Rake in {gramsPerM2}{bed, select, yes {, {gramsForBed} for the bed,} other {}} of {product} {when}, before the crop goes in.',
  'job.feed':
    'Feed {gramsPerM2}{bed, select, yes {, {gramsForBed} for the bed,} other {}} of {product} {when}: {leaves, plural, one {# leaf stands} other {# leaves stand}} then and bulbs start about {onsetDay}; nitrogen after that makes thick necks.',
  'job.feed-leaves':
    'Feed {gramsPerM2}{bed, select, yes {, {gramsForBed} for the bed,} other {}} of {product} {when}: {leaves, plural, one {# leaf stands} other {# leaves stand}} then.',
  'job.feed-stop':
    'Give no more nitrogen from {bestDay} on: bulbs may start by then ({onsetDay} in a middling year), and later feed makes thick necks that do not keep.',
  'job.water-now':
    'Water {when}, {litresPerM2}{bed, select, yes {, {litresForBed} for the bed} other {}}{hose, select, yes { in {minutes, plural, one {# minute} other {# minutes}}} other {}}: the bed lacks {depletionMm} of water, and onions feel it from {readilyAvailableMm} on.',
  'job.water-next':
    'Feel the bed {when} and water it if it is dry: unless rain comes, it asks for water by {untilDay} {share}.',
  'job.water-stop':
    'Stop watering {when}: tops go over about {fallDay}, and water after that brings rot into the store.',
  'job.onion-fly':
    'Keep net or fleece closed against onion fly {when}, and pull plants that wilt: flight {flight} comes at {degreeDaysC}, here about {flightDay}.',
  'job.seedcorn-fly':
    'Keep net or fleece closed against bean seed fly {when}: it eats seed and seedlings, and flight {flight} is at its height at {degreeDaysC}, here about {flightDay}.',
  'job.thrips':
    'Look between the youngest leaves for thrips {when}: a new generation comes every {generationDays, plural, one {# day} other {# days}} by then, and they harm most as bulbs start, about {onsetDay}.',
  'job.mildew':
    'Look for grey fur on leaves, downy mildew, {when}: cool, wet days that suit it come {share} about {spellDay}, and spots show 10 to 16 days later.',
  'job.check-tops':
    'Look at the tops twice a week {when}: they go over about {fallDay}, and the first in ten tells that the bed is ripening.',
  'job.tops-over':
    'Lift {when}, once more than half the tops are over: they go over about {fallDay}{some, select, yes {, {share}} other {}}, and left three weeks longer more of them rot.',
  'job.tops-seen':
    'Lift {when}, in dry weather: on {seenDay} tops were over on {topsPlantShare}, and left three weeks after half of them more bulbs rot.',
  'job.lift-before-rain':
    'Harvest {when}, before the rain if you can: tops are down on about {topsPlantShare}, and about {rainMm} may fall in ten days.',
  'job.lift-unripe':
    'Lift {when}, whatever the tops do: bulbs start about {onsetDay}, but below {restTempC} they gain no more; eat the thick-necked ones first.',
  'job.pull-green':
    'Pull these as spring onions {when}: they have {leaves, plural, one {# leaf} other {# leaves}} by then, and in most years no bulbs start.',
  'job.lifted': 'Lift: lifted on {liftedDay}.',
  'job.dry':
    'Dry bulbs off {when}, warm and airy and out of the rain: lifted about {liftDay}, they take {fromDays} to {toDays} days until necks are tight.',
  'job.dry-unripe':
    'Dry bulbs off {when} as well as they will: lifted about {liftDay} with thick necks, they do not keep; eat them first.',
  'job.clean':
    'Clean {when}, cutting tops and roots once necks are dry right through: {days, plural, one {# day} other {# days}} after lifting about {liftDay} they mostly are.',
  'job.store':
    'Take sound bulbs to a dry, cool, airy store {when}: lifted about {liftDay}, they are cured by then.',
  'job.check-store':
    'Look through the store {when} and take out what is soft or sprouting: in your store fewer than half are sound from about {lastsDay} on.',

  'job-caution.treated-seed': 'Treated seed and sets are not food, nor are young plants grown from them.',
  'job-caution.white-rot':
    'Plant no onions where white rot was ever seen, and none from ground that may have had it.',
  'job-caution.lamps': 'Keep lamps, heat mats and their plugs away from water.',
  'job-caution.fertiliser':
    'Keep to the label, wear gloves, do not breathe the dust, and keep meals and bags from pets and children.',
  'job-caution.raw-manure': 'Raw manure goes in at least 120 days before onions are eaten.',
  'job-caution.hose-bans': 'Keep to local rules on watering.',
  'job-caution.waste-water': 'Give no waste water to onions that are eaten raw.',
  'job-caution.labels':
    'If you spray at all, the label is the law: crop, rate, days before lifting, bees. Ask local advice first.',
  'job-caution.nets': 'Hold nets tight to the ground, so that birds and hedgehogs are not caught.',
  'job-caution.forecast': 'A forecast is no promise: look at the sky too.',
  'job-caution.heaters':
    'Never burn charcoal, gas or paraffin to dry bulbs in a closed room; keep electric heaters clear of dry tops.',
  'job-caution.dust': 'Clean outdoors, or with a mask where dust and mould trouble you.',
  'job-caution.pets': 'Onions poison dogs, cats and cattle: keep skins and waste from them.',
  'job-caution.lofts': 'Mind ladders and what a loft can bear; carry small loads.',

  'job-source.common-practice': 'common practice, no source',
  'job-source.memory': 'memory, no source',
  'unit.degree-days-c': '{value} degree-days (°C)',
  'unit.degree-days-f': '{value} degree-days (°F)',
} as const;

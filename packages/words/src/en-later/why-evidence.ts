/** What speaks for a cause or against it, with its numbers. */
export const whyEvidence = {
  'why.evidence.run-with-and-without':
    'Run again as you told it, this shows {withTenths}; without this cause, {withoutTenths}.',
  'why.evidence.run-only-if':
    'Run again as you told it, this shows {asToldTenths}; with this cause put in, {ifTenths}.',
  'why.evidence.run-no-matter':
    'Run again, this shows {withTenths} with this cause, and {withoutTenths} without it: it makes no difference.',
  'why.evidence.longest-day':
    'On the longest day the sun is up for {longestH}; this kind wants about {neededH} before bulbs begin.',
  'why.evidence.needed-day-comes': 'The days of {neededH} that this kind wants come about {day}.',
  'why.evidence.bulbs-began':
    'Bulbs began about {day}, with about {leaves, plural, one {# leaf} other {# leaves}} made.',
  'why.evidence.never-began':
    'No bulb begins then; about {leaves, plural, one {# leaf is} other {# leaves are}} made.',
  'why.evidence.leaves-if-earlier':
    'Started {weeks, plural, one {# week} other {# weeks}} earlier, they have about {leaves, plural, one {# leaf} other {# leaves}} when bulbs begin, and bulbs reach {mm}.',
  'why.evidence.bulbs-without': 'Without this cause bulbs reach about {mm} across.',
  'why.evidence.size-without': 'Without this cause bulbs reach about {mm} across; with it, {asToldMm}.',
  'why.evidence.ripens-without': 'Without this cause tops are down about {day}; with it they mostly stand.',
  'why.evidence.cold-met':
    'About {weeks, plural, one {# week} other {# weeks}} of cold came before bulbs began. Flowering: {plantsTenths}.',
  'why.evidence.flowering-without': 'Flowering with this cause: {asToldTenths}; without it: {plantsTenths}.',
  'why.evidence.set-size':
    'Flowering from sets of {mm}: {plantsTenths}; from sets of {smallMm}: {smallTenths}.',
  'why.evidence.sets-not-said':
    'You did not say what the sets were like. If they were like that, flowering: {plantsTenths}.',
  'why.evidence.winter-losses': 'Killed by winter: {plantsTenths}; the coldest comes to about {coldestC}.',
  'why.evidence.frost-lifted': 'Heaved out of the ground by frost: {plantsTenths}.',
  'why.evidence.thirsty-days':
    'The bed was short of water on about {days, plural, one {# day} other {# days}}.',
  'why.evidence.mean-warmth': 'The weeks that matter have a mean of {tempC}.',
  'why.evidence.plants-per-m2': 'They stood at {perM2}; usual are {usualPerM2}.',
  'why.evidence.sun-hours':
    'The bed gets about {hours, plural, one {# hour} other {# hours}} of sun on a clear midsummer day.',
  'why.evidence.at-home': '{type} onions are the ones grown at your latitude.',
  'why.evidence.soil-at-start':
    'The bed is at about {tempC} in the two weeks from the start. Of the seed, there comes up: {upTenths}.',
  'why.evidence.store-air': 'The store has about {tempC} and {humidityPct}% humidity.',
  'why.evidence.store-coldest': 'The store gets as cold as {tempC}.',
  'why.evidence.keeps-usually':
    'This kind keeps {months} months; these were kept for {keptMonths, plural, one {# month} other {# months}}.',
  'why.evidence.bulbs-lost':
    'Lost by then in such a store: {lossTenths}; without this cause: {withoutTenths}.',
  'why.evidence.flies-came': 'Onion flies come about {day}, when these stood in the bed.',
  'why.evidence.wet-spells': 'Wet spells that suit it come {tenths}.',
  'why.evidence.warm-soil': 'The soil is at about {tempC} in those weeks, which suits it.',
  'why.evidence.hot-and-dry': 'Those weeks are hot and dry, with a mean of {tempC} and {rainMm} of rain.',
  'why.evidence.drying-took':
    'Outdoors, drying takes about {days, plural, one {# day} other {# days}} at that time of year.',
  'why.evidence.goes-with': '“{symptom}” often comes with it.',
  'why.evidence.not-with': '“{symptom}” hardly ever comes with it.',
  'why.evidence.said': '{question} “{answer}”, you said.',
  'why.evidence.plan-says.water': 'What you said of watering does not go with it.',
  'why.evidence.plan-says.density': 'What you said of the distance between plants does not go with it.',
  'why.evidence.plan-says.sun': 'What you said of the sun on the bed does not go with it.',
  'why.evidence.plan-says.set-size': 'What you said of the size of the sets does not go with it.',
  'why.evidence.plan-says.set-store': 'What you said of how the sets were stored does not go with it.',
  'why.evidence.plan-says.no-sets': 'These were not grown from sets ({start}).',
} as const;

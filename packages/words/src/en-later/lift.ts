/** Whether to lift today, and how bulbs dry. */
export const lift = {
  'lift.title': 'Lift and dry',
  'lift.tops.none': 'none of the tops have fallen',
  'lift.tops.few': 'few tops have fallen',
  'lift.tops.some': 'about {tenths} in 10 tops have fallen',
  'lift.tops.most': 'nearly all tops have fallen',
  'lift.ahead': '{wet, select, wet {wet} some {showery} other {dry}}',
  'lift.lead.lift': 'Harvest now, on a dry day: {tops}.',
  'lift.lead.look-lift':
    'Look at them today: by the reckoning, {tops}. If six in ten or more are down, harvest on a dry day.',
  'lift.lead.look-before-rain':
    'Look at them today, wet days are ahead: by the reckoning, {tops}. If any are down, harvest before the rain.',
  'lift.lead.wait': 'Wait: {tops}, and the days ahead are {ahead}. The best day to harvest is about {date}.',
  'lift.lead.before-rain': 'Harvest before the rain: {tops}, and the days ahead are wet.',
  'lift.lead.too-early': 'Too early to harvest: {tops}. Look again as the first ones fall.',
  'lift.lead.lifted': 'Out of the ground on {date}: dry them now until necks are tight.',
  'lift.signs':
    'Go by your hands first: necks feel soft, tops bend over by themselves, skins begin to rustle. Do not bend tops down.',
  'lift.tops-from.seen': 'That share is what you noted, carried on to today.',
  'lift.tops-from.run':
    'That share is worked out, not seen: look at some plants, and note the share whose tops are down.',
  'lift.rain.forecast': 'Rain in the next ten days: about {rain}, by the weather kept here and its forecast.',
  'lift.rain.usual':
    'Rain in the next ten days: about {rain}, as is usual here; no forecast is kept, so look at one.',
  'lift.loss.wait':
    'Harvested today they lose about {today} % of what they could be worth: bulbs still swell and necks stay open. Harvested about {date}, about {best} %.',
  'lift.loss.now':
    'Harvested today they lose about {today} % of what they could be worth: some still grow, some have stood a while. Two or three weeks after half the tops have fallen, more rot, and skins split.',
  'lift.kitchen':
    'To the kitchen first: {thick, select, no {} other {thick necks, {thick}; }}{bolted, select, no {} other {flower stalks, {bolted}; }}and all that are bruised.',
  'lift.dry.outdoors': 'Outdoors: {days}.',
  'lift.dry.under-roof': 'Under a roof, airy: {days}.',
  'lift.dry.warm-room': 'In a warm room, 22 to 25 °C, with moving air: {days}.',
  'lift.dry.warm-room-us': 'In a warm room, 72 to 77 °F, with moving air: {days}.',
  'lift.dry.days': 'about {days, plural, one {# day} other {# days}}, {range}; {loss} % lighter when dry',
  'lift.dry.at-least':
    'about {days, plural, one {# day} other {# days}}, and in wet years not dry within {most} days; {loss} % lighter when dry',
  'lift.dry.never': 'they mostly do not get dry there within {most, plural, one {# day} other {# days}}',
  'lift.dry.done': 'Dry means: the neck is tight and no longer slips between finger and thumb, skins rustle.',
  'lift.wet':
    'In wet weather dry them under cover: one layer on racks or nets, tops on, with air moving below and above.',
  'lift.caution.heater':
    'Never run charcoal, gas or oil heaters or an engine in a closed room: carbon monoxide kills. Keep electric heaters and fans away from dry tops and water, and do not leave them alone.',
  'lift.caution.dust': 'Dry skins raise dust and spores: clean outdoors, or with a mask.',
} as const;

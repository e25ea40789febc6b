/** Why an answer is what it is; codes and values come from the engine. */
export const reasons = {
  'reason.good':
    'About {leaves, plural, one {# leaf is} other {# leaves are}} made by the time the sun is up for {sunUpH} and bulbs start: enough for a bulb {diameterMm} across.',
  'reason.small-few-leaves':
    'Bulbs start on about {leaves, plural, one {# leaf} other {# leaves}}, and about 13 make a full-sized bulb: these stay near {diameterMm} across.',
  'reason.small-season':
    'Leaves enough, but the weeks in which bulbs fill are too short, too hot or too dull: bulbs reach {diameterMm} across, well under the best of this place.',
  'reason.days-too-short':
    'On the longest day here the sun is up for {longestSunUpH}, and {type} onions want about {neededSunUpH} before bulbs start.',
  'reason.never-up': 'The seed seldom comes up: the bed is too cold or too hot for it.',
  'reason.too-late':
    'Plants are not yet big enough to bulb while days are long, and stay green when days shorten.',
  'reason.winter-cold':
    'Hard frost kills {killedTenths, plural, =0 {a few plants} =10 {nearly every plant} one {about # plant in 10} other {about # plants in 10}} before spring.',
  'reason.winter-lifted':
    'Plants go into winter too small to hold on: frost heaves the wet ground and lifts out {killedTenths, plural, =0 {a few plants} =10 {nearly every plant} one {about # plant in 10} other {about # plants in 10}}. Sow earlier, or press them back and cover them.',
  'reason.bolts-sets':
    'Sets remember the cold: {boltedTenths, plural, =0 {a few plants run} =10 {nearly every plant runs} one {about # plant in 10 runs} other {about # plants in 10 run}} to flower. Smaller sets, or sets stored warm, do so less.',
  'reason.bolts-cold':
    'Plants are already large when the cold comes, and take it for a winter passed: {boltedTenths, plural, =0 {a few run} =10 {nearly all run} one {about # in 10 runs} other {about # in 10 run}} to flower.',
  'reason.unripe-autumn': 'Bulbs start, but the warm weeks end before they ripen: necks stay thick.',
  'reason.window':
    'Started then, about {leaves, plural, one {# leaf is} other {# leaves are}} made by the time the sun is up for {sunUpH} and bulbs start.',
  'reason.no-window-good': 'The weeks that end well are too few in a row, or nobody starts in them.',
  'reason.no-window-small':
    'Even from the best week bulbs stay near {diameterMm} across. Another way of starting may do better; so may bunching onions, shallots, potato onions or leeks.',
  'reason.no-window-no-bulb':
    'From no week do bulbs start: on the longest day the sun is up for {longestSunUpH}, and this kind wants about {neededSunUpH} while the plants are big and warm enough. Grow bunching onions, shallots, potato onions or leeks instead.',
  'reason.no-window-not-ripe':
    'From no week do bulbs ripen before the warm weeks end. Another way of starting may do better; so may bunching onions, shallots, potato onions or leeks.',
  'reason.no-window-bolts':
    'From every week that gives bulbs too many plants run to flower. Another way of starting may do better; so may bunching onions, shallots, potato onions or leeks.',
  'reason.no-window-winter-killed':
    'Winter kills too many plants from every week that would be early enough. Another way of starting may do better; so may bunching onions, shallots, potato onions or leeks.',
} as const;

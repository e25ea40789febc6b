/** Which onion, started how. */
export const which = {
  'help.which': 'Which onions do best here, each at its best start: kinds first, names inside.',
  'help.which-start': 'only those started so: direct-seed, raised-seedlings, bought-transplants or sets',
  'help.keeps': 'only those that keep at least so many months',
  'help.mild': 'only mild ones',
  'help.have': 'only these onions, such as "Copra, Walla Walla"; with one, its ways of starting side by side',
  'help.limit': 'how many to show (default: 20)',

  'error.no-such-onion':
    'No onion in the list is all of that: {filters}. Leave one out; `neckfall cultivars` lists all.',

  'which.names': 'Names: {names}; the same as far as is known.',
  'which.name': 'By name: {names}.',
  'which.elsewhere': '{count} from elsewhere',
  'which.no-name-here':
    'Which onions are sold here ({country}) is not known: these names are from elsewhere. Ask for the kind, not the name.',
  'which.others-here':
    'As far as we know {told, plural, one {it is not} other {none of these is}} sold or grown here ({country}); of the same kind {names} {count, plural, one {is} other {are}}.',
  'which.kind-not-here':
    'As far as we know {told, plural, one {it is not} other {none of these is}} sold or grown here ({country}): ask for the kind.',
  'which.kinds-not-here':
    'As far as we know no name of these kinds is sold or grown here ({country}): {kinds}. Ask for the kind.',
  'which.might': 'Some by name might: {names}. Try a few before you count on them.',
  'which.alike': 'Just as good here: {kinds}.',
  'which.table': 'Kinds, each at its best start',
  'which.column.rank': 'Rank',
  'which.column.onion': 'Onion',
  'which.column.start': 'Start',
  'which.column.neck-fall': 'Tops go over',
  'which.column.diameter': 'Bulb across',
  'which.column.good': 'Good bulbs',
  'which.column.flower': 'Run to flower',
  'which.column.keeps': 'Keeps',
  'which.by-name': 'By name; those on one line are the same as far as is known',
  'which.line': '{rank}. {kind}: {names} ({months} months)',
  'which.kind': '{type}, {start}',
  'which.more':
    '{more, plural, one {# more was} other {# more were}} considered and came after these; --limit shows more.',
  'which.none-else': 'Nothing else of the {count} that were considered makes good bulbs here.',
  'which.starts': 'Ways to start {name}',
  'which.column.time': 'In the ground and tray',
  'which.column.choice': 'Choice',
  'which.column.losses': 'Losses',
  'which.column.work': 'Work',
  'which.good-years': '{tenths} years in 10',
  'which.in-flower': '{tenths} in 10',
  'which.weeks': '{weeks, plural, one {# week} other {# weeks}}',
  'which.not-sold': '{start}: not on sale as far as is known.',
  'which.known-of': '{start}. {facts}',
  'which.ranking':
    'Ranked by the share of good years, years of small bulbs counting {small}, less {flower} of the share of plants that run to flower; a full-sized bulb adds up to {size}, a hard keeper up to {keeping}; taken off are care beyond five months ({careYear} a year), thinning and trays, beds too cold to work, tops that go over in cool weather, and what shops seldom have: sets of other than long-day onions and kinds that winter, and onions of another latitude. What growers of the district do, where that is published, adds {practice}. What is known of one onion counts half, what is usual for its kind the other half. Those no further apart than so few years can tell share a rank.',
  'which.order':
    'In the order of how often bulbs come good, then of their size, their keeping and the work; among equals what growers of the district do comes first.',
  'which.assumed-catalogue':
    'Onions tried: {count, plural, one {#} other {#}} by name, {kinds, plural, one {# that differs} other {# that differ}} as far as is known; not all are on sale everywhere.',
  'which.assumed-day': 'Starts from {date} on, for a year, week by week.',

  'warning.which-sets':
    'Of sets of {size} that were {store}, {plants} run to flower. Plant sets under {small} across, or such as were heat-treated, and eat large ones green.',

  'reason.choice-chance': 'Good bulbs come {goodYearShare}; with the next best, {next}, {nextGoodYearShare}.',
  'reason.choice-flower':
    'Fewer run to flower: {boltedPlantShare}; with the next best, {next}, {nextBoltedPlantShare}.',
  'reason.choice-size':
    'Bulbs come nearer to full size, {diameterMm}, than those of the next best, {next}: {nextDiameterMm}.',
  'reason.choice-keeping':
    'Keeps about {months, plural, one {# month} other {# months}}; the next best, {next}, about {nextMonths}.',
  'reason.choice-time':
    'Ready in {weeks, plural, one {# week} other {# weeks}}; the next best, {next}, in {nextWeeks}.',
  'reason.choice-work': 'Less work than the next best, {next}.',
  'reason.choice-cold-bed':
    'Goes into a bed that can be worked; the next best, {next}, would have to start in the cold.',
  'reason.choice-drying':
    'Tops go over while it is warm enough to dry bulbs; those of the next best, {next}, do so in cooler weather.',
  'reason.choice-practice': 'What growers of the district do; as good as the next best, {next}.',
  'reason.choice-scarce': 'Easier to come by than the next best, {next}.',
  'reason.choice-usual': 'A little better all round than the next best, {next}.',
  'reason.choice-last': 'Good bulbs come {goodYearShare}; no other kind comes after.',
} as const;

/** What a season in the bed has told of its plants, and how it stands. */
export const learnt = {
  'learnt.phyllochron':
    'Your leaves come {percent}% {way, select, more {slower} other {faster}} than is usual for the kind{tops, select, later {: tops go over about {days, plural, one {# day} other {# days}} later} earlier {: tops go over about {days, plural, one {# day} other {# days}} sooner} other {}}.',
  'learnt.ripening':
    'Your bulbs ripen {percent}% {way, select, more {slower} other {faster}} than is usual for the kind{tops, select, later {: tops go over about {days, plural, one {# day} other {# days}} later} earlier {: tops go over about {days, plural, one {# day} other {# days}} sooner} other {}}.',
  'learnt.criticalH':
    'To start bulbs, your onions want days about {minutes} minutes {way, select, more {longer} other {shorter}} than is usual for the kind{tops, select, later {: tops go over about {days, plural, one {# day} other {# days}} later} earlier {: tops go over about {days, plural, one {# day} other {# days}} sooner} other {}}.',
  'learnt.growth':
    'Your plants grow {percent}% {way, select, more {more} other {less}} than is usual for the kind.',
  'learnt.as-usual': 'Nothing you noted is out of the ordinary for the kind so far.',
  'learnt.before': 'What earlier plantings of this onion showed here is taken into account.',
  'learnt.later':
    '{count, plural, one {One note of after {date} is left out} other {# notes of after {date} are left out}}.',
  'learnt.lifted': 'Lifted on {date}: what is said of later days is what the crop would have done if left.',
  'standing.see':
    '{when, select, now {You should see {expected, select, 1 {1 green leaf} other {{expected} green leaves}} on a plant now; you have {seen}} other {On {date} there should have been {expected, select, 1 {1 green leaf} other {{expected} green leaves}} on a plant; you counted {seen}}}{stand, select, behind {: {within, select, true {within that, but about {days, plural, one {# day} other {# days}} behind a middling crop} other {about {days, plural, one {# day} other {# days}} behind}}} ahead {: {within, select, true {within that, but about {days, plural, one {# day} other {# days}} ahead of a middling crop} other {about {days, plural, one {# day} other {# days}} ahead}}} beyond {: more than is usual then or later} on {, as it should be} other {}}.',
  'standing.means':
    'Tops then {tops, select, same {still go over} other {go over}} around {date}{tops, select, later {, {days, plural, one {# day} other {# days}} later than expected} earlier {, {days, plural, one {# day} other {# days}} sooner than expected} other {}}, on bulbs of about {diameter}{size, select, same {, as expected} other { instead of {expected}}}.',
  'standing.do.leaves':
    'Bulbs start in about {days, plural, one {# day} other {# days}}, around {date}, and every leaf made by then makes them larger: keep the bed weeded, {water, select, rain {water it if it dries out} other {keep it watered}}, and if you feed, do so now and not later, as its label says.',
  'standing.do.wait':
    'Bulbs start around {date}, too soon for feed to bring more leaves: keep the bed weeded and moist, and wait.',
  'standing.do.late':
    'Bulbs have started, so more leaves no longer help: weed, do not feed, water in dry weather until the tops go over, and reckon with smaller bulbs.',
} as const;

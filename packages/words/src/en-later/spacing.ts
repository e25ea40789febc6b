/** What a spacing takes and gives, told while it is changed. */
export const spacing = {
  'app.spacing.together': 'Plants together in one place',
  'app.spacing.together.hint': 'One; or three or four as a clump, which push apart as they swell.',
  'app.spacing.wanted': 'How many in all',
  'app.spacing.seed-age': 'The seed',
  'app.spacing.seed-age.unsaid': 'not said',
  'app.spacing.seed-age.fresh': 'is this year’s',
  'app.spacing.seed-age.one-year': 'is a year old',
  'app.spacing.seed-age.two-years': 'is two years old',
  'app.spacing.takes':
    '{plants, plural, one {# plant takes} other {# plants take}} {row} of row{places, select, singly {} other {, in {places} places}}, on {area} of bed.',
  'app.spacing.seeds': 'Sow {seeds} seeds for that ({mass}), and thin where they stand too close.',
  'app.spacing.seeds-each':
    'Sow {each} seeds in each of {places} {where, select, cells {cells} other {holes}}: {seeds} seeds in all ({mass}).',
  'app.spacing.sets':
    'That is {sets, plural, one {# set} other {# sets}}: {mass} where they are {size} across.',
  'app.spacing.plants':
    'That is {plants, plural, one {# plant} other {# plants}} to buy: {most, plural, one {one bundle} other {{bundles} bundles}}.',
  'app.spacing.reckoned': 'Reckoned with: {how}.',
  'app.spacing.seeds.with':
    '{alive} of 100 seeds alive ({age, select, unsaid {US law asks for 70, 90 from memory} other {from memory}}), {up} of 100 of those up in a warm {where, select, tray {tray} other {bed}} (from memory), {gram} seeds to a gram (a seed producer)',
  'app.spacing.sets.with': 'sets a little longer than wide, 2 to 3 g at 16 mm (trials at Assiut); none lost',
  'app.spacing.plants.with': 'bundles of {plants} plants (Minnesota master gardeners); none lost',
  'app.spacing.gives':
    'Bulbs come to {across} in a middling year, {range} in 8 years of 10, and these plants to {crop} of onions worth keeping.',
  'app.spacing.wider':
    'Wider, at {apart} in the row, they come to {across} and the bed to {yield}, rather than {now}.',
  'app.spacing.closer': 'Closer, at {apart}, they come to {across} and the bed to {yield}.',
  'app.spacing.no-bulbs': 'No bulbs come of this crop, however far apart its plants stand.',
  'app.spacing.beyond':
    'No season is worked out for plants so far apart or so close; the bulbs are those of {density}.',
  'app.spacing.bed-holds':
    '“{bed}” holds {rows, plural, one {one row} other {# rows}} of {each} {together, select, clumps {clumps} other {plants}}: {plants} plants.',
  'app.spacing.fill': 'Fill it: {plants} plants',
} as const;

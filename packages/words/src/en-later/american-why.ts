/** What an American gardener calls otherwise when something went wrong. */
export const americanWhy = {
  'why.eating.no': 'Do not eat those that are spoiled; firm, clean ones beside them are fine.',
  'why.caution.mould-throw-away':
    'Throw soft, wet or moldy bulbs away whole: mold runs further than you see, and some kinds make poison.',
  'why.caution.not-on-compost':
    'Put sick plants and bulbs in the trash, not on the pile of yard waste, where what ails them lives on.',
  'why.caution.pesticide-local-rules':
    'Before you spray anything, ask your extension office what is allowed. Local rules, licensed advice and the label decide, down to the days before harvest.',
  'why.change.covered': '{cover, select, tunnel {in a tunnel} other {under row cover}}',
  'why.next.covered': 'Next year grow them {cover, select, tunnel {in a tunnel} other {under row cover}}',
  'why.called.out-of-the-ground':
    'out of the soil, heaved, heaved out, frost heave, frost heaved, pushed out, pushed up, popped out, popped up, raised by frost, on top of the soil, lying on top, lying on the soil, roots in the air, sets came out',
  'why.symptom.grey-fur': 'Gray fuzz on the leaves',
  'why.symptom-note.grey-fur':
    'A gray or violet down on pale patches, easiest to see in the dew of a morning. Leaves then fold and die.',
  'why.called.grey-fur':
    'downy mildew, mildew, mildewed, gray fur on the leaves, gray fuzz, gray down, gray mold on leaves, mold on leaves, moldy leaves, furry leaves, fuzzy leaves, fuzz on the leaves, fur on the leaves, purple fur, violet fur, powdery leaves',
  'why.called.no-bulb':
    'no bulbs, all leaves, all leaf, all tops, all top no bulb, only leaves, just leaves, only tops, only green, leaves no bulb, leaves but no bulbs, did not bulb, didn’t bulb, never bulbed, won’t bulb, not bulbing, failed to bulb, bulbs did not form, bulbs never formed, bulbs didn’t form, never made bulbs, did not make bulbs, no swelling, like green onions, like scallions, scallions, like leeks',
  'why.called.tops-stood':
    'tops stood, tops stayed up, tops still up, tops still standing, tops did not fall, tops didn’t fall, tops won’t fall, never fell over, did not fall over, never flopped, tops never flopped, not ripe, unripe, never ripened, did not ripen, didn’t ripen, never ripe, won’t ripen, never finished, not mature, immature, never matured, did not die down, never died down, still green, still growing, stayed green',
  'why.called.fell-early':
    'fell too early, fell too soon, fell over, fallen over, fell over early, fell over too soon, tops fell over, tops fell too early, flopped early, tops fell too soon, tops down early, down early, died down early, died back early, ripe too early, ripened early, ripened too soon, ripe too soon, finished early, finished too soon, matured early',
  'why.called.white-fluff':
    'white rot, white mold, white mold on roots, white moldy roots, white fungus, white fur, white fuzz, white fluff, fluffy roots, fluff on the roots, fluffy base, white fluff at the base, cottony, cotton wool, moldy roots, mold on the roots, mold in the ground',
  'why.symptom-note.white-fluff':
    'Cottony growth at the base in the ground, often with black grains in it. Fluff at the neck, in storage, is neck rot.',
  'why.symptom-note.neck-rot':
    'Weeks after harvest the neck sinks in and browns, with gray mold that works down. White fluff on roots is white rot.',
  'why.called.neck-rot':
    'neck rot, rotten neck, rotted neck, rotten at the neck, rotting neck, neck rotted, neck rotting, soft neck, brown neck, moldy neck, mold at the neck, gray mold, gray mold at the neck, fluff at the neck, botrytis, rot from the top, rotted from the top',
  'why.symptom.rotted-in-store': 'Rotted in storage',
  'why.symptom-note.rotted-in-store':
    'Sound when brought in, then soft, wet or moldy, from the base or between the scales, not from the neck.',
  'why.called.rotted-in-store':
    'rotten in storage, rotting in storage, rot in storage, storage rot, went soft in storage, rotted in the shed, rotted in the cellar, rotted in the basement, rotted in the garage, went bad, gone bad, going bad, spoiled, moldy, mold, went moldy, moldy in storage, did not keep, didn’t keep, do not keep, don’t keep, won’t keep, did not store, did not last, didn’t last',
  'why.called.black-dust':
    'black mold, black powder, black soot, soot, sooty, black spores, black spots, black stuff, black marks, black skin, black streaks, black patches, smudge, dusty black, black dust',
  'why.symptom.sprouted': 'Sprouted in storage',
  'why.symptom-note.glassy':
    'Scales look gray and see-through, as if soaked, mostly the outer ones and all round.',
  'why.called.glassy':
    'glassy, glass, translucent, see through, transparent, watery scales, water soaked, gray scales, leathery scales, frozen, froze, frozen in storage, froze in storage, frosted, frostbitten, frost damage, freezing, freeze damage',
  'why.rescue.rotted-in-store':
    'Empty the place today and sort out all that is soft, wet or moldy. Dry the firm ones, and put them back loose, cool and airy.',
  'why.cause.warm-store': 'They were stored too warm',
  'why.cause.damp-store': 'They were stored too damp',
  'why.evidence.store-air': 'The place they are stored in has about {tempC} and {humidityPct}% humidity.',
  'why.evidence.store-coldest': 'The place they are stored in gets as cold as {tempC}.',
  'why.evidence.bulbs-lost':
    'Lost by then in such a place: {lossTenths}; without this cause: {withoutTenths}.',
  'why.question.store-warmth': 'How warm was the place they were stored in?',
  'why.cause.frozen-store': 'They froze in storage',
  'why.cause.badly-dried': 'They were stored before they were cured',
  'why.advice.badly-dried':
    'Cure them in one layer, with air above and below, until necks are tight and skins rustle.',
  'why.cause.onion-fly': 'Onion maggots ate them',
  'why.cause.black-mould': 'Black mold grew on them',
  'why.look.downy-mildew':
    'Look early, in the dew: violet to gray down on long pale patches, after cool, wet days.',
  'why.look.neck-rot-mould':
    'Soft brown scales under the neck some weeks after harvest, then gray mold and black crusts.',
  'why.evidence.flies-came': 'Onion maggot flies come about {day}, when these stood in the bed.',
  'why.answer.leaf-marks.grey-down': 'Gray down',
  'app.why.search.hint': 'never bulbed, moldy necks …',
  'app.why.time.store': 'In storage',
  'app.why.noticed': 'When you saw it in storage',
} as const;

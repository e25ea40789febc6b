/**
 * What growers see go wrong: its name, what tells it from its look-alikes, and other words for it, comma between them, each
 * for one symptom alone.
 */
export const whySymptoms = {
  'why.symptom.few-came-up': 'Few came up',
  'why.symptom-note.few-came-up':
    'Gaps from the start: nothing ever showed there. Seedlings that showed and then went are another matter.',
  'why.called.few-came-up':
    'poor germination, bad germination, no germination, did not germinate, didn’t germinate, never germinated, seed did not germinate, did not come up, didn’t come up, never came up, nothing came up, few seedlings, no seedlings, patchy, gappy, gaps, gaps in the row, bare rows, poor stand, uneven emergence, poor emergence, slow to come up',
  'why.symptom.seedlings-toppled': 'Seedlings fell over and died',
  'why.symptom-note.seedlings-toppled':
    'Stems go thin and brown at the soil, then seedlings lie down. Nothing has bitten them.',
  'why.called.seedlings-toppled':
    'damping off, damped off, seedlings fell over, seedlings falling over, seedlings collapsed, seedlings keeled over, seedlings rotted, seedlings died, seedlings dying, seedlings toppled, toppled over',
  'why.symptom.gone-in-a-row': 'Gone in a row',
  'why.symptom-note.gone-in-a-row':
    'Plants that stood vanish one after another along the row: bitten off, pulled out or eaten from below.',
  'why.called.gone-in-a-row':
    'plants vanished, vanished, plants disappeared, disappeared, plants missing, missing plants, plants gone, seedlings gone, seedlings vanished, eaten, eaten off, bitten off, chewed, chewed off, cut off, cut off at the ground, cut off at soil level, cutworm, slugs, birds, pulled out, pulled out by birds',
  'why.symptom.died-in-winter': 'Died in winter',
  'why.symptom-note.died-in-winter':
    'They stood green as winter came, and were brown, limp or gone at its end.',
  'why.called.died-in-winter':
    'winter killed, winterkill, winterkilled, winter losses, killed by frost, killed by winter, frost killed them, died over winter, lost over winter, dead in spring, gone by spring, did not survive the winter, didn’t survive winter, did not overwinter, froze in the ground, frozen in the ground',
  'why.symptom.out-of-the-ground': 'Pushed out of the ground',
  'why.symptom-note.out-of-the-ground':
    'Sets or young plants lie on top, roots and all, and nothing has bitten them.',
  'why.called.out-of-the-ground':
    'out of the soil, heaved, heaved out, frost heave, frost heaved, pushed out, pushed up, popped out, popped up, raised by frost, lifted by frost, on top of the soil, lying on top, lying on the soil, roots in the air, sets came out',
  'why.symptom.dry-tips': 'Dry leaf tips',
  'why.symptom-note.dry-tips':
    'Tips turn brown or white and the leaf behind them stays green: no fur, no rings.',
  'why.called.dry-tips':
    'tipburn, tip burn, brown tips, yellow tips, white tips, dead tips, dying tips, burnt tips, burned tips, scorched tips, withered tips, tips died, tips dried up, tips turned brown, tips going brown, brown leaf tips, tip dieback, dieback, leaf tips dying',
  'why.symptom.silver-streaks': 'Silver streaks on the leaves',
  'why.symptom-note.silver-streaks':
    'Fine pale flecks and streaks, and tiny narrow insects deep between the youngest leaves.',
  'why.called.silver-streaks':
    'thrips, thrips silvering, thrip damage, silver leaves, silvery leaves, silvery, silvered, silvering, silver flecks, white streaks, pale streaks, streaky leaves, streaked leaves, speckled leaves, mottled leaves, tiny insects, thunder flies, thunderflies, bleached leaves',
  'why.symptom.grey-fur': 'Grey fur on the leaves',
  'why.symptom-note.grey-fur':
    'A grey or violet down on pale patches, easiest to see in the dew of a morning. Leaves then fold and die.',
  'why.called.grey-fur':
    'downy mildew, mildew, mildewed, grey fuzz, grey down, grey mould on leaves, mould on leaves, mouldy leaves, furry leaves, fuzzy leaves, fuzz on the leaves, fur on the leaves, purple fur, violet fur, powdery leaves',
  'why.symptom.purple-spots': 'Purple spots with rings',
  'why.symptom-note.purple-spots':
    'Sunken spots, purple inside with paler rings, that run along the leaf. No pale down on them.',
  'why.called.purple-spots':
    'purple blotch, purple blotches, purple patches, purple marks, purple spots on leaves, brown spots, leaf spot, leaf spots, spotted leaves, spots on leaves, ringed spots, target spots',
  'why.symptom.bent-leaves': 'Leaves bent or snapped',
  'why.symptom-note.bent-leaves':
    'Bent all over the bed within a day or two, and the necks below are still firm. With soft necks they may be ripe.',
  'why.called.bent-leaves':
    'bent over, snapped leaves, broken leaves, leaves broke, folded leaves, kinked leaves, blown over, blown down, flattened, laid flat, knocked over, knocked flat, trampled, storm damage, wind damage, hail, hail damage',
  'why.symptom.wilted': 'Wilted or yellow',
  'why.symptom-note.wilted':
    'Whole plants go limp or yellow though the bed is moist. Pull one up and look at its roots.',
  'why.called.wilted':
    'wilting, wilt, limp, hanging leaves, drooping, droopy, flopped, sagging, yellow, yellowed, yellow leaves, yellowing leaves, leaves went yellow, leaves turned yellow, turning yellow, going yellow, went yellow, yellowing, sickly, wilted leaves, wilting leaves',
  'why.symptom.flowered': 'They flowered',
  'why.symptom-note.flowered':
    'A stiff, round, hollow stalk with a bud at its end. Leaves are softer and end in a point.',
  'why.called.flowered':
    'flower, flowering, flowers, in flower, bolted, bolt, bolting, bolters, went to seed, gone to seed, going to seed, go to seed, ran to seed, run to seed, running to seed, ran to flower, run to flower, running to flower, seedstem, seed stem, seed stalk, seedstalk, seed head, seedhead, flower stalk, flower stem, flower head, flower bud, flower stalks, scape, bloomed, blooming, blossomed',
  'why.symptom.no-bulb': 'No bulb, only leaves',
  'why.symptom-note.no-bulb': 'Green and upright to the end, and hardly thicker at the foot than a leek.',
  'why.called.no-bulb':
    'no bulbs, all leaves, all leaf, all tops, all top no bulb, only leaves, just leaves, only tops, only green, only green tops, leaves no bulb, leaves but no bulbs, did not bulb, didn’t bulb, never bulbed, won’t bulb, not bulbing, failed to bulb, bulbs did not form, bulbs never formed, bulbs didn’t form, never made bulbs, did not make bulbs, no swelling, like green onions, like spring onions, like scallions, scallions, like leeks',
  'why.symptom.tops-stood': 'Tops never fell',
  'why.symptom-note.tops-stood':
    'There is a bulb, but necks stay stiff and leaves green as the season ends. Thick necks mostly go with it.',
  'why.called.tops-stood':
    'tops stood, tops stayed up, tops still up, tops still standing, tops did not fall, tops didn’t fall, tops won’t fall, never fell over, did not fall over, never went over, tops never went over, tops did not go over, never flopped, tops never flopped, not ripe, unripe, never ripened, did not ripen, didn’t ripen, never ripe, won’t ripen, never finished, not mature, immature, never matured, did not die down, never died down, still green, still growing, stayed green',
  'why.symptom.fell-early': 'Tops fell early',
  'why.symptom-note.fell-early':
    'Necks went soft and leaves lay down weeks before you looked for it, on bulbs that could have grown on.',
  'why.called.fell-early':
    'fell too early, fell too soon, fell over, fallen over, fell over early, fell over too soon, tops fell over, tops fell too early, tops went over early, went over early, flopped early, tops fell too soon, tops down early, down early, died down early, died back early, ripe too early, ripened early, ripened too soon, ripe too soon, finished early, finished too soon, matured early',
  'why.symptom.small': 'Small bulbs',
  'why.symptom-note.small': 'Ripe and dry like any onion, only less of it.',
  'why.called.small':
    'small, tiny, tiny bulbs, little, little bulbs, too small, undersized, stayed small, bulbs stayed small, bulbs too small, never got big, did not get big, did not grow, stunted, puny, golf balls, marbles, like marbles, pickling size, poor size, poor yield, low yield, small crop, poor crop',
  'why.symptom.thick-necks': 'Thick necks',
  'why.symptom-note.thick-necks':
    'There is a bulb, but its neck is as thick as a thumb, soft inside, and does not dry.',
  'why.called.thick-necks':
    'bull neck, bullneck, bull necked, bottle neck, bottleneck, fat neck, wide neck, big neck, open neck, green neck, thick necked, neck did not close, necks won’t close, necks did not dry, necks won’t dry, neck stayed open',
  'why.symptom.split': 'Split or double',
  'why.symptom-note.split':
    'Two or more hearts under one skin, or two bulbs on one base. One hole with a stalk in it is a flower’s.',
  'why.called.split':
    'split, splits, splitting, double, doubles, doubled, doubling, double bulbs, split bulbs, split skins, twin, two in one, multiple centre, multiple center, many centres, multiple hearts, two hearts, divided, cracked, burst',
  'why.symptom.stalk-in-bulb': 'A stalk through the bulb',
  'why.symptom-note.stalk-in-bulb':
    'Cut across, a hard or hollow pipe runs up the middle: the plant flowered, or was about to.',
  'why.called.stalk-in-bulb':
    'stalk, hollow seed stalk, hollow seed stalk in bulb, stalk inside, stalk in the middle, hollow stalk, hollow stem, hollow middle, hollow centre, hollow center, hard core, hard centre, hard center, hard middle, hard stem inside, woody core, woody centre, woody center, woody middle, woody, tough core, stick in the middle',
  'why.symptom.green-shoulders': 'Green shoulders',
  'why.symptom-note.green-shoulders': 'Green where light reached the bulb; firm and sound all the same.',
  'why.called.green-shoulders':
    'greening, green bulbs, green skin, green flesh, green on top, green inside, green at the top, gone green, went green, turned green, green scales',
  'why.symptom.scalded': 'Scalded by the sun',
  'why.symptom-note.scalded':
    'A bleached, wrinkled, soft patch on the side that faced the sun; the rest is firm.',
  'why.called.scalded':
    'sunscald, sun scald, scald, sunburn, sunburnt, sunburned, burnt by the sun, burned by the sun, sun scorched, scorched, scorched bulbs, bleached, bleached patches, bleached bulbs, cooked',
  'why.symptom.soft': 'Soft or slimy at harvest',
  'why.symptom-note.soft': 'Bulbs give under the thumb, ooze or stink when they come out of the ground.',
  'why.called.soft':
    'soft, soft bulbs, soft onions, slimy, slimy bulbs, rotten, rotten bulbs, rot, rotted, rotting, bulbs rotted, bulbs rotting, rotten in the ground, rotted in the ground, mushy, squishy, watery, stinking, stinks, smelly, bad smell, smells bad, soft rot, bacterial rot, sour skin, slippery skin, went soft, bulbs went soft',
  'why.symptom.white-fluff': 'White fluff on the roots',
  'why.symptom-note.white-fluff':
    'Cottony growth at the base in the ground, often with black grains in it. Fluff at the neck, in store, is neck rot.',
  'why.called.white-fluff':
    'white rot, white mould, white mould on roots, white mouldy roots, white fungus, white fur, white fuzz, white fluff, fluffy roots, fluff on the roots, fluffy base, white fluff at the base, cottony, cotton wool, mouldy roots, mould on the roots, mould in the ground',
  'why.symptom.pink-roots': 'Pink roots',
  'why.symptom-note.pink-roots': 'Roots turn pink, then dark red, and shrivel; the bulb itself is sound.',
  'why.called.pink-roots':
    'pink root, pinkish roots, red roots, reddish roots, purple roots, dead roots, few roots, no roots, shrivelled roots, shriveled roots, withered roots',
  'why.symptom.maggots': 'Maggots inside',
  'why.symptom-note.maggots':
    'White grubs without legs, and their tunnels, in the base. Rot mostly comes after them.',
  'why.called.maggots':
    'maggot, onion maggot, onion fly, root fly, root maggot, maggots in bulbs, grub, grubs inside, worm, worms inside, worms in the bulb, wormy, larvae, tunnels, maggot tunnels, holes in the bulb, caterpillars',
  'why.symptom.too-hot': 'Too hot to eat',
  'why.symptom-note.too-hot': 'Sound and well grown, only sharper than you wanted.',
  'why.called.too-hot':
    'too hot, hot, too sharp, sharp, too strong, strong, too pungent, pungent, spicy, fiery, bitter, not sweet, not mild, makes me cry, eye watering, burns the mouth',
  'why.symptom.neck-rot': 'Rot at the neck',
  'why.symptom-note.neck-rot':
    'Weeks after harvest the neck sinks in and browns, with grey mould that works down. White fluff on roots is white rot.',
  'why.called.neck-rot':
    'neck rot, rotten neck, rotted neck, rotten at the neck, rotting neck, neck rotted, neck rotting, soft neck, brown neck, mouldy neck, mould at the neck, grey mould, grey mould at the neck, fluff at the neck, botrytis, rot from the top, rotted from the top',
  'why.symptom.rotted-in-store': 'Rotted in store',
  'why.symptom-note.rotted-in-store':
    'Sound when brought in, then soft, wet or mouldy, from the base or between the scales, not from the neck.',
  'why.called.rotted-in-store':
    'rotten in store, rotting in store, rot in store, store rot, rotted in storage, rotten in storage, rot in storage, rotting in storage, storage rot, went soft in store, went soft in storage, rotted in the shed, rotted in the cellar, went bad, gone bad, going bad, went off, gone off, spoiled, spoilt, mouldy, mould, went mouldy, mouldy in store, did not keep, didn’t keep, do not keep, don’t keep, won’t keep, did not store, did not last, didn’t last',
  'why.symptom.black-dust': 'Black dust under the skin',
  'why.symptom-note.black-dust':
    'Like soot under the dry skins, often along their veins; the flesh may be clean.',
  'why.called.black-dust':
    'black mould, black powder, black soot, soot, sooty, black spores, black spots, black stuff, black marks, black skin, black streaks, black patches, smudge, dusty black, black dust',
  'why.symptom.sprouted': 'Sprouted in store',
  'why.symptom-note.sprouted':
    'A green shoot comes from the top, or roots from the base, while the bulb is still firm.',
  'why.called.sprouted':
    'sprout, sprouted, sprouting, sprouted early, sprouting in store, sprouted in storage, sprouting in storage, shoots, shooting, green shoots, growing shoots, new shoots, grew shoots, regrew, regrowing, started growing, growing again, started growing again, grew in the bag, rooting',
  'why.symptom.glassy': 'Glassy scales',
  'why.symptom-note.glassy':
    'Scales look grey and see-through, as if soaked, mostly the outer ones and all round.',
  'why.called.glassy':
    'glassy, glass, translucent, translucent scales, translucent or watery scales, see through, transparent, watery scales, water soaked, grey scales, leathery scales, frozen, froze, frozen in store, frozen in storage, froze in store, froze in storage, frosted, frostbitten, frost damage, freezing, freeze damage',
  'why.called-filler':
    'a, an, the, my, our, their, they, them, it, its, i, we, onion, of, in, on, at, to, and, with, was, were, is, are, be, been, has, have, had, got, very, too, so, really',
} as const;

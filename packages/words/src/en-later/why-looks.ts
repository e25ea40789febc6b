/**
 * What to look at, to know whether it was this: of causes that no run can know. Common practice of growers and gardeners, no
 * source; but for the seed: seven in ten is the germination that American law asks of onion seed (7 CFR 201.31).
 */
export const whyLooks = {
  'why.look.hunger': 'Leaves pale and thin in the whole bed, and the oldest yellow first.',
  'why.look.late-nitrogen':
    'Dark, lush leaves that went on growing as bulbs should have ripened, in a bed that was fed or manured late.',
  'why.look.weeds':
    'Weeds as tall as the onions before bulbs began, and larger bulbs where the bed was clean.',
  'why.look.salt':
    'A white crust on dry soil, brown tips in moist soil, and beans or strawberries that fail there too.',
  'why.look.uneven-water':
    'A dry bed for a week or two, then heavy rain or a long watering, and skins or hearts split soon after.',
  'why.look.spring-cold-snap':
    'A frost while plants had two to four leaves, with pale bands or scars on the leaves of that time.',
  'why.look.old-seed':
    'Lay twenty seeds in a damp cloth in a warm room. Fewer than fourteen sprouted after ten days: the seed is old.',
  'why.look.dry-seedbed':
    'Scratch up some seed: hard and dry, or with a dead white tip, or bent under a crust.',
  'why.look.damping-off':
    'Stems thin and brown at the soil, in a patch that widens, on soil that never dried on top.',
  'why.look.birds-or-cutworms':
    'Stems bitten clean through, and a fat curled caterpillar in the soil close by; or plants pulled out whole and dropped.',
  'why.look.onion-fly': 'Pull a limp plant: white grubs without legs in its base.',
  'why.look.thrips': 'Part the youngest leaves and look with a lens: narrow, pale insects that run.',
  'why.look.downy-mildew':
    'Look early, in the dew: violet to grey down on long pale patches, after cool, wet days.',
  'why.look.purple-blotch': 'Sunken purple spots with rings, mostly on older leaves, after warm, wet nights.',
  'why.look.leaf-blight':
    'Many small white sunken flecks with a pale rim, then tips that die back, after wet days.',
  'why.look.pink-root': 'Wash the roots: pink, or dark red and withered, while the bulb is sound.',
  'why.look.white-rot':
    'White fluff at the base with black grains like poppy seed in it, in a patch that grows each year.',
  'why.look.basal-rot':
    'Halve a bulb from top to root: brown and watery from the base up, and roots that come off.',
  'why.look.bacterial-rot':
    'Press the bulb: water comes out at the neck. Cut across: one or two slimy rings between sound ones.',
  'why.look.neck-rot-mould':
    'Soft brown scales under the neck some weeks after harvest, then grey mould and black crusts.',
  'why.look.black-mould':
    'Black dust along the veins under the dry skin, on bulbs from a hot harvest or a warm, damp store.',
  'why.look.ozone': 'Tips bleached in the whole bed at once, some days after hot, still, hazy weather.',
  'why.look.wind': 'Leaves bent the same way in the whole bed, and other crops beaten too, after a storm.',
  'why.look.light-on-bulbs':
    'Green only on the side that stood out of the soil, or that faced the window of the store.',
  'why.look.sun-on-lifted-bulbs': 'A pale, soft patch on one side only, on bulbs that lay out in hot sun.',
  'why.look.badly-dried':
    'A neck that slips between finger and thumb, or is moist when cut; bulbs that lay in heaps.',
  'why.look.knocked-about':
    'Soft dents and wet spots on one side, on bulbs that fell, were thrown or lay deep in a sack.',
  'why.look.hot-kind': 'The packet: was it a storage kind or a sharp one? Mild and sweet kinds say so.',
  'why.look.nothing-wrong':
    'It came as the bulbs were ripening, on the oldest leaves or on all tops together, and bulbs are sound.',
} as const;

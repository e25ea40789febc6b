/** What to do today with a crop that went wrong: common practice of growers and kitchens, no source. */
export const whyRescue = {
  'why.rescue.few-came-up':
    'Keep the bed moist for two more weeks. If there is still time, sow again in the gaps, or fill them with plants or sets.',
  'why.rescue.seedlings-toppled':
    'Take out the fallen ones with the soil round them. Give the rest air and light, and water from below only once the top is dry.',
  'why.rescue.gone-in-a-row':
    'Scratch up the soil at the last gap and look for a grub or a caterpillar. Put a net over what still stands and fill the gaps.',
  'why.rescue.died-in-winter':
    'Dig up a few: with a firm white base and new roots they grow again, so give them two mild weeks. Fill the gaps with sets or plants in spring.',
  'why.rescue.out-of-the-ground':
    'Replant them today with a trowel, roots down and covered; pushing breaks the roots. Firm the soil and put a net over it.',
  'why.rescue.dry-tips':
    'If the bed is dry a finger deep, water it. Cut nothing off: what is green still feeds the bulb.',
  'why.rescue.silver-streaks':
    'Wash the insects out from between the leaves with a firm spray of water, and keep the bed from drying out. Pull weeds round it.',
  'why.rescue.grey-fur':
    'On a dry day take the furry leaves away. Water the ground and not the leaves. If few green leaves are left, harvest now.',
  'why.rescue.purple-spots':
    'Take the worst leaves away, and water the ground early in the day. Harvest in dry weather and dry the bulbs fast.',
  'why.rescue.bent-leaves':
    'Leave them: a bent green leaf still feeds its bulb. Do not tie or cut them. Where the neck itself broke, pull the plant and eat it.',
  'why.rescue.wilted':
    'Pull one up and cut it through. If roots and base are white and firm, water. If you find rot, fluff or grubs, take out all the limp ones, with their soil.',
  'why.rescue.flowered':
    'Pull those with a stalk and eat them now, without the hard core. Leave the others: they may still make good bulbs.',
  'why.rescue.no-bulb': 'Pull them as green onions while they are tender. Chopped, they freeze well.',
  'why.rescue.tops-stood':
    'Stop watering, and do not bend the tops. Harvest on a dry day before hard frost and dry the bulbs warm and airy.',
  'why.rescue.fell-early':
    'Stop watering. Harvest on a dry day once most are down, and dry the bulbs as usual.',
  'why.rescue.small': 'Dry them as usual. Small ones are fine for pickling whole or for stews.',
  'why.rescue.thick-necks':
    'Sort them from the rest, dry them as well as they will, and keep them in sight. Chop and freeze what you cannot eat soon.',
  'why.rescue.split': 'Sort them out. Open each and look between the halves, where dirt and rot hide.',
  'why.rescue.stalk-in-bulb': 'Halve the bulb, cut the hard stalk out and use the rest within days.',
  'why.rescue.green-shoulders':
    'Peel the green off if it tastes bitter. From now on keep the bulbs in the dark.',
  'why.rescue.scalded':
    'Bring the bulbs into the shade now. Use the scalded ones first, and throw out any in which rot has set in.',
  'why.rescue.soft':
    'Sort out the soft ones today, before they spoil others. Dry the firm ones in one layer, in warm moving air.',
  'why.rescue.white-fluff':
    'Take out each such plant with the soil round its roots, straight into a bag. Harvest those that are still sound, and eat them soon.',
  'why.rescue.pink-roots': 'Keep the bed evenly moist, as few roots are left, and harvest as usual.',
  'why.rescue.maggots':
    'Take out every limp plant, with its grubs, before they move on to the next. Leave no damaged bulbs lying about.',
  'why.rescue.too-hot': 'Cook them, or slice them thin and lay them in cold water for a quarter of an hour.',
  'why.rescue.neck-rot':
    'Sort out every soft neck today, outdoors. Spread the firm ones where it is dry and airy, and look at them each week.',
  'why.rescue.rotted-in-store':
    'Empty the store today and sort out all that is soft, wet or mouldy. Dry the firm ones, and put them back loose, cool and airy.',
  'why.rescue.black-dust':
    'Peel them outdoors or wet, so that you breathe no dust. If the flesh below is firm and clean, rinse it and use it soon.',
  'why.rescue.sprouted':
    'Use them now, shoots and all; the shoot is food too. Move those without shoots to a colder, drier place.',
  'why.rescue.glassy':
    'Do not move them while frozen. Let them thaw slowly, just above freezing, for a week or two; then sort out what stays wet.',
} as const;

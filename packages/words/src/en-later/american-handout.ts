/** What an American gardener says otherwise on the sheet to hand out. */
export const americanHandout = {
  'handout.buy.bought-transplants': 'Young plants (bundles) of {type} onions.',
  'handout.sign.ripe':
    'To harvest: necks go soft just above the bulb and tops fall by themselves, about {date}. Wait until more than half are down.',
  'handout.sign.unripe':
    'To harvest: in most years necks stay thick here. Pull them before the cold stops them, and eat those first.',
  'handout.work.trim': 'Trim the tops of seedlings to about 4 in, so that they stay stout.',
  'handout.work.thin': 'Pull every other plant as a green onion.',
  'handout.work.flies': 'Keep net or row cover closed: {flies}.',
  'handout.fly.onion': 'onion maggot',
  'handout.fly.seedcorn': 'seedcorn maggot',
  'handout.work.watch-mildew': 'Look for gray fur on leaves: downy mildew.',
  'handout.work.lift': 'Harvest, once more than half the tops are down.',
  'handout.work.lift-unripe': 'Harvest, whatever the tops do.',
  'handout.work.pull-green': 'Pull as green onions.',
  'handout.work.dry': 'Cure, warm and airy and out of the rain.',
} as const;

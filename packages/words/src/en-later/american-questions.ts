/** What an American gardener says otherwise of the ten questions. */
export const americanQuestions = {
  'question.ask.sets-flower': 'Why do my neighbor’s sets flower?',
  'question.ask.sow-autumn': 'Can I sow in fall?',
  'question.called.sow-autumn':
    'fall, sow in fall, plant in fall, winter, over winter, over the winter, through winter, leave in over winter, leave in the ground in winter, overwinter, overwintering, stand the winter, survive the winter, Japanese onions',
  'question.elsewhere.why':
    'rot, rotting, rotten, mold, moldy, mildew, thick necks, thick neck, soft, soft bulbs, split, splitting, double bulbs, doubles, yellow leaves, leaves turn yellow, leaf tips, brown tips, spots, maggots, grubs, worms, thrips, holes, pests, disease, sick, died, dying, wilted, fell over, went wrong, did not come up, sprouted in store',
  'question.kitchen.caution.rot':
    'Kitchen onions may carry white rot, which stays in the ground for twenty years and more: never plant them in clean ground. Use a pot, and put its soil in the trash.',
  'question.kitchen.caution.soft': 'Plant and eat none that is soft, wet or moldy: throw it away whole.',
  'question.autumn.fleece': 'Under row cover good bulbs come {years}.',
  'question.role.autumn': 'Sown in fall',
  'question.role.autumn-fleece': 'The same under row cover',
} as const;

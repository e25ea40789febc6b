/** What an American gardener says otherwise of the ten questions. */
export const americanQuestions = {
  'question.ask.sets-flower': 'Why do my neighbor’s sets flower?',
  'question.ask.sow-autumn': 'Can I sow in fall?',
  'question.called.sow-autumn':
    'fall, sow in fall, plant in fall, winter, overwinter, overwintering, stand the winter, Japanese onions',
  'question.kitchen.caution.rot':
    'Kitchen onions may carry white rot, which stays in the ground for twenty years and more: never plant them in clean ground. Use a pot, and put its soil in the trash.',
  'question.kitchen.caution.soft': 'Plant and eat none that is soft, wet or moldy: throw it away whole.',
  'question.autumn.fleece': 'Under row cover good bulbs come {years}.',
  'question.role.autumn': 'Sown in fall',
  'question.role.autumn-fleece': 'The same under row cover',
} as const;

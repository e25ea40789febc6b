/** The page of ten questions. */
export const appQuestions = {
  'app.questions.all': 'Ten questions people ask',
  'app.questions.to.why': 'Find out what it was with yours',
  'app.questions.to.which': 'Which onion to grow here',
  'app.questions.to.packet': 'Look up a packet',
  'app.questions.to.when': 'When to start it',
  'app.questions.to.season': 'Its whole season',
  'app.questions.to.season-large': 'The season of large sets',
  'app.questions.to.season-kitchen': 'The season of a kitchen onion',
  'app.questions.to.latitudes': 'Through the latitudes',
  'app.questions.to.keep': 'Plan your own kitchen',
} as const;

/** What home growers ask again and again (common practice, no source), in the order in which a teacher hears it. */
export const commonQuestions = [
  'never-bulbed',
  'which-onion',
  'too-late',
  'too-small',
  'sets-flower',
  'kitchen-onions',
  'from-abroad',
  'sow-autumn',
  'start-indoors',
  'how-many',
] as const;

/** One of the questions, by its id. */
export type CommonQuestion = (typeof commonQuestions)[number];

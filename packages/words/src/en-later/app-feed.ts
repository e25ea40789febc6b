/** Feed on the Season page. */
export const appFeed = {
  'app.feed': 'Feed',
  'app.feed.product': 'What you feed with',
  'app.feed.product.hint':
    'The three numbers on the bag, such as 10-10-10, or a name such as blood meal.{bed, select, none {} other { Kept with the bed “{bed}”.}}',
  'app.feed.product.bad':
    '“{value}” is no feed known here. Give three numbers such as 10-10-10, with some nitrogen and 100 at most together, or choose a name from the list.',
  'app.feed.grounds': 'What this rests on',
  'app.feed.sources': 'Sources: {sources}.',
} as const;

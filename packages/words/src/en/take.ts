/** The line under every picture that opens what it is kept as. */
export const take = {
  'app.take': 'Keep this picture',
} as const;

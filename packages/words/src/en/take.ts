/** The line under every picture that opens what it is kept as. */
export const take = {
  'app.take': 'Take this picture along',
} as const;

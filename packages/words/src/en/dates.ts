/** What the locale's own dates leave open. */
export const dates = {
  'date.range-over-new-year': '{from} – {to}',
} as const;

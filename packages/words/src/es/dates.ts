/** Lo que las fechas del idioma dejan abierto. */
export const dates = {
  'date.range-over-new-year': '{from} – {to}',
} as const;

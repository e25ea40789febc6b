/** El huerto inventado de `npm start`. */
export const demo = {
  'demo.title': 'Pencarreg Bank, un huerto en una ladera (inventado, como su gente; la ladera es de verdad).',
  'demo.people':
    'Ines Tarrant cultiva cebollas en tres terrazas sobre el río; su vecino Bram Okoro enseña allí al grupo de los martes.',
  'demo.own': 'Para tu propia población: node packages/cli/bin/neckfall.mjs where "Tu población"',
} as const;

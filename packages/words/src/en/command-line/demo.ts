/** The invented garden of `npm start`. */
export const demo = {
  'demo.title': 'Pencarreg Bank, a hillside garden (invented, like its people; the slope is real).',
  'demo.people':
    'Ines Tarrant grows onions on three terraces above the river; her neighbour Bram Okoro teaches the Tuesday growers there.',
  'demo.own': 'For your own town: node packages/cli/bin/neckfall.mjs where "Your Town"',
} as const;

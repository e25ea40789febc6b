/** Lo que dio antes un bancal: cebollas, ajos y puerros se siguen mal unos a otros. */
export const alliums = {
  'alliums.white-rot':
    '“{bed}” ha tenido podredumbre blanca, que vive en la tierra más de veinte años. No vuelvas a cultivar allí cebollas, ajos ni puerros, y no saques tierra de allí en botas o herramientas.',
  'alliums.short':
    '{ago, plural, =0 {En “{bed}” ha habido cebollas, ajos o puerros este mismo año ({year})} one {En “{bed}” hubo cebollas, ajos o puerros el año anterior ({year})} other {En “{bed}” hubo cebollas, ajos o puerros # años antes ({year})}}. Déjalo {wait} años sin ellos, porque el mildiu espera en la tierra; hasta {longest} si las raíces se volvieron rosadas.',
  'alliums.roots':
    'En “{bed}” hubo cebollas, ajos o puerros {ago} años antes ({year}): bastante para el mildiu. Si las raíces se volvieron rosadas, espera hasta {longest} años.',
} as const;

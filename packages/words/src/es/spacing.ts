/** Lo que pide y da una separación entre plantas, dicho mientras se cambia. */
export const spacing = {
  'app.spacing.together': 'Plantas juntas en un mismo sitio',
  'app.spacing.together.hint': 'Una; o tres o cuatro en grupo, que se apartan al engordar.',
  'app.spacing.wanted': 'Cuántas en total',
  'app.spacing.seed-age': 'La semilla',
  'app.spacing.seed-age.unsaid': 'sin decir',
  'app.spacing.seed-age.fresh': 'es de este año',
  'app.spacing.seed-age.one-year': 'tiene un año',
  'app.spacing.seed-age.two-years': 'tiene dos años',
  'app.spacing.takes':
    '{plants, plural, one {# planta ocupa} other {# plantas ocupan}} {row} de hilera{places, select, singly {} other {, en {places} sitios}}, en {area} de bancal.',
  'app.spacing.seeds': 'Siembra para eso {seeds} semillas ({mass}) y aclara donde estén demasiado juntas.',
  'app.spacing.seeds-each':
    'Siembra {each} semillas en cada {where, select, cells {alvéolo} other {hoyo}}, en {places}: {seeds} semillas en total ({mass}).',
  'app.spacing.sets':
    'Son {sets, plural, one {# bulbillo} other {# bulbillos}}: {mass} si miden {size} de ancho.',
  'app.spacing.plants':
    'Son {plants, plural, one {# planta} other {# plantas}} por comprar: {most, plural, one {un manojo} other {{bundles} manojos}}.',
  'app.spacing.reckoned': 'Calculado con: {how}.',
  'app.spacing.seeds.with':
    '{alive} de cada 100 semillas vivas ({age, select, unsaid {la ley de EE. UU. pide 70, 90 de memoria} other {de memoria}}), {up} de cada 100 de esas nacidas en {where, select, tray {una bandeja templada} other {un bancal templado}} (de memoria), {gram} semillas por gramo (un productor de semillas)',
  'app.spacing.sets.with':
    'bulbillos algo más largos que anchos, de 2 a 3 g los de 16 mm (ensayos en Asiut); ninguno perdido',
  'app.spacing.plants.with': 'manojos de {plants} plantas (hortelanos de Minnesota); ninguna perdida',
  'app.spacing.gives':
    'Los bulbos llegan a {across} en un año mediano, {range} en 8 de cada 10 años, y estas plantas a {crop} de cebollas que valga la pena guardar.',
  'app.spacing.wider':
    'Más separadas, a {apart} en la hilera, llegan a {across} y el bancal a {yield}, en lugar de {now}.',
  'app.spacing.closer': 'Más juntas, a {apart}, llegan a {across} y el bancal a {yield}.',
  'app.spacing.no-bulbs': 'De este cultivo no salen bulbos, por separadas que estén sus plantas.',
  'app.spacing.beyond':
    'Para plantas tan separadas o tan juntas no se calcula ninguna temporada; los bulbos son los de {density}.',
  'app.spacing.bed-holds':
    'En “{bed}” caben {rows, plural, one {una hilera} other {# hileras}} de {each} {together, select, clumps {grupos} other {plantas}}: {plants} plantas.',
  'app.spacing.fill': 'Llenarlo: {plants} plantas',
} as const;

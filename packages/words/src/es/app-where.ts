/** La página Dónde. */
export const appWhere = {
  'app.welcome': '¿Dónde cultivas?',
  'app.welcome.lead':
    'Nombra una población. Te diremos qué cebolla le va, cuándo empezarla y cuándo se tumban sus hojas, calculado aquí en tu dispositivo.',
  'app.where.next': 'Seguir',
  'app.where.next.which': 'Cuál: qué conseguir',
  'app.where.next.when': 'Cuándo: semana a semana',
  'app.where.next.season': 'Temporada: qué hacer y qué ver',
  'app.where.tropics':
    'Aquí los días apenas cambian ({shortest} a {longest}), así que mandan la lluvia y el calor: cultiva en los meses más secos y frescos. Más secos: {driest}. Más calurosos: {hottest}.',
  'app.where.kinds': 'Cada clase de cebolla aquí',
  'app.where.kind.good':
    '{buy}. Los bulbos empiezan hacia el {onset}, las hojas se tumban hacia el {neckFall}; buenos bulbos {years}.',
  'app.where.kind.gamble': 'Una apuesta. Lo más probable: {buy}; buenos bulbos {years}.',
  'app.where.kind.small': 'Bulbos pequeños {years}. Lo mejor: {buy}.',
  'app.where.kind.no-bulb': 'Se queda verde {years}, aun empezada en su mejor momento: sin bulbos.',
  'app.where.kind.bolts': 'Se espiga {years}, aun empezada en su mejor momento.',
  'app.where.kind.winter-killed': 'Se pierde en invierno {years}, aun empezada en su mejor momento.',
  'app.where.kind.not-ripe':
    'Se queda con el cuello grueso y sin terminar {years}, aun empezada en su mejor momento.',
  'app.where.kind.far':
    'Es propia de otra latitud: aquí las tiendas rara vez la tienen, y lo que se dice de ella es menos seguro.',
  'app.where.winter': '¿Aguantan el invierno las plantas jóvenes?',
  'app.where.winter.mild':
    'Sí: de las plantas sembradas al final del verano o en otoño, la helada se lleva muy pocas, aun sin cubrirlas.',
  'app.where.winter.some':
    'En general sí: de las plantas sembradas en otoño, la helada se lleva {lost}; en un invierno duro, {hard}. La manta térmica ayuda (se pierden {fleece}).',
  'app.where.winter.fleece':
    'Al descubierto no (se pierden {lost}); bajo manta térmica la helada se lleva {fleece}.',
  'app.where.winter.no':
    'No: la helada se lleva {lost} de las sembradas en otoño, y {fleece} aun bajo manta térmica. Empieza en primavera.',
  'app.where.year': 'El año aquí',
  'app.where.year.caption': 'Medias de cada mes, con el calentamiento desde los registros',
  'app.where.frost': 'Heladas y duración del día',
  'app.where.frost-free': '{days, plural, one {# día} other {# días}} sin heladas en un año medio.',
  'app.where.coldest': 'La noche más fría del año baja a unos {coldest}.',
  'app.ground': 'Tu terreno',
  'app.ground.is': 'Tu terreno: {list}.',
  'app.ground.change': 'Cuéntanos más de él y la respuesta será más precisa',
  'app.ground.sun': 'Horas al día que el sol da en el bancal',
  'app.ground.sun.hint': 'En un día despejado, cuando los días son más largos. Vacío si es terreno abierto.',
  'app.ground.elevation': 'Altura sobre el mar, {unit, select, feet {pies} other {metros}}',
  'app.ground.elevation.hint': 'Se toma {elevation} si no dices otra cosa.',
  'app.ground.hollow': 'Una hondonada helada: aquí se junta el aire frío',
  'app.ground.cover': 'Cubierta en las semanas frías',
  'app.ground.water': 'Agua',
  'app.ground.soil': 'Suelo',
  'app.ground.bad': '“{value}” no sirve: da un número de {min} a {max}.',
  'app.ground.open': 'pleno sol',
  'app.ground.hours': '{hours} horas de sol',
  'app.ground.in-hollow': 'en una hondonada helada',
  'app.caution.bought':
    'Las plántulas y los bulbillos comprados pueden traer enfermedades (podredumbre blanca, carbón) o una plaga (mosca minadora): compra a quien venda sano y respeta las normas sobre llevar cebollas de un país a otro.',
  'app.caution.treated': 'La semilla y los bulbillos tratados no son comida.',
  'app.caution.promise':
    'Las fechas son probabilidades según el tiempo de otros años, no un pronóstico ni una promesa.',
} as const;

export const appQuestions = {
  'app.questions.all': 'Diez preguntas frecuentes',
  'app.questions.to.why': 'Averigüe qué pasó con las suyas',
  'app.questions.to.which': 'Qué cebolla cultivar aquí',
  'app.questions.to.packet': 'Busque un sobre',
  'app.questions.to.when': 'Cuándo empezarla',
  'app.questions.to.season': 'Su temporada entera',
  'app.questions.to.season-large': 'La temporada de bulbillos grandes',
  'app.questions.to.season-kitchen': 'La temporada de una cebolla de cocina',
  'app.questions.to.latitudes': 'Por las latitudes',
  'app.questions.to.keep': 'Planee su propia cocina',
} as const;

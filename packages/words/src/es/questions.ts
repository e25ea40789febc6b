/** Lo que preguntan quienes cultivan en casa, con otras palabras para cada pregunta. */
export const questions = {
  'question.ask.never-bulbed': '¿Por qué las mías nunca formaron bulbo?',
  'question.ask.which-onion': '¿Qué cebolla compro aquí?',
  'question.ask.too-late': '¿Es tarde ya, hoy?',
  'question.ask.too-small': '¿Por qué las mías son tan pequeñas?',
  'question.ask.sets-flower': '¿Por qué florecen los bulbillos de mi vecino?',
  'question.ask.kitchen-onions': '¿Puedo plantar cebollas del supermercado?',
  'question.ask.from-abroad': '¿Puedo cultivar la cebolla de un amigo que vive lejos?',
  'question.ask.sow-autumn': '¿Puedo sembrar en otoño?',
  'question.ask.start-indoors': '¿Desde cuándo puedo sembrar bajo techo, y salen así bulbos mayores?',
  'question.ask.how-many': '¿Cuántas planto para un año, y cuánto se conservan?',

  'question.called.never-bulbed':
    'nunca formaron bulbo, sin bulbo, sin bulbos, no hicieron bulbo, solo hojas, todo hoja, como puerros, como cebolletas',
  'question.called.which-onion':
    'qué cebolla, qué clase, qué tipo, cuál compro, qué comprar, qué semilla, mejor cebolla, día corto o día largo',
  'question.called.too-late':
    'tarde, demasiado tarde, a tiempo, todavía a tiempo, plantar ahora, sembrar ahora, hoy, ahora, cuándo plantar, cuándo sembrar',
  'question.called.too-small':
    'pequeñas, tan pequeñas, bulbos pequeños, chicas, diminutas, canicas, no crecen, cebollas grandes',
  'question.called.sets-flower':
    'florecen, bulbillos florecen, florecieron, se subieron, subida a flor, espigadas, se espigaron, tallo floral, dieron semilla',
  'question.called.kitchen-onions':
    'supermercado, cebollas del supermercado, cebolla de cocina, cebolla brotada, brotes, plantar una cebolla, cebollas compradas, tienda',
  'question.called.from-abroad':
    'lejos, amigo lejos, otro país, extranjero, semilla de fuera, semilla de casa, de mi abuela, por correo, otra latitud',
  'question.called.sow-autumn':
    'otoño, sembrar en otoño, plantar en otoño, invierno, pasar el invierno, invernar',
  'question.called.start-indoors':
    'bajo techo, en casa, semillero, bandejas, ventana, invernadero, desde cuándo, enero, temprano, plantones',
  'question.called.how-many':
    'cuántas, cuánto plantar, para un año, familia, cuánto se conservan, conservar, guardar, despensa, qué tamaño de bancal',
  'question.called-filler':
    'un, una, el, la, los, las, es, son, era, yo, mi, mis, mía, mías, me, se, lo, en, de, del, para, por, con, que, qué, cómo, puedo, debo, aquí, y, tan, cebolla, cebollas',
} as const;

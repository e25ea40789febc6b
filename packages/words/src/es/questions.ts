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
    'nunca formaron bulbo, sin bulbo, sin bulbos, no hicieron bulbo, solo hojas, solo echaron hojas, todo hoja, no echaron bulbo, como puerros, como cebolletas',
  'question.called.which-onion':
    'qué cebolla, qué clase, qué tipo, cuál compro, qué comprar, qué variedad, cuál variedad, qué variedad cultivo, qué cultivo, qué plantar, qué semilla, mejor cebolla, mejor variedad, día corto o día largo',
  'question.called.too-late':
    'tarde, demasiado tarde, a tiempo, todavía a tiempo, tarde para plantar, tarde para sembrar, plantar ahora, sembrar ahora, hoy, ahora',
  'question.called.too-small':
    'pequeñas, tan pequeñas, bulbos pequeños, chicas, diminutas, canicas, nueces, como nueces, tamaño de una nuez, no crecen, no engordan, cebollas grandes',
  'question.called.sets-flower':
    'florecen, bulbillos florecen, florecieron, se subieron, subida a flor, espigadas, se espigaron, espigaron, tallo floral, dieron semilla',
  'question.called.kitchen-onions':
    'supermercado, cebollas del supermercado, cebolla de cocina, cebolla brotada, brotes, plantar una cebolla, cebollas compradas, tienda',
  'question.called.from-abroad':
    'lejos, amigo lejos, otro país, extranjero, semilla de fuera, semilla de casa, de mi abuela, semilla de mi abuela, me mandó semilla, me trajo semilla, primo, prima, tía, tío, parientes, por correo, de mi país, otra latitud',
  'question.called.sow-autumn':
    'otoño, sembrar en otoño, plantar en otoño, invierno, pasar el invierno, en invierno, dejarlas en invierno, dejarlas en la tierra en invierno, aguantan el invierno, invernar',
  'question.called.start-indoors':
    'bajo techo, en casa, semillero, bandejas, ventana, invernadero, desde cuándo, enero, temprano, plantones, cuándo sembrar bajo techo, cuándo siembro en semillero, cuándo sembrar en semillero, sembrar en semillero',
  'question.called.how-many':
    'cuántas, cuántas plantar, cuántas planto, cuánto plantar, para un año, familia, personas, adultos, cuánto se conservan, conservar, guardar, despensa, qué tamaño de bancal',
  'question.elsewhere.why':
    'se pudren, pudren, podridas, pudrición, podredumbre, moho, mildiu, cuello grueso, cuellos gruesos, blandas, se parten, partidas, dobles, hojas amarillas, puntas secas, manchas, gusanos, trips, plaga, plagas, enfermedad, enfermas, se mueren, murieron, salieron mal, no nacieron, brotaron en la despensa',
  'question.elsewhere.which':
    'bulbillos o semilla, semilla o bulbillos, bulbillos o plantones, semilla o plantones, mejor semilla que bulbillos, mejor bulbillos que semilla, cuál dura más, cuál se conserva más, la más dulce, la más suave, cebolla roja, cebolla blanca, variedades, comparar clases',
  'question.elsewhere.when':
    'cuándo, cuándo sembrar, cuándo siembro, cuándo se siembra, cuándo plantar, cuándo planto, cuándo se planta, cuándo empezar, cuándo cosechar, cuándo cosecho, cuándo se cosechan, cuándo arrancarlas, cuándo están maduras, qué mes, en qué mes, qué fecha, fecha de siembra, fechas de siembra, época de siembra, mejor época',
  /** De uno a diez, por orden. */
  'question.number-words': 'una, dos, tres, cuatro, cinco, seis, siete, ocho, nueve, diez',
  'question.people.eaters':
    'persona, personas, adulto, adultos, niño, niños, niña, niñas, boca, bocas, comensales, en casa, en la familia',
  'question.people.before': 'familia de, casa de, somos, alimentar a, para nosotros',
  'question.people.lastly': 'para, solo',
  'question.called-filler':
    'un, una, el, la, los, las, es, son, era, eran, ha, han, yo, mi, mis, mía, mías, me, te, se, lo, le, les, en, a, de, del, para, por, con, que, qué, cómo, puedo, debo, hay, esta, estas, este, aquí, y, o, si, tan, cebolla, cebollas',
} as const;

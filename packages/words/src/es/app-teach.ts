export const appTeach = {
  'app.teach': 'Explicar las cebollas a otros, para cualquier lugar en tierra',
  'app.teach.lead':
    'Cada cifra se calcula para el lugar que nombre, dice hasta qué punto es segura y puede usarla con su línea de fuentes.',
  'app.teach.map':
    'Qué cebolla va mejor en cada lugar, en cuántos años sale bien, cuándo se empieza y cuándo caen las hojas.',
  'app.teach.together':
    'Hasta seis lugares, o seis comienzos, uno bajo otro sobre los mismos meses, con un día que se mueve.',
  'app.teach.latitudes':
    'Vaya del ecuador a los 70°, con más calor o más frío, y vea cuándo una cebolla forma bulbo y otra nunca.',
  'app.teach.sheet':
    'Una página para un pueblo: qué comprar, cuándo, y cómo saber que es la hora, con su propio título.',
  'app.teach.questions':
    '«¿Por qué las mías no formaron bulbo?» y nueve más, respondidas para el lugar cultivándolo de nuevo.',
} as const;

/** Palabras del oficio que quien empieza quizá no conoce, cada una dicha una vez con palabras llanas. */
export const wordList = {
  'words.title': 'Palabras que quizá sean nuevas',
  'words.day-length': 'De día corto, intermedio y largo',
  'words.day-length.is':
    'Una cebolla empieza su bulbo cuando los días se han alargado lo bastante. Las de día corto lo hacen con los días menos largos; las de día largo esperan a los más largos. El sobre dice cuál es.',
  'words.long': 'De día largo temprano y del norte',
  'words.long.is':
    'Dos clases de cebolla de día largo. Las tempranas empiezan el bulbo con días algo menos largos; las del norte, con los días largos de lejos del ecuador. Los sobres suelen decir día largo para las dos.',
  'words.sets': 'Bulbillos',
  'words.sets.is':
    'Cebollitas secas del año anterior (cebollitas de plantar), que se plantan en lugar de semilla.',
  'words.sown': 'Siembra directa, siembra en semillero',
  'words.sown.is':
    'La semilla se siembra donde van a quedar las cebollas; o en bandejas propias (semillero o almácigo), y las plantitas (plántulas) se trasplantan después.',
  'words.tops': 'Se tumban las hojas',
  'words.tops.is':
    'El cuello se ablanda y se dobla, y las hojas caen: las cebollas han terminado, y pronto se pueden arrancar.',
  'words.flower': 'Espigarse',
  'words.flower.is':
    'Subirse a flor: la planta echa un tallo con flores; su bulbo vale poco y no se conserva.',
  'words.neck': 'De cuello grueso',
  'words.neck.is':
    'Todavía verde cuando acaba la temporada: el cuello no se cierra y el bulbo no se conserva.',
  'words.middling': 'Un año medio',
  'words.middling.is': 'El que queda en el centro cuando se ordenan todos los años probados.',
  'words.range': '8 de cada 10 años',
  'words.range.is': 'De diez años, uno se queda en menos o va antes, y uno llega a más o va después.',
} as const;

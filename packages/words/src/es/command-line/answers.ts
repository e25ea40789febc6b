export const answersCommand = {
  'help.answer':
    'Diez preguntas de quienes cultivan en casa, respondidas para un lugar cultivándolo allí: las diez en breve, o una entera. --batch responde las diez para cada fila de un archivo. Un --out que acabe en .svg, .png o .html guarda la imagen de una respuesta.',
  'error.picture-of-one':
    '--out {value}: una imagen es de una sola pregunta; nómbrela detrás del lugar, como está en --list.',
  'help.answer.question':
    'una de --list, por su nombre o con palabras propias, como "plantar cebollas del supermercado"; con --at va sola',
  'help.answer.list': 'enumera las diez preguntas',
  'help.answer.people':
    'cuántas personas comen, de {min} a {max}, para saber cuántas cebollas plantar; si se omite: {usual}',

  'answers-told.head': '{place}: diez preguntas',
  'answers-told.more': 'Una entera, con sus cifras y avisos: ponga su nombre detrás del lugar.',
  'answers-told.list': 'Lo que se puede preguntar, por su nombre o con palabras propias:',

  'error.question-unknown':
    '«{value}» no es ninguna de las diez preguntas{elsewhere, select, why {: `neckfall why LUGAR` averigua qué le pasó a un cultivo} which {: `neckfall which LUGAR` compara las clases y las formas de empezarlas} when {: `neckfall when LUGAR` da las fechas de siembra y plantación} other {}}.{near, plural, =0 {} other { Las más parecidas: {nearest}.}} `neckfall answer --list` las enumera.',
} as const;

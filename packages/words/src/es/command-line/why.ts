/** La orden que dice por qué falló una cosecha. */
export const whyCommand = {
  'help.why':
    'Por qué una cosecha acabó en lo que se vio: qué se puede salvar, las causas probables con lo que habla a favor y en contra de cada una, la misma temporada sin ellas, qué mirar después y qué hacer el año que viene. De un lugar y un plan, o de una plantación de un archivo de huerto.',
  'help.why.date':
    'cuándo se sembró o plantó: YYYY-MM-DD, o MM-DD de la última temporada que llegó hasta ahí; si falta: lo usual del lugar',
  'help.why.year': 'el año en que se empezó, si --date es MM-DD o falta',
  'help.why.seen':
    'lo que se vio, hasta {most} cosas separadas por comas: nombres de --list o tus palabras, como espigadas, pequeñas o "podridas en el almacén"',
  'help.why.list': 'enumera lo que puede verse, con lo que lo distingue de lo parecido',
  'help.why.noticed': 'cuándo se vio: YYYY-MM-DD, YYYY-MM o MM',
  'help.why.said':
    'una respuesta a una pregunta hecha, como watering=often; {pass} si no puedes decirlo; se puede repetir',
  'help.why.about': 'las fechas son de memoria, con hasta quince días de error',
  'help.why.store':
    'dónde se guardaron: {places}, o su aire todo el año en °C y % de humedad, como 8,70; si falta: {usual}, y se sopesan otros sitios',

  'why-told.rescue': 'Qué se puede salvar:',
  'why-told.causes': 'Qué puede haber detrás:',
  'why-told.against': 'En contra: {sentence}',
  'why-told.look': 'Para estar seguro: {sentence}',
  'why-told.others': 'Menos probable: {causes}.',
  'why-told.other': '{cause} ({chance})',
  'why-told.ask': 'Lo que más diría:',
  'why-told.answer-with': 'Pregunta otra vez con la respuesta que valga:',
  'why-told.next-year': 'Qué hacer de otro modo:',
  'why-told.next-start': '{type}, {start}, hacia el {date}.',
  'why-told.list': 'Lo que puede verse, con lo que lo distingue de lo parecido:',

  'why-assumed.onion':
    'No se dijo qué cebolla: se tomaron las {class}, las que mejor van en el lugar así empezadas.',
  'why-assumed.start': 'No se dijo cómo se empezó: se toma por «{start}», lo usual allí.',
  'why-assumed.date': 'No se dijo el día: se toma el {date}, lo usual allí.',
  'why-assumed.season': 'La temporada se toma por la última que llegó hasta ahí, empezada el {date}.',
  'why-assumed.store':
    'No se dijo dónde se guardaron: {store}, como es usual, con lo que otros sitios habrían hecho.',
  'why-assumed.noticed': 'No se dijo cuándo se vio en el almacén: cuatro meses después de arrancarlas.',
  'why-assumed.unsaid': 'Lo que no se dijo del bancal pudo ser de otro modo, y así se sopesa.',

  'error.why-seen':
    'Falta --seen: di qué se vio, por ejemplo --seen flowered. `neckfall why --list` enumera lo que puede verse.',
  'error.why-seen-unknown':
    '--seen {value}: nada se llama así.{near, plural, =0 {} other { Lo más parecido: {nearest}.}} `neckfall why --list` enumera lo que puede verse.',
  'error.why-seen-many':
    '--seen nombra {count, number} cosas: {most, number} como mucho. Quita lo que menos importe.',
  'error.why-said-form': '--said {value}: se esperaba una pregunta y su respuesta, como {example}.',
  'error.why-noticed-form':
    '--noticed {value}: se esperaba un mes o un día en que se vio: YYYY-MM-DD, YYYY-MM o MM, como 01.',
  'error.why-noticed-ahead': '--noticed {value} está por venir: se esperaba un día hasta el {today}.',
  'error.why-noticed-before': '--noticed {value} es antes de que se empezara el cultivo, el {start}.',
  'error.why-not-started':
    '{field} {value}: el cultivo se empieza el {start}, que está por venir, y nada puede haberse visto de él. Se esperaba un día hasta el {today}.',
  'error.why-long-ago':
    '{field} {value}: se esperaba una temporada desde el {from}, o una que cubra --weather.',
  'error.why-year': '--year {value}: se esperaba un año de {from} a {to}.',
  'clash.date-says-year': 'la fecha ya dice su año.',
  'clash.said-twice': 'las dos dicen lo mismo del cultivo.',
} as const;

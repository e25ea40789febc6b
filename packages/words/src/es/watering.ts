/** Lo que un cultivo pide de agua: hoy, hasta que se tumban las hojas, y en toda la temporada. */
export const watering = {
  'watering.title': 'Riego',
  'watering.rain-alone': 'Estas crecen solo con la lluvia; esto es lo que llevaría regarlas.',
  'watering.now':
    'Riega hoy: {onArea}{isBed, select, yes {, {bed} para todo el bancal} other {}}{minutes, plural, =0 {} one {, cerca de un minuto {way, select, drip {de goteo} other {de manguera}}} other {, unos # minutos {way, select, drip {de goteo} other {de manguera}}}}.',
  'watering.now-why': 'Al bancal le faltan {short} de agua, y las cebollas lo notan desde {readily}.',
  'watering.not-yet':
    'Hoy no hace falta regar: al bancal le faltan {short} de agua, y las cebollas lo notan desde {readily}.',
  'watering.full': 'Hoy no hace falta regar: el bancal tiene toda el agua que puede guardar.',
  'watering.lasts': 'Eso dura hasta cerca del {date} ({range}).',
  'watering.due': 'Riega de nuevo hacia el {date} ({range}).',
  'watering.due-some':
    'Quizá baste la lluvia: el bancal vuelve a pedir agua {years}, hacia el {date} ({range}).',
  'watering.rain-does': 'Del resto se encarga la lluvia.',
  'watering.before': 'Aún no hay nada que regar: estas llegan a su bancal hacia el {date}.',
  'watering.first': 'El primer riego toca hacia el {date} ({range}).',
  'watering.stop':
    'Deja de regar cuando se tumben las primeras hojas, hacia el {date} ({range}): los bulbos maduran en tierra seca.',
  'watering.stopped':
    'No riegues más: por ahora se tumban las primeras hojas, y los bulbos maduran en tierra seca.',
  'watering.lifted': 'No riegues más: estas se arrancaron el {date}.',
  'watering.nothing-stands':
    'Con este comienzo aquí no llega a crecer ninguna cebolla, así que no hay nada que regar.',
  'watering.table': 'Lo que lleva una temporada',
  'watering.column.ordinary': 'Año corriente',
  'watering.column.dry': 'Año seco',
  'watering.row.need': 'Para dar en total',
  'watering.row.need-bed': 'Para todo el bancal',
  'watering.row.rain': 'Lluvia mientras tanto',
  'watering.row.given': 'Dado hasta hoy, con lo que queda',
  'watering.dry-year': 'Un año seco es el más seco de diez.',
  'watering.salt':
    'La sal de esta agua deja cerca del {percent} % de la cosecha. Las cantidades son un {leaching} % mayores, para arrastrarla.',
  'watering.salt-harmless':
    'Las cebollas aguantan la sal de esta agua{leaching, select, 0 {} other { mientras se la arrastre: por eso las cantidades son un {leaching} % mayores}}.',
  'watering.days': 'Semana a semana, en un año corriente',
  'watering.day.from': 'Semana desde',
  'watering.day.rain': 'Lluvia',
  'watering.day.given': 'Dado',
  'watering.day.short': 'Falta al final',
  'watering.assumed.way':
    'Del agua {way, select, drip {de goteo} can {de regadera} other {de manguera}}, el {percent} % llega a las raíces; el resto se escapa o se seca.',
  'watering.assumed.bed':
    'El bancal estaba húmedo del todo al empezar el cultivo; nada escurre de él, nada sube a él.',
  'watering.assumed.method':
    'El agua se cuenta día a día para el cultivo y la tierra desnuda por separado, según el documento 56 de la FAO sobre riego y drenaje (1998). El riego acaba {days} días antes de que estén tumbadas la mitad de las hojas.',
  'watering.assumed.watered-when-due':
    'No hay ningún riego anotado, así que se supone que el bancal tuvo su agua cuando tocaba hasta hace {days} días, y desde entonces nada. Anota lo que das, y esto lo seguirá.',
  'watering.assumed.watered-till-noted':
    'Hasta el primer riego anotado, se supone que el bancal tuvo su agua cuando tocaba.',
  'watering.assumed.noted-filled':
    'No se sabe el tamaño del bancal, así que se supone que cada riego anotado lo llenó.',
  'watering.caution.rules':
    'Respeta las normas locales sobre mangueras y sobre tomar agua de arroyos y pozos.',
  'watering.caution.grey':
    'Nada de aguas grises de la casa ni de agua regenerada sobre cebollas que se comen crudas; sigue las normas locales.',
  'watering.caution.salt':
    'El agua salada y la de un descalcificador dañan las cebollas: haz analizar la sal del agua de pozo.',
  'watering.area': 'Tamaño del bancal, {unit, select, inch {pies cuadrados} other {m²}}',
  'watering.area.hint':
    'Si se deja vacío: solo cantidades por {unit, select, inch {pie cuadrado} other {metro cuadrado}}.',
  'watering.butt': 'Tu depósito de lluvia, {unit, select, inch {galones} other {litros}}',
  'watering.butt.hint': 'Lo que guarda lleno; con el tamaño del bancal se dice hasta dónde llega.',
  'watering.butt.is': 'Un año corriente gasta {ordinary} depósitos llenos, un año seco {dry}.',
  'watering.butt.enough': 'Uno lleno basta para un año corriente; un año seco gasta {dry}.',
  'watering.butt.plenty': 'Uno lleno basta incluso para un año seco.',
} as const;

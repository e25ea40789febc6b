/** El huerto guardado en el navegador: sus planes y cebollas, los pasos deshechos, los archivos de huerto. */
export const appGarden = {
  'app.page.kept': 'Guardado aquí',
  'app.garden.link':
    '{holder, select, page {Solo en esta página} other {Guardado en este dispositivo}}: {plans, plural, =0 {ningún cultivo} one {un cultivo} other {# cultivos}}',
  'app.garden.title':
    '{holder, select, page {Solo en esta página} other {Guardado en este dispositivo}}: {plans, plural, =0 {ningún cultivo todavía} one {un cultivo} other {# cultivos}}{onions, plural, =0 {} one {, una cebolla tuya} other {, # cebollas tuyas}}',
  'app.garden.none':
    '{holder, select, page {No hay huerto en esta página} other {No hay nada guardado en este dispositivo}}',
  'app.garden.none.how':
    'Guarda un cultivo desde su página Temporada, o abre más abajo un archivo de huerto.',
  'app.garden.lead':
    '{holder, select, page {Se pierde cuando cierras esta página y no se envía a ningún sitio: pasa antes el huerto a un archivo.} other {Se guarda en este navegador y no se envía a ningún sitio. Un navegador puede borrar lo que guarda: pasa el huerto a un archivo de vez en cuando.}}',
  'app.garden.no-place': 'Sin lugar',
  'app.garden.no-place.how':
    'El huerto no nombra ningún lugar para estos, así que se muestran para el de arriba.',
  'app.garden.plan': '{first}, {rest}',
  'app.garden.seen':
    '{count, plural, one {Visto una vez} =2 {Visto dos veces} other {Visto # veces}}, la última el {date}.',
  'app.garden.weather':
    'Tiempo guardado del {from} al {to}: {days, plural, one {# día medido} other {# días medidos}}.',
  'app.garden.plan.remove': 'Quitar',
  'app.garden.plan.remove-of': 'Quitar “{name}”',
  'app.garden.onions': 'Cebollas tuyas',
  'app.garden.onion.bare':
    '{name}: en el archivo del huerto no está ni su clase ni la duración del día que pide su sobre, así que no se puede calcular.',
  'app.garden.onion.unused':
    'De “{name}” solo se conoce el nombre, así que se muestra la clase que mejor va aquí.',
  'app.garden.onion.from-link':
    '“{name}” no es una cebolla que se conozca aquí. Se calcula a partir de su sobre, tal como lo da el enlace.',
  'app.garden.onion.name': 'Guardarla como cebolla tuya',
  'app.garden.onion.hint':
    'Entonces estará en la lista junto a las demás, en {holder, select, page {esta página} other {este dispositivo}}.',
  'app.garden.onion.taken': 'Una de tus cebollas ya se llama {name}. Ponle a esta otro nombre.',
  'app.garden.onion.keep': 'Guardar esta cebolla',
  'app.garden.onion.remove-of': 'Quitar la cebolla “{name}”',
  'app.garden.onion.choice': '{name} (tuya)',
  'app.garden.file': 'Cambios y archivos',
  'app.garden.save': 'Guardar todo el huerto en un archivo',
  'app.garden.saved': 'Guardado como {file}.',
  'app.garden.save-failed': 'No se pudo crear {file} ({reason}).',
  'app.garden.undo': 'Deshacer: {what}',
  'app.garden.redo': 'Rehacer: {what}',
  'app.garden.step.opened': '{name}, abierto',
  'app.garden.step.added': '“{name}”, añadido',
  'app.garden.step.changed': '“{name}”, cambiado',
  'app.garden.step.removed': '“{name}”, quitado',
  'app.garden.step.onion-added': 'cebolla “{name}”, añadida',
  'app.garden.step.onion-removed': 'cebolla “{name}”, quitada',
  'app.garden.step.seen': 'lo visto de “{name}”',
  'app.garden.step.seen-changed': 'lo visto de “{name}”, cambiado',
  'app.garden.step.seen-removed': 'lo visto de “{name}”, quitado',
  'app.garden.step.work': 'lo apuntado del trabajo de “{name}”',
  'app.garden.step.weather-kept': 'el tiempo de “{name}”, guardado',
  'app.garden.step.weather-removed': 'el tiempo de “{name}”, quitado',
  'app.garden.step.learnt': 'de qué parte “{name}”',
  'app.garden.step.forgotten': 'todo el huerto, quitado',
  'app.garden.step.elsewhere': '{what} (en otra pestaña o ventana)',
  'app.garden.forget': 'Quitar todo el huerto',
  'app.garden.wipe': 'Borrarlo de {holder, select, page {esta página} other {este dispositivo}} para siempre',
  'app.garden.wipe.how': 'Después ya no se puede recuperar, salvo que tengas un archivo con él.',
  'app.garden.elsewhere': 'El huerto se cambió en otra pestaña o ventana; así está ahora.',
  'app.garden.not-kept':
    'Este navegador no guarda tu huerto: se pierde cuando cierras esta página. Guárdalo antes en un archivo.',
  'app.garden.unkept':
    '{why, select, newer {El huerto guardado en este navegador es de una versión posterior de Neckfall; se deja como está. Vuelve a cargar esta página para tener esa versión.} slow {Este navegador no abrió el huerto que guarda; se deja como está. Cierra las otras pestañas de Neckfall y vuelve a cargar esta página.} full {No queda sitio en este dispositivo.} other {El huerto guardado en este navegador se borró mientras esta página estaba abierta.}}',
  'app.garden.shortened':
    'Queda poco sitio en este dispositivo, así que los cambios más antiguos ya no se pueden deshacer.',
  'app.garden.fault':
    'No se pudo cambiar el huerto ({reason}). Vuelve a cargar la página e inténtalo otra vez.',
  'app.garden.mended': 'Lo que guarda este navegador estaba dañado. Se leyó con estos cambios:',
  'app.garden.open.fold': '¿Tienes un archivo de huerto?',
  'app.garden.open': 'Abrir un archivo de huerto',
  'app.garden.open.hint':
    'Un archivo que acaba en .neckfall.json. Se lee en este dispositivo y no se envía a ningún sitio.',
  'app.garden.open.replaces': 'Ocupa el sitio del huerto que hay aquí; eso se puede deshacer.',
  'app.garden.opened':
    '{file} está abierto: {plans, plural, =0 {no contiene ningún cultivo} one {un cultivo} other {# cultivos}}.',
  'app.garden.opened.plan': '“{name}”, de {file}, está abierto.',
  'app.garden.opened.no-place':
    '“{name}” no nombra ningún lugar del archivo, así que se muestra para el lugar de arriba.',
  'app.garden.opened.replaced': 'Ocupó el sitio del huerto que había antes.',
  'app.garden.opened.changed': 'Se leyó con estos cambios:',
  'app.garden.opened.more': 'y {count} más',
  'app.garden.refused.too-big':
    '{file} ocupa {size} MB; un archivo de huerto ocupa como mucho {limit} MB. Aquí no se cambió nada.',
  'app.garden.refused.too-many':
    '{file}: {list} tiene {count, number} entradas; un huerto tiene como mucho {most, number}. Aquí no se cambió nada.',
  'app.garden.refused.unreadable': 'No se pudo leer {file} ({reason}). Aquí no se cambió nada.',
  'app.garden.refused.not-text':
    '{file} no es texto (UTF-8). Elige un archivo .neckfall.json. Aquí no se cambió nada.',
  'app.garden.refused.not-json':
    '{file} no es un archivo de huerto: no es JSON ({reason}). Aquí no se cambió nada.',
  'app.garden.refused.too-deep':
    '{file} no es un archivo de huerto: hay listas dentro de listas a más de {levels} niveles. Aquí no se cambió nada.',
  'app.garden.refused.not-garden':
    '{file} no es un archivo de huerto: su schema es “{found}” y se esperaba neckfall/garden@1. Aquí no se cambió nada.',
  'app.garden.keep': 'Guardar este cultivo',
  'app.garden.keep.not-yet':
    'Este cultivo no está entre los {holder, select, page {de esta página} other {guardados en este dispositivo}}.',
  'app.garden.keep.is':
    '{holder, select, page {Solo en esta página,} other {Guardado en este dispositivo}} como “{name}”.',
  'app.garden.keep.differs':
    '{holder, select, page {Solo en esta página,} other {Guardado en este dispositivo}} como “{name}”, pero no como se muestra ahora.',
  'app.garden.keep.name': 'Cómo lo llamas',
  'app.garden.keep.do':
    '{holder, select, page {Ponerlo en esta página} other {Guardarlo en este dispositivo}}',
  'app.garden.keep.again': 'Guardarlo así, en lugar de “{name}” como estaba',
  'app.garden.keep.beside': 'Guardarlo como otro cultivo',
} as const;

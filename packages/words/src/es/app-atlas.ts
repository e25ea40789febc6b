export const appAtlas = {
  'app.atlas.coming': '{region}: se está calculando el mapa de las cebollas…',
  'app.atlas.of': '{region}{among}: {points, plural, one {un punto} other {# puntos}}, uno cada {step}°.',
  'app.atlas.among':
    '{kind, select, any {} other {, solo cebollas {kind}}}{way, select, any {} other {, solo {way}}}',
  'app.atlas.no-points': 'Ningún punto de este mapa está en tierra con registros del clima.',
  'app.atlas.shows': 'Qué muestra el mapa',
  'app.atlas.shows.kind': 'Clase que mejor va',
  'app.atlas.shows.good': 'Años buenos de cada diez',
  'app.atlas.shows.start': 'Mejor comienzo',
  'app.atlas.shows.tops': 'Caída de las hojas',
  'app.atlas.shows.size': 'Tamaño del bulbo',
  'app.atlas.view': 'Dónde',
  'app.atlas.view.here': 'Alrededor de su lugar',
  'app.atlas.view.all': 'Toda la tierra',
  'app.atlas.view.europe': 'Europa',
  'app.atlas.view.africa': 'África',
  'app.atlas.view.west-asia': 'Oeste y sur de Asia',
  'app.atlas.view.east-asia': 'Este de Asia',
  'app.atlas.view.north-asia': 'Norte de Asia',
  'app.atlas.view.north-america': 'América del Norte',
  'app.atlas.view.middle-america': 'México, Centroamérica y el Caribe',
  'app.atlas.view.south-america': 'América del Sur',
  'app.atlas.view.australia': 'Australia y Nueva Guinea',
  'app.atlas.view.pacific': 'Islas del Pacífico',
  'app.atlas.view.new-zealand': 'Nueva Zelanda',
  'app.atlas.kind': 'Qué cebollas',
  'app.atlas.kind.any': 'las que mejor vayan',
  'app.atlas.way': 'Cómo se empiezan',
  'app.atlas.way.any': 'de la manera que mejor vaya',
  'app.atlas.label':
    'Mapa de {region}. Las flechas mueven una cruz sobre él; al lado se dice qué hacen allí las cebollas.',
  'app.atlas.line':
    '{type}, {start}: buenos bulbos {years}. Mejor comienzo {startDay}, caída de las hojas {tops}, bulbos {size}.',
  'app.atlas.line.none': 'Deje el puntero sobre el mapa para leerlo punto por punto.',
  'app.atlas.line.unknown': 'Aquí no hay ningún punto calculado.',
  'app.atlas.line.bare': 'Aquí casi ningún año salen buenos bulbos.',
  'app.atlas.working':
    'Un punto cada {step}°: {left, plural, one {queda un sitio} other {quedan # sitios}} por mirar, entre tierra y mar.',
  'app.atlas.whole':
    'Ya están los puntos cada {step}°{done, select, yes {, que son todos. Se guardan en este dispositivo} other {}}.',
  'app.atlas.stop': 'Parar aquí',
  'app.atlas.go-on': 'Seguir, más fino',
  'app.atlas.failed': 'El mapa no puede seguir ({reason}). Lo dibujado se queda.',
  'app.atlas.point': 'Un punto del mapa',
  'app.atlas.point.how':
    'Toque el mapa, mueva la cruz con las flechas o nombre un pueblo: su respuesta es la que da Dónde, con todos sus años.',
  'app.atlas.asking': '{latitude}, {longitude}: calculando…',
  'app.atlas.point.beyond-latitudes': '{latitude}, {longitude}: fuera de la tierra que se abarca.',
  'app.atlas.point.at-sea': '{latitude}, {longitude}: este punto está en agua.',
  'app.atlas.point.beyond-nodes': '{latitude}, {longitude}: demasiado lejos de los registros del clima.',
  'app.atlas.point.good': 'Buenos bulbos',
  'app.atlas.point.start': 'Comienzo',
  'app.atlas.point.tops': 'Caída de las hojas',
  'app.atlas.point.size': 'Ancho de los bulbos',
  'app.atlas.point.where': 'Dónde: todo sobre este punto',
  'app.atlas.table': '{region}{among}: por franjas de latitud',
  'app.atlas.table.note':
    'Las partes del terreno son por superficie. Los meses y tamaños son los del terreno donde salen buenos bulbos.',
  'app.atlas.save.svg': 'Guardar el mapa como SVG',
  'app.atlas.save.png': 'Guardar el mapa como PNG',
  'app.atlas.save.csv': 'Guardar sus puntos como CSV',
  'app.caution.map':
    'Un mapa muestra lo usual en terrenos amplios. Cerros, costas y ciudades son distintos dentro de una misma parcela del mapa: pregunte por el lugar mismo antes de comprar.',
  'app.atlas.how.points':
    'Los puntos están en múltiplos enteros de latitud y longitud, hasta uno cada {step}°. Cada uno vale por el terreno que lo rodea y se calcula para la altura del pueblo o registro más cercano.',
  'app.atlas.how.years':
    'El mapa prueba solo {years} años inventados en cada punto, y comienzos cada dos semanas, desde el {from}, para que valga todo el año. Dónde prueba más años y empieza hoy.',
  'app.atlas.how.less':
    'Por eso el mapa y la respuesta de al lado pueden diferir en un año de cada diez y en algunos días: la mejor es la respuesta de al lado.',
  'app.atlas.how.ground':
    'El terreno a más de {distance} de un registro del clima queda vacío. Todos los climas se toman {warmer} más cálidos que su registro, como está hoy la tierra.',
  'app.atlas.how.drawn':
    'Superficies iguales del terreno son iguales en el mapa (toda la tierra: Equal Earth; partes: proyección acimutal de Lambert). No se dibujan fronteras.',
} as const;

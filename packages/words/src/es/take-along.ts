export const takeAlong = {
  'app.take': 'Guardar esta imagen',

  'picture.source':
    'Neckfall {version} · {place} · {weather, select, measured {días medidos allí} some {{years, plural, one {# año} other {# años}} de tiempo: días medidos allí y el resto sacado del clima de 1961–2013} other {{years, plural, one {# año} other {# años}} de tiempo sacados del clima de 1961–2013}} · {sources} · hecho el {date}',
  'picture.source.place': '{name}, {latitude}, {longitude}',

  'app.take.svg': 'Dibujo que no pierde nitidez (SVG)',
  'app.take.png': 'Imagen para diapositivas y cartas (PNG)',
  'app.take.html': 'Página con sus números (HTML)',
  'app.take.lead':
    'Cada una lleva la línea que dice de dónde sale. No se envía nada: los archivos se hacen en este aparato.',
  'app.take.title': '{what}: {place}',
  'app.take.of.place-year': 'El año y la cebolla que le va',
  'app.take.of.weather': 'Los días medidos',
  'app.take.of.store': 'Las cebollas guardadas a lo largo del año',
  'app.take.of.what-if': 'El cultivo con la causa y sin ella',
  'app.why.picture.comes': 'Lo que sale',
  'app.when.take.year': 'Guardar el año',
  'app.when.take.starts': 'Guardar los comienzos',
} as const;

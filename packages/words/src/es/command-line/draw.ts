export const drawCommand = {
  'help.draw':
    'Dibuja una imagen para una clase, una carta o una página, con la línea que dice de dónde sale: el año de un lugar con la cebolla que le va o con un cultivo suyo, los bulbos de un cultivo cortados, o lo que sale de empezar en cada semana del año.',
  'help.draw.picture':
    'lo que se dibuja: el año del lugar, o del cultivo si --start y --date lo nombran (por omisión), los bulbos de un cultivo, o los comienzos de una cebolla semana a semana',
  'help.draw.out':
    'el archivo que se escribe, según acabe su nombre: .svg (dibujo que no pierde nitidez), .png (imagen) o .html (página con sus números); si falta, el dibujo se imprime como SVG',
  'help.draw.json': 'los números de la imagen del año en un documento JSON, en unidades métricas',

  'error.picture-ending': '--out {value}: se esperaba el nombre de un archivo que acabe en {expected}.',
  'error.picture-numbers':
    '--json solo va con la imagen del año: `neckfall {command} --json` tiene los números de --picture {value}.',
} as const;

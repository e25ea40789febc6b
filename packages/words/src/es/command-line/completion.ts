/** Completar en el intérprete de órdenes. */
export const completion = {
  'help.completion':
    'un guion con el que tu intérprete de órdenes completa órdenes, opciones y sus palabras; su primera línea dice dónde va',
  'help.shell': 'bash, zsh o fish',
  'error.no-shell': '¿Qué intérprete? Di `neckfall completion` y después {expected}.',
} as const;

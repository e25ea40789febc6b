/** Lo que puede ser un desliz en lo que se vio: se pregunta, no se rechaza. */
export const odd = {
  'odd.leaves-many':
    '{leaves} hojas verdes son más de las que lleva una planta para entonces, unas {most} como mucho. ¿Son las de varias plantas?',
  'odd.leaves-fewer':
    'Ahora {leaves, select, 1 {1 hoja verde} other {{leaves} hojas verdes}}, y {before} el {date}: ¿se secaron tantas, o se contaron otras plantas?',
  'odd.neck-wide': 'El cuello, {neck}, es más ancho que el bulbo, {bulb}. ¿Se cambió el uno por el otro?',
  'odd.tops-less':
    'Ahora ha caído el {share} % de las hojas, y el {before} % el {date}: no se levantan otra vez. ¿Cuál es el dato bueno?',
  'odd.flowering-many':
    'Hay {flowering, select, 1 {1 planta} other {{flowering} plantas}} en flor y {standing} en pie en total. ¿Es uno de los dos datos de otro bancal?',
  'odd.bulbs-many': '{bulbs} bulbos son más que las plantas que había, {plants}. ¿Los hay de otro bancal?',
  'odd.thick-many':
    '{thick} cuellos gruesos son más que los bulbos contados, {bulbs}. ¿Se cambió un número por el otro?',
  'odd.water-much': '{water} en {area} en un día es una inundación. ¿Es el agua de toda una semana?',
  'odd.feed-much':
    '{feed} de abono en {area} basta para quemar raíces: sigue lo que dice el envase. ¿Es el peso de todo el saco?',
  'odd.before-start': 'El {date} es antes del comienzo, el {start}. ¿Es esa la fecha?',
  'odd.long-after': 'El {date} es más de dos años después del comienzo, el {start}. ¿Es de otra plantación?',
  'odd.in-future': 'El {date} está por llegar. ¿Es esa la fecha?',
} as const;

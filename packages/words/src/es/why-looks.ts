/** Qué mirar para saber si fue esto. Práctica común de quienes cultivan, sin fuente. */
export const whyLooks = {
  'why.look.hunger': 'Hojas pálidas y finas en todo el bancal, y las más viejas amarillean primero.',
  'why.look.late-nitrogen':
    'Hojas oscuras y frondosas que siguieron creciendo cuando los bulbos debían madurar, en un bancal abonado o estercolado tarde.',
  'why.look.weeds':
    'Malas hierbas tan altas como las cebollas antes de empezar los bulbos, y bulbos mayores donde estaba limpio.',
  'why.look.salt':
    'Una costra blanca en la tierra seca, puntas pardas con la tierra húmeda, y judías o fresas que tampoco van bien allí.',
  'why.look.uneven-water':
    'Un bancal seco una o dos semanas, luego mucha lluvia o un riego largo, y poco después pieles o centros partidos.',
  'why.look.spring-cold-snap':
    'Una helada cuando tenían de dos a cuatro hojas, y bandas pálidas o cicatrices en las hojas de entonces.',
  'why.look.old-seed':
    'Pon veinte semillas en un paño húmedo en un cuarto cálido. Si a los diez días han germinado menos de catorce, son viejas.',
  'why.look.dry-seedbed':
    'Escarba y busca semillas: duras y secas, o con la punta blanca muerta, o dobladas bajo una costra.',
  'why.look.damping-off':
    'Tallos finos y pardos a ras de tierra, en un corro que crece, con la tierra siempre mojada por encima.',
  'why.look.birds-or-cutworms':
    'Tallos cortados de un mordisco y una oruga gorda enroscada en la tierra al lado; o plantas arrancadas enteras y dejadas allí.',
  'why.look.onion-fly': 'Arranca una planta caída: gusanos blancos sin patas en la base.',
  'why.look.thrips':
    'Separa las hojas más jóvenes y mira con una lupa: insectos estrechos y pálidos que corren.',
  'why.look.downy-mildew':
    'Mira temprano, con el rocío: pelusa violeta o gris en manchas pálidas y largas, tras días frescos y húmedos.',
  'why.look.purple-blotch':
    'Manchas moradas hundidas con anillos, sobre todo en hojas viejas, tras noches cálidas y húmedas.',
  'why.look.leaf-blight':
    'Muchas motas blancas, pequeñas y hundidas, de borde pálido, y luego puntas que se secan, tras días húmedos.',
  'why.look.pink-root': 'Lava las raíces: rosas, o rojo oscuro y marchitas, con el bulbo sano.',
  'why.look.white-rot':
    'Pelusa blanca en la base con granos negros como semillas de amapola, en un corro que crece cada año.',
  'why.look.basal-rot':
    'Parte un bulbo de arriba abajo: pardo y aguado desde la base, y raíces que se sueltan.',
  'why.look.bacterial-rot':
    'Aprieta el bulbo: sale agua por el cuello. Córtalo de través: uno o dos anillos viscosos entre otros sanos.',
  'why.look.neck-rot-mould':
    'Capas blandas y pardas bajo el cuello unas semanas después de arrancar, luego moho gris y costras negras.',
  'why.look.black-mould':
    'Polvo negro a lo largo de las venas bajo la piel seca, en bulbos de una cosecha con calor o de un almacén cálido y húmedo.',
  'why.look.ozone':
    'Puntas blanqueadas en todo el bancal a la vez, unos días después de tiempo cálido, quieto y brumoso.',
  'why.look.wind':
    'Hojas dobladas hacia el mismo lado en todo el bancal, y otros cultivos también maltratados, tras una tormenta.',
  'why.look.light-on-bulbs':
    'Verde solo por el lado que asomaba de la tierra, o que miraba a la ventana del almacén.',
  'why.look.sun-on-lifted-bulbs':
    'Una mancha pálida y blanda por un solo lado, en bulbos dejados al sol fuerte.',
  'why.look.badly-dried':
    'Un cuello que resbala entre los dedos, o está húmedo al cortarlo; bulbos que estuvieron amontonados.',
  'why.look.knocked-about':
    'Abolladuras blandas y manchas mojadas por un lado, en bulbos que cayeron, se tiraron o estaban al fondo de un saco.',
  'why.look.hot-kind': 'El sobre: ¿era una clase de guarda o picante? Las suaves y dulces lo dicen.',
  'why.look.nothing-wrong':
    'Vino al madurar los bulbos, en las hojas más viejas o en todas a la vez, y los bulbos están sanos.',
} as const;

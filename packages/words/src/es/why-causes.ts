/** Qué hubo detrás, como titular, y qué hacer de otro modo el año que viene. */
export const whyCauses = {
  'why.cause.days-too-short': 'Los días nunca fueron bastante largos para esta clase',
  'why.advice.days-too-short':
    'Cultiva una clase de tu latitud, que empiece los bulbos con días más cortos. Sembrar otro día no ayuda.',
  'why.cause.type-too-late': 'Esta clase es demasiado tardía para tu lugar',
  'why.advice.type-too-late':
    'Cultiva una clase más temprana, o dale ventaja a esta con plántulas o bulbillos.',
  'why.cause.type-too-early': 'Esta clase empezó los bulbos antes de tener bastantes hojas',
  'why.advice.type-too-early':
    'Cultiva una clase que espere días más largos: antes hace más hojas, y las hojas hacen el bulbo.',
  'why.cause.started-too-late': 'Empezaste demasiado tarde',
  'why.advice.started-too-late':
    'Empieza antes; si el bancal no está a punto, empieza en semillero, o con plántulas compradas o bulbillos.',
  'why.cause.cold-on-large-plants': 'El frío espigó plantas ya grandes',
  'why.advice.cold-on-large-plants':
    'Que el frío las encuentre con tallos más finos que un lápiz: siembra o planta más tarde. Elige una clase que tarde en espigarse.',
  'why.cause.large-sets': 'Los bulbillos eran demasiado grandes',
  'why.advice.large-sets':
    'Planta bulbillos más pequeños. Aparta los grandes y arráncalos tiernos, como cebolletas.',
  'why.cause.cold-stored-sets': 'Los bulbillos se guardaron en frío antes de plantar',
  'why.advice.cold-stored-sets':
    'Pide bulbillos guardados en calor, o ten los tuyos en un cuarto cálido y aireado hasta plantarlos.',
  'why.cause.heat': 'El calor acortó los bulbos',
  'why.advice.heat':
    'Empieza antes, para que los bulbos se llenen antes del peor calor. Acolcha el bancal y tenlo húmedo.',
  'why.cause.cool-season': 'La temporada fue demasiado fresca',
  'why.advice.cool-season':
    'Cultiva una clase temprana, empiézala en semillero o de bulbillos, y elige tu bancal más cálido. También ayuda un túnel en primavera.',
  'why.cause.thirst': 'El bancal estaba demasiado seco',
  'why.advice.thirst':
    'La cebolla echa raíces poco hondas: riega antes de que se seque la superficie, sobre todo mientras engordan los bulbos.',
  'why.cause.crowding': 'Estaban demasiado juntas',
  'why.advice.crowding':
    'Da más sitio a cada una, o arranca una de cada dos como cebolleta antes de que empiecen los bulbos.',
  'why.cause.shade': 'Tuvieron poco sol',
  'why.advice.shade': 'Dales el bancal más soleado que tengas; la cebolla no soporta la sombra.',
  'why.cause.winter-cold': 'El invierno fue demasiado duro para ellas',
  'why.advice.winter-cold':
    'Cúbrelas antes de la helada fuerte, cultiva una clase hecha para pasar el invierno, o empieza en primavera.',
  'why.cause.cold-soil': 'La tierra estaba demasiado fría para la semilla',
  'why.advice.cold-soil':
    'Espera a que el bancal se mantenga a {temp} o más, o empieza en semillero a cubierto.',
  'why.cause.warm-store': 'El almacén era demasiado cálido',
  'why.advice.warm-store':
    'Guárdalas todo lo frías que puedas sin que hiele: en un sótano o cobertizo frío, no en la cocina. Come primero las que tengan que estar al calor.',
  'why.cause.damp-store': 'El almacén era demasiado húmedo',
  'why.advice.damp-store':
    'Guárdalas donde corra el aire y las pieles sigan crujiendo: en redes, ristras o bandejas bajas, nunca en bolsas.',
  'why.cause.short-keeper': 'Esta clase se guarda poco tiempo',
  'why.advice.short-keeper':
    'Cultiva una clase de guarda para el invierno, y come esta en sus primeros meses.',
  'why.cause.frozen-store': 'Se helaron en el almacén',
  'why.advice.frozen-store':
    'Tápalas con sacos o paja cuando hiele fuerte, o mételas en casa. Que no toquen paredes ni suelos fríos.',
  'why.cause.lifted-unripe': 'Se arrancaron antes de madurar',
  'why.advice.lifted-unripe':
    'Espera a que más de la mitad de las hojas se tumben solas, y seca los bulbos hasta que el cuello esté cerrado.',
  'why.cause.wrong-seed': 'La semilla no era de la clase que creías',
  'why.advice.wrong-seed':
    'Siembra una clase con nombre, de un sobre nuevo. La semilla guardada de un híbrido, o cambiada, puede ser cualquier cosa.',
  'why.cause.hunger': 'Les faltó abono',
  'why.advice.hunger':
    'Abona el bancal antes de plantar y otra vez mientras crecen las hojas. Para cuando empiecen los bulbos. Un análisis de tierra dice cuánto.',
  'why.cause.late-nitrogen': 'Se abonaron demasiado tarde o demasiado',
  'why.advice.late-nitrogen':
    'Da el nitrógeno pronto y de poco en poco, y nada cuando hayan empezado los bulbos.',
  'why.cause.weeds': 'La mala hierba les quitó luz y agua',
  'why.advice.weeds':
    'Escarda desde la segunda hoja, cada una o dos semanas, hasta que engorden los bulbos. Después hace poco daño.',
  'why.cause.salt': 'Había demasiada sal en la tierra o en el agua',
  'why.advice.salt':
    'Usa agua de lluvia u otra buena, sobre todo con plantas pequeñas, y lava la sal hacia abajo antes de sembrar.',
  'why.cause.uneven-water': 'Pasaron de la sequía al encharcamiento',
  'why.advice.uneven-water': 'Ten el bancal siempre algo húmedo desde la tercera hoja, y acólchalo.',
  'why.cause.spring-cold-snap': 'Un golpe de frío dañó las plantas jóvenes',
  'why.advice.spring-cold-snap':
    'Cubre las plantas jóvenes en las noches frías, o trasplanta algo más tarde.',
  'why.cause.old-seed': 'La semilla era vieja',
  'why.advice.old-seed':
    'Compra semilla de cebolla nueva cada año, o prueba un poco en un paño húmedo antes de sembrar.',
  'why.cause.dry-seedbed': 'La siembra se secó o se hizo costra',
  'why.advice.dry-seedbed':
    'Riega antes de sembrar y ten húmeda la superficie hasta que nazcan. Siembra a {depth} como mucho, bajo tierra suelta.',
  'why.cause.damping-off': 'Hongos de la tierra mojada mataron las plántulas',
  'why.advice.damping-off':
    'Usa bandejas limpias y sustrato nuevo, siembra claro, da luz y aire, y riega menos.',
  'why.cause.birds-or-cutworms': 'Se las llevaron pájaros u orugas',
  'why.advice.birds-or-cutworms':
    'Pon una malla sobre el bancal desde el primer día. Busca orugas de noche con una linterna, y quita la mala hierba antes de plantar.',
  'why.cause.onion-fly': 'Se las comieron gusanos de la mosca de la cebolla',
  'why.advice.onion-fly':
    'Planta lejos del bancal de este año y cúbrelo con malla fina antes de que lleguen las moscas. No entierres estiércol fresco.',
  'why.cause.thrips': 'Los trips chuparon las hojas',
  'why.advice.thrips':
    'Ten las plantas bien regadas, quita la mala hierba, y mira cada semana entre las hojas más jóvenes desde la primavera.',
  'why.cause.downy-mildew': 'El mildiu se llevó las hojas',
  'why.advice.downy-mildew':
    'No pongas cebollas en ese bancal en cuatro años. Dales viento y sitio, riega solo la tierra, y compra bulbillos sanos.',
  'why.cause.purple-blotch': 'La mancha púrpura se llevó las hojas',
  'why.advice.purple-blotch':
    'No pongas cebollas en ese bancal en tres años, retira todas las hojas muertas, y dales sitio para que se sequen pronto.',
  'why.cause.leaf-blight': 'El tizón se llevó las hojas',
  'why.advice.leaf-blight':
    'Dales viento y sitio, riega la tierra temprano, y retira todas las hojas muertas.',
  'why.cause.pink-root': 'La raíz rosada se llevó las raíces',
  'why.advice.pink-root':
    'No vuelvas a poner cebollas allí antes de seis años, o cultiva una clase que resista la raíz rosada.',
  'why.cause.white-rot': 'Hay podredumbre blanca en la tierra',
  'why.advice.white-rot':
    'No pongas más cebollas, ajos ni puerros en esa tierra: allí dura veinte años y más. Limpia herramientas y botas.',
  'why.cause.basal-rot': 'La podredumbre subió desde la base',
  'why.advice.basal-rot':
    'No pongas cebollas allí en cuatro años, no hieras las raíces, y no guardes ninguna de base blanda.',
  'why.cause.bacterial-rot': 'Las bacterias pudrieron los bulbos',
  'why.advice.bacterial-rot':
    'Riega la tierra y no las hojas cuando engorden los bulbos, para cuando se tumben, trata los bulbos con cuidado y sécalos deprisa.',
  'why.cause.neck-rot-mould': 'La podredumbre entró por cuellos verdes',
  'why.advice.neck-rot-mould':
    'Arranca ya maduras y con tiempo seco, seca hasta que el cuello esté cerrado, y no cortes las hojas antes.',
  'why.cause.black-mould': 'Les creció moho negro',
  'why.advice.black-mould': 'Sécalas deprisa, no las golpees, y guárdalas en fresco y en seco.',
  'why.cause.ozone': 'El aire sucio quemó las hojas',
  'why.advice.ozone':
    'No tiene remedio. Ten húmedo el bancal en días cálidos y brumosos; algunas clases lo aguantan mejor.',
  'why.cause.wind': 'El viento o el granizo rompió las hojas',
  'why.advice.wind': 'Pon un seto o una malla del lado del viento, o cultiva una clase de hojas más cortas.',
  'why.cause.light-on-bulbs': 'Les dio la luz a los bulbos',
  'why.advice.light-on-bulbs': 'Planta algo más hondo en tierra suelta, y seca y guarda los bulbos sin luz.',
  'why.cause.sun-on-lifted-bulbs': 'El sol fuerte quemó bulbos ya arrancados',
  'why.advice.sun-on-lifted-bulbs':
    'Con calor sécalas a la sombra, o tapa los bulbos de cada fila con las hojas de la siguiente.',
  'why.cause.badly-dried': 'Se guardaron antes de estar secas',
  'why.advice.badly-dried':
    'Sécalas en una capa, con aire por debajo y por encima, hasta que el cuello esté cerrado y las pieles crujan.',
  'why.cause.knocked-about': 'Se golpearon',
  'why.advice.knocked-about': 'Deja los bulbos con cuidado, sin tirarlos, y come primero los golpeados.',
  'why.cause.hot-kind': 'Esta es una clase picante',
  'why.advice.hot-kind':
    'Cultiva una clase vendida como suave o dulce, riégala bien, y cómela en sus primeros meses.',
  'why.cause.nothing-wrong': 'No salió nada mal: las cebollas hacen esto',
  'why.advice.nothing-wrong': 'Hazlo igual otra vez.',
} as const;

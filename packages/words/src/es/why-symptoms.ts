/** Qué se ve cuando algo sale mal: su nombre, qué lo distingue de lo parecido y otras palabras para decirlo. */
export const whySymptoms = {
  'why.symptom.few-came-up': 'Nacieron pocas',
  'why.symptom-note.few-came-up':
    'Huecos desde el principio: allí nunca asomó nada. Las que nacieron y luego faltaron son otra cosa.',
  'why.called.few-came-up':
    'pocas nacieron, nacieron mal, no nacieron, no nacen, no nació nada, no salieron, no brotaron las semillas, no germinaron, no germina, mala germinación, mala nascencia, nascencia irregular, pocas plantas, huecos, huecos en la fila, claros, calvas',
  'why.symptom.seedlings-toppled': 'Las plántulas cayeron y murieron',
  'why.symptom-note.seedlings-toppled':
    'El tallo se pone fino y pardo a ras de tierra y la plántula se tumba. Nada la ha mordido.',
  'why.called.seedlings-toppled':
    'caída de plántulas, plántulas caídas, se cayeron las plántulas, se caen las plántulas, plántulas muertas, murieron las plántulas, mal de semillero, mal del semillero, se pudrieron las plántulas',
  'why.symptom.gone-in-a-row': 'Faltan en fila',
  'why.symptom-note.gone-in-a-row':
    'Plantas que estaban desaparecen una tras otra por la fila: mordidas, arrancadas o comidas por debajo.',
  'why.called.gone-in-a-row':
    'faltan plantas, desaparecieron, desaparecen, desaparecidas, comidas, se las comieron, mordidas, cortadas a ras de tierra, cortadas, arrancadas por pájaros, pájaros, babosas, rosquilla, gusano gris, gusanos grises',
  'why.symptom.died-in-winter': 'Murieron en invierno',
  'why.symptom-note.died-in-winter':
    'Estaban verdes al llegar el invierno, y pardas, flojas o perdidas al acabar.',
  'why.called.died-in-winter':
    'muertas en invierno, se murieron en invierno, perdidas en invierno, las mató el frío, las mató la helada, las mató el hielo, muertas de frío, no pasaron el invierno, no aguantaron el invierno, heladas en la tierra, se helaron en la tierra',
  'why.symptom.out-of-the-ground': 'Salidas de la tierra',
  'why.symptom-note.out-of-the-ground':
    'Bulbillos o plantas jóvenes tumbados encima con raíces y todo, y nada los ha mordido.',
  'why.called.out-of-the-ground':
    'fuera de la tierra, descalzadas, descalce, levantadas por la helada, levantadas, las sacó la helada, bulbillos fuera, encima de la tierra, raíces al aire',
  'why.symptom.dry-tips': 'Puntas secas',
  'why.symptom-note.dry-tips':
    'Las puntas se ponen pardas o blancas y detrás la hoja sigue verde: sin pelusa ni anillos.',
  'why.called.dry-tips':
    'puntas de las hojas secas, puntas quemadas, puntas amarillas, puntas marrones, puntas pardas, puntas blancas, puntas muertas, se secan las puntas, se secaron las puntas',
  'why.symptom.silver-streaks': 'Rayas plateadas en las hojas',
  'why.symptom-note.silver-streaks':
    'Motas y rayas finas y pálidas, e insectos diminutos y estrechos entre las hojas más jóvenes.',
  'why.called.silver-streaks':
    'trips, hojas plateadas, plateado, plateadas, rayas blancas, rayas pálidas, hojas rayadas, hojas moteadas, insectos diminutos, bichos diminutos',
  'why.symptom.grey-fur': 'Pelusa gris en las hojas',
  'why.symptom-note.grey-fur':
    'Una pelusa gris o violeta en manchas pálidas, fácil de ver con el rocío. Luego la hoja se dobla y muere.',
  'why.called.grey-fur':
    'mildiu, mildiú, mildeo, pelusa en las hojas, hojas con pelusa, moho en las hojas, hojas mohosas, pelusa violeta, moho gris en las hojas',
  'why.symptom.purple-spots': 'Manchas moradas con anillos',
  'why.symptom-note.purple-spots':
    'Manchas hundidas, moradas por dentro y con anillos más claros, que corren por la hoja. Sin pelusa clara.',
  'why.called.purple-spots':
    'mancha púrpura, manchas púrpura, manchas púrpuras, manchas moradas, manchas en las hojas, hojas manchadas, manchas marrones, manchas pardas, manchas con anillos, alternaria',
  'why.symptom.bent-leaves': 'Hojas dobladas o rotas',
  'why.symptom-note.bent-leaves':
    'Dobladas en todo el bancal en uno o dos días, y el cuello de debajo sigue firme. Con el cuello blando pueden estar maduras.',
  'why.called.bent-leaves':
    'hojas dobladas, hojas rotas, hojas quebradas, hojas partidas, tumbadas por el viento, aplastadas, pisadas, granizo, daños de granizo, daños de tormenta, daños de viento',
  'why.symptom.wilted': 'Marchitas o amarillas',
  'why.symptom-note.wilted':
    'Plantas enteras caídas o amarillas aunque el bancal esté húmedo. Arranca una y mira las raíces.',
  'why.called.wilted':
    'marchitas, marchitamiento, se marchitan, se marchitaron, mustias, lacias, caídas, flojas, amarillas, amarillean, se ponen amarillas, hojas amarillas, hojas caídas',
  'why.symptom.flowered': 'Se espigaron',
  'why.symptom-note.flowered':
    'Un tallo rígido, redondo y hueco con un botón en la punta. Las hojas son más blandas y acaban en punta.',
  'why.called.flowered':
    'espigadas, espigado, espigarse, se espigan, se suben, se subieron, subidas, subidas a flor, se subieron a flor, florecieron, en flor, floración, flores, flor, tallo floral, tallos florales, se fueron a flor, se fueron a semilla, echaron semilla, escapo',
  'why.symptom.no-bulb': 'Sin bulbo, solo hojas',
  'why.symptom-note.no-bulb': 'Verdes y en pie hasta el final, y apenas más gruesas por abajo que un puerro.',
  'why.called.no-bulb':
    'sin bulbo, no hay bulbos, no hay bulbo, no hicieron bulbo, no hacen bulbo, no bulbaron, no bulbifican, no formaron bulbo, no se formaron bulbos, nunca hicieron bulbo, solo hojas, todo hojas, pura hoja, como cebolletas, como puerros, no engordaron',
  'why.symptom.tops-stood': 'Las hojas no se tumbaron',
  'why.symptom-note.tops-stood':
    'Hay bulbo, pero al acabar la temporada el cuello sigue rígido y la hoja verde. Suele venir con cuellos gruesos.',
  'why.called.tops-stood':
    'no se tumbaron, no se tumban, nunca se tumbaron, no se doblaron, hojas en pie, siguen en pie, siguen verdes, verdes todavía, no maduraron, no maduran, sin madurar, inmaduras, no acabaron',
  'why.symptom.fell-early': 'Las hojas se tumbaron pronto',
  'why.symptom-note.fell-early':
    'El cuello se ablandó y las hojas se tumbaron semanas antes de lo esperado, en bulbos que aún podían crecer.',
  'why.called.fell-early':
    'se tumbaron, se tumbaron antes, se tumbaron demasiado pronto, tumbadas, tumbadas pronto, maduraron pronto, maduraron antes de tiempo, maduraron demasiado pronto, acabaron pronto, se secaron pronto, se secaron antes de tiempo',
  'why.symptom.small': 'Bulbos pequeños',
  'why.symptom-note.small': 'Maduras y secas como cualquier cebolla, solo que menos.',
  'why.called.small':
    'pequeñas, pequeños, pequeño, demasiado pequeñas, muy pequeñas, chicas, chicos, diminutas, enanas, bulbos chicos, bulbos diminutos, se quedaron pequeñas, no crecieron, poco tamaño, poco calibre, mala cosecha, poca cosecha, como canicas, como nueces',
  'why.symptom.thick-necks': 'Cuellos gruesos',
  'why.symptom-note.thick-necks':
    'Hay bulbo, pero el cuello es grueso como un pulgar, blando por dentro, y no se seca.',
  'why.called.thick-necks':
    'cuello grueso, cuello gordo, cuellos gordos, cuello de botella, cuello ancho, cuello abierto, cuellos abiertos, cuellos verdes, cuello verde, el cuello no se cerró, el cuello no se cierra, el cuello no se seca',
  'why.symptom.split': 'Partidas o dobles',
  'why.symptom-note.split':
    'Dos o más centros bajo una piel, o dos bulbos sobre una base. Un solo hueco con un tallo es de una flor.',
  'why.called.split':
    'partidas, partidos, dobles, doble, bulbos dobles, gemelas, divididas, divididos, rajadas, rajados, abiertas, reventadas, dos en una, varios centros, dos centros, varios corazones',
  'why.symptom.stalk-in-bulb': 'Un tallo dentro del bulbo',
  'why.symptom-note.stalk-in-bulb':
    'Cortado de través, un tubo duro o hueco sube por el medio: la planta se espigó, o iba a hacerlo.',
  'why.called.stalk-in-bulb':
    'tallo dentro, tallo en el medio, tallo por dentro, tallo hueco, centro duro, centro hueco, corazón duro, corazón leñoso, centro leñoso, leñosas, palo en el medio',
  'why.symptom.green-shoulders': 'Hombros verdes',
  'why.symptom-note.green-shoulders': 'Verde donde la luz llegó al bulbo; por lo demás firme y sano.',
  'why.called.green-shoulders':
    'bulbos verdes, piel verde, carne verde, verdes por arriba, verdes por dentro, se pusieron verdes, verdeo, reverdecidas',
  'why.symptom.scalded': 'Quemadas por el sol',
  'why.symptom-note.scalded':
    'Una mancha descolorida, arrugada y blanda por el lado que miraba al sol; lo demás está firme.',
  'why.called.scalded':
    'quemadas, quemadura de sol, quemaduras de sol, golpe de sol, golpes de sol, asoleadas, soleadas, escaldadas, escaldado, bulbos quemados, manchas descoloridas, cocidas',
  'why.symptom.soft': 'Blandas o viscosas al arrancar',
  'why.symptom-note.soft': 'Los bulbos ceden al pulgar, sueltan líquido o apestan al salir de la tierra.',
  'why.called.soft':
    'blandas, blandos, bulbos blandos, viscosas, babosas por dentro, podridas, podridos, podrida, bulbos podridos, podredumbre, podredumbre blanda, se pudrieron, se pudren, podridas en la tierra, se pudrieron en la tierra, aguadas, apestan, huelen mal, mal olor, bacteriosis',
  'why.symptom.white-fluff': 'Pelusa blanca en las raíces',
  'why.symptom-note.white-fluff':
    'Algo algodonoso en la base, en la tierra, a menudo con granos negros. La pelusa del cuello, ya guardadas, es podredumbre del cuello.',
  'why.called.white-fluff':
    'podredumbre blanca, moho blanco, hongo blanco, pelusa blanca, pelusa en las raíces, pelusa en la base, algodón, algodonoso, moho en las raíces, raíces mohosas',
  'why.symptom.pink-roots': 'Raíces rosas',
  'why.symptom-note.pink-roots':
    'Las raíces se ponen rosas, luego rojo oscuro, y se marchitan; el bulbo está sano.',
  'why.called.pink-roots':
    'raíz rosada, raíces rosadas, raíz rosa, raíces rojas, raíces moradas, raíces muertas, pocas raíces, sin raíces',
  'why.symptom.maggots': 'Gusanos dentro',
  'why.symptom-note.maggots':
    'Gusanos blancos sin patas, y sus galerías, en la base. La podredumbre suele venir después.',
  'why.called.maggots':
    'gusanos, gusano, agusanadas, larvas, mosca de la cebolla, mosca, galerías, gusanos en el bulbo, agujeros en el bulbo',
  'why.symptom.too-hot': 'Pican demasiado',
  'why.symptom-note.too-hot': 'Sanas y bien criadas, solo más fuertes de lo que querías.',
  'why.called.too-hot':
    'pican, picantes, picante, demasiado picantes, muy picantes, fuertes, demasiado fuertes, muy fuertes, amargas, no son dulces, no son suaves, hacen llorar',
  'why.symptom.neck-rot': 'Podredumbre del cuello',
  'why.symptom-note.neck-rot':
    'Semanas después de arrancar, el cuello se hunde y se pone pardo, con moho gris que baja. La pelusa blanca en las raíces es podredumbre blanca.',
  'why.called.neck-rot':
    'cuello podrido, cuellos podridos, cuello blando, cuellos blandos, cuello mohoso, moho en el cuello, moho gris, moho gris en el cuello, pelusa en el cuello, botritis, botrytis, podridas por arriba, podridas por el cuello',
  'why.symptom.rotted-in-store': 'Se pudrieron guardadas',
  'why.symptom-note.rotted-in-store':
    'Sanas al guardarlas, luego blandas, mojadas o mohosas, desde la base o entre las capas, no desde el cuello.',
  'why.called.rotted-in-store':
    'podridas guardadas, se pudren guardadas, podridas en el almacén, se pudrieron en el almacén, podredumbre en el almacén, podridas en la despensa, se pudrieron en la despensa, se estropearon, estropeadas, se echaron a perder, mohosas, moho, enmohecidas, se enmohecieron, no se guardaron, no se conservaron, no se conservan, no aguantaron, no duraron',
  'why.symptom.black-dust': 'Polvo negro bajo la piel',
  'why.symptom-note.black-dust':
    'Como hollín bajo las pieles secas, a menudo por las venas; la carne puede estar limpia.',
  'why.called.black-dust':
    'polvo negro, moho negro, hollín, carbón, manchas negras, piel negra, rayas negras, tizne, tiznadas, aspergillus',
  'why.symptom.sprouted': 'Brotaron guardadas',
  'why.symptom-note.sprouted':
    'Un brote verde sale por arriba, o raíces por la base, con el bulbo aún firme.',
  'why.called.sprouted':
    'brotadas, brotaron, brotan, brotes, brote, brotes verdes, talladas, se tallaron, se grillaron, grilladas, entallecidas, germinadas, brotadas en el almacén, brotaron en el almacén, volvieron a crecer, echaron brotes',
  'why.symptom.glassy': 'Capas vidriosas',
  'why.symptom-note.glassy':
    'Las capas se ven grises y transparentes, como empapadas, sobre todo las de fuera y todo alrededor.',
  'why.called.glassy':
    'vidriosas, vítreas, translúcidas, traslúcidas, transparentes, capas grises, capas aguadas, heladas, congeladas, se helaron, se congelaron, heladas en el almacén, se helaron en el almacén, daño por helada',
  'why.called-filler':
    'a, al, el, la, los, las, un, una, unos, unas, mi, mis, me, de, del, en, y, con, que, es, son, está, están, estaban, fueron, ha, han, cebolla, cebollas, se, le, les, por, muy, demasiado',
} as const;

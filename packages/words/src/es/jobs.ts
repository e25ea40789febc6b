/** Labores de un cultivo: qué hacer, cuándo y por qué. */
export const jobs = {
  'job.when.today': 'hoy',
  'job.when.on': 'el {date}',
  'job.when.now': 'ahora ({range})',
  'job.when.about': 'hacia el {date} ({range})',
  'job.state.gone-by': '{name}: tocaba hacia el {date} ({range}) y ya pasó.',
  'job.state.done': '{name}: hecho.',
  'job.state.left-out': '{name}: se deja.',

  'job.event': '{job}: {crop}',
  'job.source': 'Fuente: {source}.',

  'job-name.sow': 'Sembrar',
  'job-name.prick-out': 'Repicar',
  'job-name.trim': 'Recortar las hojas',
  'job-name.harden': 'Endurecer',
  'job-name.plant': 'Plantar',
  'job-name.weed': 'Escardar',
  'job-name.thin': 'Aclarar',
  'job-name.feed': 'Abonar',
  'job-name.feed-stop': 'Dejar de abonar',
  'job-name.water': 'Regar',
  'job-name.water-stop': 'Dejar de regar',
  'job-name.watch-onion-fly': 'Vigilar la mosca de la cebolla',
  'job-name.watch-seedcorn-fly': 'Vigilar la mosca de los sembrados',
  'job-name.watch-thrips': 'Vigilar los trips',
  'job-name.watch-mildew': 'Vigilar el mildiu',
  'job-name.check-tops': 'Mirar las hojas',
  'job-name.lift': 'Arrancar',
  'job-name.lift.pull-green': 'Arrancar en verde',
  'job-name.dry': 'Secar',
  'job-name.clean': 'Limpiar',
  'job-name.store': 'Guardar',
  'job-name.check-store': 'Repasar las guardadas',
  'job-name.flight': '{name}, vuelo {flight}',
  'job-name.numbered': '{name} ({number})',

  'job.sow':
    'Siembra {tray, select, yes {en semillero } other {}}{when}, a {depthMm}: nace hacia el {upDay}{tray, select, yes {, se trasplanta hacia el {plantDay}} other {}} y tiene {leaves, plural, one {# hoja} other {unas # hojas}} cuando empiezan los bulbos hacia el {onsetDay}; cada una puede ser una capa.',
  'job.sow-leaves':
    'Siembra {tray, select, yes {en semillero } other {}}{when}, a {depthMm}: nace hacia el {upDay}, y la mayoría de los años no empieza ningún bulbo.',
  'job.sow-never-up':
    'Siembra {when}, a {depthMm}, y espera poco: la mayoría de los años la semilla no nace.',
  'job.prick-out':
    'Repica las plántulas {when}, si están apretadas: debían nacer hacia el {upDay}, y a las dos o tres semanas quieren sitio.',
  'job.trim':
    'Recorta las hojas a unos 100 mm {when}, cuando lleguen a 125 mm: las plántulas siguen recias hasta el trasplante, hacia el {plantDay}.',
  'job.harden':
    'Endurece las plántulas {when}, cada día más rato fuera: se trasplantan hacia el {plantDay}, y de 7 a 10 días las hacen fuertes.',
  'job.plant-ready':
    'Trasplanta {when}, a {depthMm}: para entonces las plántulas tienen unas {madeLeaves, number} hojas o llevan {weeks} semanas, y el bancal está a {bedTempC} o más.',
  'job.plant':
    'Planta {when}, a {depthMm}: {leaves, plural, one {se hace # hoja} other {se hacen unas # hojas}} hasta que empiezan los bulbos hacia el {onsetDay}, y cada una puede ser una capa.',
  'job.plant-leaves': 'Planta {when}, a {depthMm}: saldrán hojas, pero la mayoría de los años ningún bulbo.',
  'job.weed':
    'Ten el bancal sin malas hierbas {when}: lo que quitan antes de que empiecen los bulbos, hacia el {untilDay}, no se recupera, y dejadas ocho semanas se llevaron el {percent} % de una cosecha.',
  'job.weed-leaves':
    'Ten el bancal sin malas hierbas {when}: dejadas ocho semanas se llevaron el {percent} % de una cosecha.',
  'job.thin':
    'Arranca una planta de cada dos como cebolleta {when}: para entonces tienen {leaves, plural, one {# hoja} other {# hojas}}, y las que quedan necesitan sitio antes de que empiecen los bulbos hacia el {onsetDay}.',
  'job.feed-ground':
    'Incorpora {gramsPerM2}{bed, select, yes {, {gramsForBed} para el bancal,} other {}} de {product} {when}, antes de poner el cultivo: las hojas hacen los bulbos y se abonan antes del {onsetDay}, cuando empiezan.',
  'job.feed-ground-leaves':
    'Incorpora {gramsPerM2}{bed, select, yes {, {gramsForBed} para el bancal,} other {}} de {product} {when}, antes de poner el cultivo.',
  'job.feed':
    'Abona con {gramsPerM2}{bed, select, yes {, {gramsForBed} para el bancal,} other {}} de {product} {when}: entonces hay {leaves, plural, one {# hoja} other {# hojas}} y los bulbos empiezan hacia el {onsetDay}; después, el nitrógeno engorda los cuellos.',
  'job.feed-leaves':
    'Abona con {gramsPerM2}{bed, select, yes {, {gramsForBed} para el bancal,} other {}} de {product} {when}: entonces hay {leaves, plural, one {# hoja} other {# hojas}}.',
  'job.feed-stop':
    'No des más nitrógeno desde el {bestDay}: los bulbos pueden empezar ya (un año medio, el {onsetDay}), y el abono tardío da cuellos gruesos que no se conservan.',
  'job.water-now':
    'Riega {when}, {litresPerM2}{bed, select, yes {, {litresForBed} para el bancal} other {}}{hose, select, yes { en {minutes, plural, one {# minuto} other {# minutos}}} other {}}: al bancal le faltan {depletionMm} de agua, y las cebollas lo notan desde {readilyAvailableMm}.',
  'job.water-next':
    'El próximo riego, {when}, si no llueve antes: {share} el bancal lo pide antes del {untilDay}.',
  'job.water-stop':
    'Deja de regar {when}: las hojas se tumban hacia el {fallDay}, y el agua de después trae podredumbre al guardarlas.',
  'job.onion-fly':
    'Mantén cerrada la malla o la manta contra la mosca de la cebolla {when}, y quita las plantas marchitas: el vuelo {flight} llega a los {degreeDaysC}, aquí hacia el {flightDay}.',
  'job.seedcorn-fly':
    'Mantén cerrada la malla o la manta contra la mosca de los sembrados {when}: come semillas y plántulas, y el vuelo {flight} es más fuerte a los {degreeDaysC}, aquí hacia el {flightDay}.',
  'job.thrips':
    'Busca trips entre las hojas más jóvenes {when}: para entonces hay una generación nueva cada {generationDays, plural, one {# día} other {# días}}, y dañan más cuando empiezan los bulbos, hacia el {onsetDay}.',
  'job.mildew':
    'Busca pelusa gris en las hojas, el mildiu, {when}: los días frescos y húmedos que le van bien llegan {share} hacia el {spellDay}, y las manchas salen de 10 a 16 días después.',
  'job.check-tops':
    'Mira las hojas dos veces por semana {when}: se tumban hacia el {fallDay}, y la primera de cada diez avisa de que el bancal madura.',
  'job.tops-over':
    'Arranca {when}, cuando más de la mitad de las hojas estén tumbadas: se tumban hacia el {fallDay}{some, select, yes {, {share}} other {}}, y si esperan tres semanas más se pudren más.',
  'job.tops-seen':
    'Arranca {when}, con tiempo seco: el {seenDay} estaban tumbadas las hojas de {topsPlantShare}, y tres semanas después de la mitad se pudren más.',
  'job.lift-before-rain':
    'Arranca {when}, antes de la lluvia si puedes: las hojas están tumbadas en cerca de {topsPlantShare}, y pueden caer unos {rainMm} en diez días.',
  'job.lift-unripe':
    'Arranca {when}, estén como estén las hojas: los bulbos empiezan hacia el {onsetDay}, pero por debajo de {restTempC} ya no crecen; come primero las de cuello grueso.',
  'job.pull-green':
    'Arráncalas como cebolletas {when}: para entonces tienen {leaves, plural, one {# hoja} other {# hojas}}, y la mayoría de los años no empieza ningún bulbo.',
  'job.lifted': 'Arrancar: arrancadas el {liftedDay}.',
  'job.dry':
    'Seca los bulbos {when}, al calor y al aire, sin lluvia: arrancados hacia el {liftDay}, tardan de {fromDays} a {toDays} días en cerrar el cuello.',
  'job.dry-unripe':
    'Seca los bulbos {when} lo mejor que se pueda: arrancados hacia el {liftDay} con el cuello grueso, no se conservan; cómelos primero.',
  'job.clean':
    'Limpia {when}, cortando hojas y raíces cuando el cuello esté seco del todo: suele estarlo {days, plural, one {# día} other {# días}} después de arrancar, hacia el {liftDay}.',
  'job.store':
    'Lleva los bulbos sanos a un sitio seco, fresco y aireado {when}: arrancados hacia el {liftDay}, para entonces están curados.',
  'job.check-store':
    'Repasa las guardadas {when} y saca las blandas o brotadas: donde las guardas, menos de la mitad sigue sana desde el {lastsDay}, más o menos.',

  'job-caution.treated-seed':
    'Las semillas y bulbillos tratados no son comida, ni las plantas jóvenes que salen de ellos.',
  'job-caution.white-rot':
    'No pongas cebollas donde se haya visto podredumbre blanca, ni las traigas de tierra que pudo tenerla.',
  'job-caution.lamps': 'Aleja del agua lámparas, mantas térmicas y enchufes.',
  'job-caution.fertiliser':
    'Sigue la etiqueta, usa guantes, no respires el polvo y guarda harinas y sacos lejos de animales y niños.',
  'job-caution.raw-manure': 'El estiércol crudo se incorpora al menos 120 días antes de comer las cebollas.',
  'job-caution.hose-bans': 'Respeta las normas locales sobre el riego.',
  'job-caution.waste-water': 'No riegues con aguas usadas cebollas que se comen crudas.',
  'job-caution.labels':
    'Si fumigas, la etiqueta es la ley: cultivo, dosis, días antes de arrancar, abejas. Pide antes consejo local.',
  'job-caution.nets': 'Ajusta las mallas al suelo, para que no atrapen pájaros ni erizos.',
  'job-caution.forecast': 'Una previsión no es una promesa: mira también el cielo.',
  'job-caution.heaters':
    'No quemes nunca carbón, gas ni queroseno para secar bulbos en un cuarto cerrado; aleja las hojas secas de los calefactores.',
  'job-caution.dust': 'Limpia al aire libre, o con mascarilla si te molestan el polvo y el moho.',
  'job-caution.pets': 'La cebolla envenena a perros, gatos y vacas: guarda de ellos pieles y restos.',
  'job-caution.lofts': 'Cuidado con las escaleras y con lo que aguanta un altillo; lleva poca carga.',

  'job-source.common-practice': 'práctica común, sin fuente',
  'job-source.memory': 'de memoria, sin fuente',
  'unit.degree-days-c': '{value} grados-día (°C)',
  'unit.degree-days-f': '{value} grados-día (°F)',
} as const;

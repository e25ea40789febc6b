/** Si conviene arrancar hoy, y cómo se secan los bulbos. */
export const lift = {
  'lift.title': 'Arrancar y secar',
  'lift.tops.none': 'no hay hojas tumbadas',
  'lift.tops.few': 'hay pocas hojas tumbadas',
  'lift.tops.some': 'cerca de {tenths} de cada 10 plantas tienen las hojas tumbadas',
  'lift.tops.most': 'casi todas las hojas están tumbadas',
  'lift.ahead': '{wet, select, wet {lluviosos} some {de chubascos} other {secos}}',
  'lift.lead.lift': 'Arranca ya, en un día seco: {tops}.',
  'lift.lead.look-lift':
    'Míralas hoy: según el cálculo, {tops}. Si hay seis de cada diez o más tumbadas, arranca en un día seco.',
  'lift.lead.look-before-rain':
    'Míralas hoy, que vienen días lluviosos: según el cálculo, {tops}. Si ya hay alguna tumbada, arranca antes de la lluvia.',
  'lift.lead.wait':
    'Espera: {tops}, y los próximos días son {ahead}. El mejor día para arrancar es hacia el {date}.',
  'lift.lead.before-rain': 'Arranca antes de la lluvia: {tops}, y los próximos días son lluviosos.',
  'lift.lead.too-early': 'Es pronto para arrancar: {tops}. Vuelve a mirar cuando caigan las primeras.',
  'lift.lead.lifted': 'Arrancadas el {date}: sécalas ahora hasta que los cuellos estén cerrados.',
  'lift.signs':
    'Fíate primero de tus manos: los cuellos se notan blandos, las hojas se doblan solas, las pieles empiezan a crujir. No dobles las hojas tú.',
  'lift.tops-from.seen': 'Esa parte es la que anotaste, llevada hasta hoy.',
  'lift.tops-from.run':
    'Esa parte está calculada, no vista: cuenta hojas en algunas plantas y anota la parte tumbada.',
  'lift.rain.forecast':
    'Lluvia en los próximos diez días: cerca de {rain}, según el tiempo guardado aquí y su pronóstico.',
  'lift.rain.usual':
    'Lluvia en los próximos diez días: cerca de {rain}, lo habitual aquí; no hay pronóstico guardado, así que mira uno.',
  'lift.loss.wait':
    'Arrancadas hoy pierden cerca del {today} % de lo que podrían valer: los bulbos aún engordan y los cuellos quedan abiertos. Arrancadas hacia el {date}, cerca del {best} %.',
  'lift.loss.now':
    'Arrancadas hoy pierden cerca del {today} % de lo que podrían valer: unas aún crecen, otras llevan ya un tiempo. Dos o tres semanas después de tumbarse la mitad de las hojas, se pudren más y las pieles se abren.',
  'lift.kitchen':
    'A la cocina primero: {thick, select, no {} other {las de cuello grueso, {thick}; }}{bolted, select, no {} other {las espigadas, {bolted}; }}y todas las golpeadas.',
  'lift.dry.outdoors': 'Al aire libre: {days}.',
  'lift.dry.under-roof': 'Bajo techo, con aire: {days}.',
  'lift.dry.warm-room': 'En un cuarto cálido, de 22 a 25 °C, con el aire en movimiento: {days}.',
  'lift.dry.warm-room-us': 'En un cuarto cálido, de 72 a 77 °F, con el aire en movimiento: {days}.',
  'lift.dry.days':
    'cerca de {days, plural, one {# día} other {# días}}, {range}; pesan un {loss} % menos al estar secas',
  'lift.dry.at-least':
    'cerca de {days, plural, one {# día} other {# días}}, y en años lluviosos no se secan en {most} días; pesan un {loss} % menos al estar secas',
  'lift.dry.never': 'allí casi nunca llegan a secarse en {most, plural, one {# día} other {# días}}',
  'lift.dry.done':
    'Secas quiere decir: el cuello está cerrado y ya no resbala entre los dedos, las pieles crujen.',
  'lift.wet':
    'Con tiempo húmedo, sécalas a cubierto: en una capa sobre rejillas o redes, con las hojas puestas y aire por debajo y por encima.',
  'lift.caution.heater':
    'Nunca uses estufas de carbón, gas o parafina ni un motor en un cuarto cerrado: el monóxido de carbono mata. Aparta estufas eléctricas y ventiladores de las hojas secas y del agua, y no los dejes solos.',
  'lift.caution.dust': 'Las pieles secas sueltan polvo y moho: limpia al aire libre, o con mascarilla.',
} as const;

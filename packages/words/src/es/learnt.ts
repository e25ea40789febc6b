/** Lo que la temporada en el bancal ha dicho de sus plantas, y cómo va. */
export const learnt = {
  'learnt.phyllochron':
    'Tus hojas salen un {percent} % más {way, select, more {despacio} other {deprisa}} de lo habitual en su clase{tops, select, later {: se tumban unos {days, plural, one {# día} other {# días}} más tarde} earlier {: se tumban unos {days, plural, one {# día} other {# días}} antes} other {}}.',
  'learnt.ripening':
    'Tus bulbos maduran un {percent} % más {way, select, more {despacio} other {deprisa}} de lo habitual en su clase{tops, select, later {: las hojas se tumban unos {days, plural, one {# día} other {# días}} más tarde} earlier {: las hojas se tumban unos {days, plural, one {# día} other {# días}} antes} other {}}.',
  'learnt.criticalH':
    'Para formar bulbos, tus cebollas piden días unos {minutes} minutos más {way, select, more {largos} other {cortos}} de lo habitual en su clase{tops, select, later {: las hojas se tumban unos {days, plural, one {# día} other {# días}} más tarde} earlier {: las hojas se tumban unos {days, plural, one {# día} other {# días}} antes} other {}}.',
  'learnt.growth':
    'Tus plantas crecen un {percent} % {way, select, more {más} other {menos}} de lo habitual en su clase.',
  'learnt.as-usual': 'Nada de lo que anotaste se sale hasta ahora de lo habitual en su clase.',
  'learnt.before': 'Se tiene en cuenta lo que mostraron aquí cultivos anteriores de esta cebolla.',
  'learnt.later':
    '{count, plural, one {Queda fuera una anotación posterior al {date}} other {Quedan fuera # anotaciones posteriores al {date}}}.',
  'learnt.lifted':
    'Arrancadas el {date}: lo que se dice de después es lo que habría hecho el cultivo en pie.',
  'standing.see':
    '{when, select, now {Ahora deberías ver {expected, select, 1 {1 hoja verde} other {{expected} hojas verdes}} por planta; tienes {seen}} other {El {date} debería haber habido {expected, select, 1 {1 hoja verde} other {{expected} hojas verdes}} por planta; contaste {seen}}}{stand, select, behind {: {within, select, true {dentro de eso, pero unos {days, plural, one {# día} other {# días}} por detrás de un cultivo medio} other {unos {days, plural, one {# día} other {# días}} de retraso}}} ahead {: {within, select, true {dentro de eso, pero unos {days, plural, one {# día} other {# días}} por delante de un cultivo medio} other {unos {days, plural, one {# día} other {# días}} de adelanto}}} beyond {: más de lo habitual entonces o después} on {: como debe ser} other {}}.',
  'standing.means':
    'Las hojas {tops, select, same {siguen tumbándose} other {se tumban}} entonces hacia el {date}{tops, select, later {, {days, plural, one {# día} other {# días}} más tarde de lo previsto} earlier {, {days, plural, one {# día} other {# días}} antes de lo previsto} other {}}, y los bulbos llegan a unos {diameter} de ancho{size, select, same {, como estaba previsto} other { en lugar de {expected}}}.',
  'standing.do.leaves':
    'Los bulbos empiezan dentro de unos {days, plural, one {# día} other {# días}}, hacia el {date}, y cada hoja que salga hasta entonces los hace mayores: mantén el bancal sin malas hierbas, {water, select, rain {riega si se seca} other {sigue regando}} y, si abonas, hazlo ahora y no más tarde, como diga el envase.',
  'standing.do.wait':
    'Los bulbos empiezan hacia el {date}, demasiado pronto para que el abono traiga más hojas: mantén el bancal limpio y húmedo, y espera.',
  'standing.do.late':
    'Los bulbos ya han empezado, así que más hojas ya no sirven: escarda, no abones, riega en tiempo seco hasta que las hojas se tumben, y cuenta con bulbos más pequeños.',
} as const;

/** La página «Acerca de» de la aplicación. */
export const appAbout = {
  'app.about.what': 'Qué es esto',
  'app.about.what.text':
    'Neckfall ayuda a quien cultiva cebollas de bulbo en el huerto a elegir el tipo, la forma de empezar y el día. Cuando una cebolla ha terminado, su cuello se ablanda y las hojas se tumban; un buen cultivo se lleva hacia ese día desde la siembra.',
  'app.about.privacy': 'Privacidad',
  'app.about.privacy.text':
    'Nada sale de este dispositivo. Todo se calcula aquí; no hay cuenta, ni rastreo, ni servidor nuestro. El lugar va en la dirección detrás del signo #, que los navegadores no envían.',
  'app.about.forget': 'Olvidar el lugar y los ajustes guardados en este navegador',
  'app.about.limits': 'Límites',
  'app.about.limits.text':
    'Las respuestas son probabilidades de un modelo de la planta y un modelo del clima. Cada respuesta dice cuánto se separan sus propias fechas y tamaños; lo que ninguna conoce son las plagas, el granizo y el descuido. Se cubren las tierras de los 60° S a los 72° N, a menos de {distance} de un punto con clima.',
  'app.about.sources': 'Fuentes y licencias',
  'app.about.libraries': 'Licencias de los datos y de las bibliotecas que lleva dentro',
  'app.about.defer':
    'Primero van las etiquetas, las normas locales y el consejo de profesionales autorizados.',
  'app.about.version': 'Versión {version}, software libre con licencia MIT.',
} as const;

/** `neckfall --about`. */
export const about = {
  'about.title': 'Neckfall {version}: cultivos de cebolla planeados para cualquier lugar de tierra firme.',
  'about.licence': 'Software libre con licencia MIT. Funciona sin conexión; nada sale de este equipo.',
  'about.sources': 'En qué se apoya',
  'about.chelsa':
    'Temperaturas: ajustadas por nosotros a CHELSA V1.1, 1979–2013. Karger et al. 2017, Scientific Data 4:170122. Abiertas, con cita.',
  'about.cru':
    'Lluvia, días de lluvia, humedad, horas de sol, viento, heladas, amplitud diaria: ajustadas por nosotros a CRU CL 2.0, 1961–1990. New et al. 2002, Climate Research 21:1–25. Abiertas, con cita.',
  'about.geonames': 'Poblaciones, su altitud y su huso horario: GeoNames, geonames.org, licencia CC BY 4.0.',
  'about.land': 'Tierra firme: Natural Earth, dominio público.',
  'about.sun': 'Duración del día: ecuaciones solares de la NOAA según Meeus, Astronomical Algorithms.',
  'about.water': 'Necesidad de agua: FAO, Estudio Riego y Drenaje 56, Allen et al. 1998.',
  'about.plant':
    'La planta: ensayos publicados y trabajos en cámara de cultivo, nombrados junto a cada cifra en docs/how-it-works.md; las cifras de memoria van señaladas como tales.',
  'about.caution':
    'Las respuestas son probabilidades, no promesas. Primero van las etiquetas, las normas locales y el consejo de profesionales autorizados.',
} as const;

export const element = {
  'element.numbers': 'Los números',
  'element.sky-alone':
    'Solo la duración del día, para la que basta la latitud. El tiempo y un cultivo vienen con data.',
  'element.waiting': 'Se están pidiendo el tiempo y el cultivo.',
  'element.no-data': '{url}: de ahí no se obtuvieron ni tiempo ni cultivo ({reason}).',
  'element.no-place': 'Diga dónde: latitude y longitude en grados, o data.',
  'element.other-data':
    '{attribute} no coincide con los datos, que son de {found}. Quítelo o nombre otros datos.',
  'element.degrees':
    '{attribute} «{value}»: se esperaban grados de −{limit, number} a {limit, number}, como 45.76.',
  'element.day': '{attribute} «{value}»: se esperaba un día como AAAA-MM-DD.',
  'element.choice': '{attribute} «{value}»: se esperaba {expected}.',
  'element.point': '{latitude}, {longitude}',
  'element.source': 'Neckfall {version} · {place} · duración del día calculada de la latitud',
  'element.crop': 'El cultivo',
  'element.crop.what': 'Qué pasa',
  'element.crop.range': 'En 8 años de 10',
  'element.needs': 'Lo que las cebollas piden a los días aquí',
  'element.needs.class': 'En el sobre',
  'element.needs.hours': 'Sol al menos',
  'element.needs.days': 'Días así de largos',
  'element.needs.never': 'ninguno',
  'element.needs.always': 'todos',
  'element.needs.count': '{count, plural, one {# día} other {# días}} en torno al {longest}',
} as const;

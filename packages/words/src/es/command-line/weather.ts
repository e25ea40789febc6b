/** Lo que se dice de un registro diario. */
export const weather = {
  'record.missing-code':
    '{file}: {code} significa “no medido” en {days, plural, one {# fila} other {# filas}} de {column}; {days, plural, one {se tomó como desconocido} other {se tomaron como desconocidos}}.',
  'record.stuck':
    '{file}: las noches y los días son exactamente iguales durante {days, number} días desde el {date}. ¿Se paró el termómetro? Se usó tal como está.',
  'record.sun-beyond-sky':
    '{file} tiene más sol del que llega a la tierra en {days, plural, one {# día} other {# días}}. ¿Son los MJ de un solo día? Se usó tal como está.',
  'record.sun-weak':
    '{file}: su sol suma el {percent} % del sol que hay por encima del aire, menos de lo que deja pasar el cielo más cubierto. Si está en kWh, multiplícalo por 3,6 para tener MJ. Se usó tal como está.',
  'record.rain-heavy':
    '{file} pasa de {limit, number} mm de lluvia en {days, plural, one {# día} other {# días}}, hasta {most, number} mm. ¿Son los mm de un solo día? Se usó tal como está.',
  'record.forecast': 'Días del {from} al {to} según el pronóstico, donde {file} los tiene.',
  'record.measured':
    '{known, number} de los {days, number} días del {from} al {to} están medidos{forecast, plural, =0 {} one { y # pronosticado} other { y # pronosticados}}{others, plural, =0 {} other {; los demás son tiempo inventado}}.',
  'record.few':
    '{file} solo tiene {known, number} de los {days, number} días del {from} al {to}; el resto es tiempo inventado.',
  'error.weather-constant':
    '{value}: todos los días tienen las mismas temperaturas, así que no se midieron. Da el registro de un termómetro.',
  'error.weather-other-hemisphere':
    '{value}: en él, el pleno invierno es más cálido que el pleno verano, así que es de la otra mitad de la tierra que {place}. Da un registro de este lugar, o revisa el signo de la latitud.',
} as const;

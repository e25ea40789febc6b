/** La orden de riego se explica. */
export const wateringHelp = {
  'help.watering':
    'Si un cultivo pide agua hoy, cuánta y hasta cuándo, y lo que lleva una temporada en un año corriente y en uno seco.',
  'help.watering.bed-m2': 'tamaño del bancal, en m² (si no: el de la plantación o su bancal, si se conoce)',
  'help.watering.watering':
    'cómo llega el agua al bancal: regadera, manguera o goteo (si no: como dice el bancal, o can)',
  'help.watering.flow': 'lo que da en total la manguera o la línea, en litros por hora',
  'help.watering.efficiency':
    'parte del agua soltada que llega a las raíces, de {min} a {max} (si no: {above} con regadera o manguera, {drip} por goteo)',
  'help.watering.salt': 'sal del agua, como conductividad eléctrica en dS/m, de {min} a {max}',
} as const;

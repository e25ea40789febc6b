/** Qué hacer hoy con un cultivo que salió mal: práctica común de huertas y cocinas, sin fuente. */
export const whyRescue = {
  'why.rescue.few-came-up':
    'Ten el bancal húmedo dos semanas más. Si aún hay tiempo, vuelve a sembrar en los huecos, o llénalos con plántulas o bulbillos.',
  'why.rescue.seedlings-toppled':
    'Saca las caídas con la tierra que las rodea. Da aire y luz a las demás, y riega desde abajo solo cuando se seque la superficie.',
  'why.rescue.gone-in-a-row':
    'Escarba la tierra en el último hueco y busca un gusano o una oruga. Pon una malla sobre las que quedan y llena los huecos.',
  'why.rescue.died-in-winter':
    'Desentierra unas pocas: con la base blanca y firme y raíces nuevas vuelven a crecer, así que dales dos semanas suaves. Llena los huecos con bulbillos o plántulas en primavera.',
  'why.rescue.out-of-the-ground':
    'Vuelve a plantarlas hoy con una paleta, con las raíces hacia abajo y tapadas; empujarlas rompe las raíces. Aprieta la tierra y pon una malla.',
  'why.rescue.dry-tips':
    'Si el bancal está seco a un dedo de hondo, riega. No cortes nada: lo que está verde aún alimenta al bulbo.',
  'why.rescue.silver-streaks':
    'Lava los insectos de entre las hojas con un chorro fuerte de agua, y que no se seque el bancal. Quita la mala hierba de alrededor.',
  'why.rescue.grey-fur':
    'Quita las hojas con pelusa en un día seco. Riega la tierra y no las hojas. Si quedan pocas hojas verdes, arranca ya.',
  'why.rescue.purple-spots':
    'Quita las peores hojas, y riega la tierra temprano. Arranca con tiempo seco y seca los bulbos deprisa.',
  'why.rescue.bent-leaves':
    'Déjalas: una hoja doblada y verde aún alimenta a su bulbo. No las ates ni las cortes. Si se rompió el cuello, arranca esa planta y cómela.',
  'why.rescue.wilted':
    'Arranca una y córtala. Si las raíces y la base están blancas y firmes, riega. Si hay podredumbre, pelusa o gusanos, saca todas las caídas con su tierra.',
  'why.rescue.flowered':
    'Arranca las que tienen tallo y cómelas ya, sin el corazón duro. Deja las demás: aún pueden dar buenos bulbos.',
  'why.rescue.no-bulb': 'Arráncalas como cebolletas mientras están tiernas. Picadas se congelan bien.',
  'why.rescue.tops-stood':
    'Deja de regar y no dobles las hojas. Arranca en un día seco antes de la helada fuerte y seca los bulbos al calor y al aire.',
  'why.rescue.fell-early':
    'Deja de regar. Arranca en un día seco cuando casi todas estén tumbadas, y seca los bulbos como siempre.',
  'why.rescue.small': 'Sécalas como siempre. Las pequeñas sirven enteras para encurtir o para guisos.',
  'why.rescue.thick-necks':
    'Apártalas de las demás, sécalas lo mejor que se pueda y tenlas a la vista. Pica y congela lo que no vayas a comer pronto.',
  'why.rescue.split':
    'Apártalas. Abre cada una y mira entre las mitades, donde se esconden tierra y podredumbre.',
  'why.rescue.stalk-in-bulb':
    'Parte el bulbo por la mitad, quita el tallo duro y usa el resto en pocos días.',
  'why.rescue.green-shoulders': 'Pela lo verde si amarga. Desde ahora ten los bulbos a oscuras.',
  'why.rescue.scalded':
    'Lleva ya los bulbos a la sombra. Usa primero los quemados, y tira los que hayan empezado a pudrirse.',
  'why.rescue.soft':
    'Aparta hoy los blandos, antes de que estropeen otros. Seca los firmes en una capa, con aire cálido en movimiento.',
  'why.rescue.white-fluff':
    'Saca cada planta así con la tierra de sus raíces, derecha a una bolsa. Arranca las que sigan sanas y cómelas pronto.',
  'why.rescue.pink-roots':
    'Ten el bancal siempre algo húmedo, que quedan pocas raíces, y arranca como siempre.',
  'why.rescue.maggots':
    'Saca todas las plantas caídas, con sus gusanos, antes de que pasen a la siguiente. No dejes por ahí bulbos dañados.',
  'why.rescue.too-hot': 'Cocínalas, o córtalas finas y déjalas un cuarto de hora en agua fría.',
  'why.rescue.neck-rot':
    'Aparta hoy, al aire libre, todas las de cuello blando. Extiende las firmes en seco y con aire, y míralas cada semana.',
  'why.rescue.rotted-in-store':
    'Vacía hoy el almacén y aparta todo lo blando, mojado o mohoso. Seca las firmes y devuélvelas sueltas, al fresco y con aire.',
  'why.rescue.black-dust':
    'Pélalas al aire libre o mojadas, para no respirar el polvo. Si la carne está firme y limpia, enjuágala y úsala pronto.',
  'why.rescue.sprouted':
    'Úsalas ya, con brotes y todo; el brote también se come. Lleva las que no tienen brote a un sitio más frío y seco.',
  'why.rescue.glassy':
    'No las muevas mientras estén heladas. Deja que se descongelen despacio, justo por encima de cero, una o dos semanas; luego aparta las que sigan mojadas.',
} as const;

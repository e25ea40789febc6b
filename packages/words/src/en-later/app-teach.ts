/** The Teach page, which leads to those that explain onions to others. */
export const appTeach = {
  'app.teach': 'Explain onions to others, for any place on land',
  'app.teach.lead':
    'Every figure is worked out for the place you name, says how sure it is, and is yours to use with its source line.',
  'app.teach.map':
    'Which onion does best where, in how many years it comes good, when it is started and when it is ready.',
  'app.teach.together':
    'Up to six places, or six starts, one under the other on the same months, with one day to move.',
  'app.teach.latitudes':
    'Walk from the equator to 70°, make it warmer or colder, and see when one onion bulbs and another never does.',
  'app.teach.sheet':
    'One page for a town: what to buy, when, and how to know it is time, under your own heading.',
  'app.teach.questions':
    '“Why did mine never bulb?” and nine more, answered for the place by growing it again.',
} as const;

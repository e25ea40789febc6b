/** The command that keeps a kitchen in onions. */
export const keepCommand = {
  'help.keep':
    'What to plant so that a kitchen has onions until the next crop: which kinds, when, how many, how long they last in store, and what to get. A garden file stands in place of the town: its place, kitchen and own onions are taken.',
  'help.keep.people': 'how many eat, {min} to {max}',
  'help.keep.grams':
    'what all of them eat in a week, in g of bulbs out of the store (default: what is usual in the country)',
  'help.keep.store':
    'where onions are kept: {places}, or its air the year round as °C and % humidity, such as 8,70 (default: {usual})',
  'help.keep.like': 'what to have among them, with commas between: {likes}',
  'help.keep.seed-age': 'how old the seed is: old seed takes more of it',
  'help.keep.place': 'one of the places of your garden file, by its id or its name',
  'help.keep.planting':
    'tells besides whether this planting of your garden file is to come up, and how it dries; by its id or its name',
  'clash.garden-says-place': 'the garden has its place and its onions.',

  'keep-table.lift': '{name}, lifting and drying:',
  'keep-table.no-bulbs': 'In most years no bulbs come of it: there is nothing to dry.',
  'keep-table.lots': 'What to start:',
  'keep-table.year': 'The year in store, by the end of each month:',
  'keep-table.month': 'Month',
  'keep-table.need': 'Needed',
  'keep-table.store': 'In store',
  'keep-table.span': '8 years in 10',
  'keep-table.lost': 'Lost',
  'keep-table.from': 'From lot',
  'keep-table.supplied': 'Supplied',
  'keep-table.gaps': 'When the store may be bare:',
  'keep-table.in-store': 'In store now:',
  'keep-table.eat-first': 'What to eat first:',
  'keep-table.shopping': 'What to get:',

  'error.keep-people':
    '--people is missing: say how many eat, for example --people 4{garden, select, yes {, or give {file} a kitchen with its people} other {}}.',
  'error.keep-store-form':
    '--store {value}: expected {expected}, or temperature and humidity such as 8,70 (with decimal commas: "8,5;70").',
  'error.keep-place-no-garden':
    '--place {value}: a place of which garden? Name your garden file in place of a town: neckfall keep my.neckfall.json --place {value}',
  'error.keep-planting-no-garden':
    '--planting {value}: in which garden? Name your garden file in place of a town: neckfall keep my.neckfall.json --planting {value}',
  'error.keep-placeless': '{file} has no place. Add one in the app, or name a town in place of the file.',
  'error.keep-which-place': '{file} has {count, number} places: say which with --place: {expected}.',
  'error.keep-place-unknown':
    '--place {value}: {count, plural, =0 {no place of {file} has this id or name.{near, plural, =0 {} other { Nearest: {nearest}.}} It has} other {# places of {file} are called so. Name one by its id:}} {expected}.',
} as const;

/** The command that answers what people ask. */
export const answersCommand = {
  'help.answer':
    'Ten questions that home growers ask, answered for a place by growing it there: all ten in short, or one in full. --batch answers all ten for each row of a file. An --out that ends in .svg, .png or .html holds the picture of one answer.',
  'error.picture-of-one':
    '--out {value}: a picture is of one question; name it after the place, as --list has it.',
  'help.answer.question':
    'one of --list, by its name or in words of your own, such as "plant supermarket onions"; with --at it stands alone',
  'help.answer.list': 'lists the ten questions',
  'help.answer.people': 'how many eat, {min} to {max}, for how many onions to plant; left out: {usual}',

  'answers-told.head': '{place}: ten questions',
  'answers-told.more': 'One in full, with its figures and cautions: put its name behind the place.',
  'answers-told.list': 'What may be asked, by name or in words of your own:',

  'error.question-unknown':
    '"{value}" is none of the ten questions{elsewhere, select, why {: `neckfall why PLACE` asks what went wrong with a crop} which {: `neckfall which PLACE` sets the kinds and ways to start them side by side} when {: `neckfall when PLACE` tells the dates to sow and plant} other {}}.{near, plural, =0 {} other { Nearest: {nearest}.}} `neckfall answer --list` lists them.',
} as const;

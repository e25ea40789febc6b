/** The page that makes a sheet to hand out. */
export const appSheet = {
  'app.sheet': 'A sheet to hand out: {place}',
  'app.sheet.lead':
    'One page to print or to keep as a file: what to buy, when, how to know it is time, a year of work. The numbers are those of the other pages.',
  'app.sheet.own': 'What you say on it',
  'app.sheet.heading': 'Heading',
  'app.sheet.heading.hint': 'Leave it empty for “{usual}”.',
  'app.sheet.note': 'Your note',
  'app.sheet.note.hint': 'When and where you meet, whom to ask, what you grow.',
  'app.sheet.count': '{words, plural, one {# word} other {# words}} of at most {most}.',
  'app.sheet.too-long':
    '{words, plural, one {# word} other {# words}} in {characters, number} characters: at most {most} words in {mostCharacters, number} find room. The last that did stands on the sheet.',
  'app.sheet.paper': 'Paper',
  'app.sheet.paper.a4': 'A4',
  'app.sheet.paper.letter': 'Letter',
  'app.sheet.preview': 'The sheet as it prints',
  'app.sheet.print': 'Print it',
  'app.sheet.keep': 'Keep as one HTML file',
  'app.sheet.kept': 'Kept as {file}.',
  'app.sheet.failed': 'The file could not be made ({reason}).',
  'app.sheet.larger': 'Set smaller, and with lines left out, so that all of it fits on one page.',
  'app.sheet.command':
    'For many places at once there is the command line: neckfall handout --batch, as HTML or PDF.',
} as const;

/** Sheets to hand out, as the command line makes them. */
export const handoutCommand = {
  'help.handout':
    'One page to hand out for a place: what to buy, when, how to know it is time, cautions, a year of work. As HTML or PDF.',
  'help.handout.batch':
    'many sheets at once, a CSV file with a row each: id, place (or latitude, longitude, elevation_m, name), and if you like heading, note, paper, units, lang',
  'help.handout.heading': 'your own heading, up to {words} words (default: the place)',
  'help.handout.note': 'your own note, up to {words} words; a line break begins a paragraph',
  'help.handout.paper': 'paper (default: letter with US units, else a4)',
  'help.handout.out': 'the file to write, *.html or *.pdf; with --batch the folder for all of them',
  'help.handout.as': 'with --batch: which files to make of each row (default: both)',
  'sheets.written':
    '{rows, plural, one {One sheet} other {# sheets}} in {folder}, {files, plural, one {one file} other {# files}}.',
  'sheets.some-failed':
    '{failed, plural, one {One row gave no sheet} other {# rows gave no sheet}}, as told above.',
  'sheets.row': '{where}: {why}',
  'sheets.row-line': 'line {line}',
  'error.sheet-no-file':
    'Which file? Give --out with a name that ends in .html or .pdf, or --json for what stands on the sheet.',
  'error.sheet-file-kind': '--out {value}: expected a name that ends in .html or .pdf.',
  'error.sheet-no-folder': '--batch needs --out with the folder in which the sheets go.',
  'error.sheet-not-folder': '--out {value} is a file: with --batch, name a folder.',
  'error.sheet-too-long':
    '{field}: {words, plural, one {# word} other {# words}} in {characters, number} characters; at most {mostWords} words in {mostCharacters} find room on one page. Shorten it.',
  'error.sheet-letters':
    'The typefaces of our PDFs lack {letters}. Write this sheet as HTML, which takes the faces of the machine it is read on.',
  'error.sheet-other-file':
    '{value} is there already and is no sheet of ours: it stays as it is. Move it, or give the row another id.',
  'error.sheet-as-one': '--as goes with --batch: one sheet is told by the ending of --out.',
  'error.row-no-place':
    'the row names no place: expected a town under place, or degrees under latitude and longitude.',
  'error.batch-no-place':
    '--batch {value}, line 1: no column names the places. Expected place, or latitude and longitude. The columns are {expected}.',
  'clash.sheets-are-files': 'with it sheets are written as files.',
} as const;

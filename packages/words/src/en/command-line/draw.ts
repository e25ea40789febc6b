/** The command that draws pictures to be taken along. */
export const drawCommand = {
  'help.draw':
    'Draws a picture to put into a lesson, a letter or a page, with the line that says where it comes from: the year of a place with the onion for it or with a crop of yours, the bulbs of a crop cut through, or what comes of a start in every week of the year.',
  'help.draw.picture':
    'year (of the place, or of the crop where --start and --date name one), bulbs (of a crop) or starts (of an onion, week by week) (default: year)',
  'help.draw.out':
    'the file to write, as its name ends: .svg (a drawing that stays sharp), .png (an image) or .html (a page with its numbers); left out, the drawing is printed as SVG',
  'help.draw.json': 'the numbers of the picture of the year as one JSON document, in metric units',

  'error.picture-ending': '--out {value}: expected the name of a file that ends in {expected}.',
  'error.picture-numbers':
    '--json goes with --picture year alone: `neckfall {command} --json` has the numbers of --picture {value}.',
} as const;

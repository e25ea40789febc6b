/** Words of the trade that a beginner may not know, each said once in plain ones. */
export const wordList = {
  'words.title': 'Words that may be new',
  'words.day-length': 'Short-day, intermediate-day, long-day',
  'words.day-length.is':
    'An onion starts its bulb when days have grown long enough. Short-day onions do so on the shortest such days, long-day onions wait for the longest. The packet says which.',
  'words.long': 'Early and northern long-day',
  'words.long.is':
    'Two sorts of long-day onion. Early ones start bulbs on somewhat shorter days, northern ones on the long days far from the equator. Packets mostly say long-day for both.',
  'words.sets': 'Sets',
  'words.sets.is': 'Small dry onions of the year before, planted instead of seed.',
  'words.sown': 'Sown in place, sown in trays',
  'words.sown.is':
    'Seed sown where the onions will stand; or in trays of your own, and the young plants set out later.',
  'words.tops': 'Tops go over',
  'words.tops.is': 'Necks soften and leaves fall: the onions have finished, and can soon be lifted.',
  'words.flower': 'Run to flower',
  'words.flower.is': 'A plant that sends up a flower stalk; its bulb is poor and does not keep.',
  'words.neck': 'Thick-necked',
  'words.neck.is': 'Still green when the season ends: the neck does not close, and the bulb does not keep.',
  'words.middling': 'A middling year',
  'words.middling.is': 'The one in the middle, with all years tried in order.',
  'words.range': '8 years in 10',
  'words.range.is': 'Of ten years, one comes to less or is earlier, and one comes to more or is later.',
} as const;

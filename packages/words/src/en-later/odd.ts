/** What may be a slip of the pen in what was seen: asked, not refused. */
export const odd = {
  'odd.leaves-many':
    '{leaves} green leaves are more than a plant carries by then, about {most} at most. Are they those of several plants?',
  'odd.leaves-fewer':
    '{leaves, select, 1 {1 green leaf} other {{leaves} green leaves}} now, {before} on {date}: did so many wither, or were other plants counted?',
  'odd.neck-wide': 'The neck, {neck}, is wider than the bulb, {bulb}. Were the two exchanged?',
  'odd.tops-less':
    '{share}% of the tops are down, and {before}% were on {date}: they don’t rise again. Which is right?',
  'odd.flowering-many':
    '{flowering, select, 1 {1 plant is} other {{flowering} plants are}} in flower, and {standing} stand in all. Is one of the two from another bed?',
  'odd.bulbs-many':
    '{bulbs} bulbs are more than there were plants, {plants}. Are those of another bed among them?',
  'odd.thick-many': '{thick} thick necks are more than the bulbs counted, {bulbs}. Were the two exchanged?',
  'odd.water-much': '{water} on {area} in one day is a flood. Is it the water of a whole week?',
  'odd.feed-much':
    '{feed} of feed on {area} is enough to burn roots: go by the packet. Is it the weight of the whole bag?',
  'odd.before-start': '{date} is before the start on {start}. Is the date right?',
  'odd.long-after': '{date} is more than two years after the start on {start}. Is it of another planting?',
  'odd.in-future': '{date} is still to come. Is the date right?',
} as const;

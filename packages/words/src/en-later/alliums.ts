/** What a bed carried before: onions, garlic and leeks follow each other badly. */
export const alliums = {
  'alliums.white-rot':
    '“{bed}” has had white rot, which lives in the ground for more than twenty years. Grow no onions, garlic or leeks there again, and carry no soil from it on boots or tools.',
  'alliums.short':
    '{ago, plural, =0 {Onions, garlic or leeks have stood in “{bed}” this same year ({year})} one {Onions, garlic or leeks stood in “{bed}” the year before ({year})} other {Onions, garlic or leeks stood in “{bed}” # years before ({year})}}. Keep them off it for {wait} years, for downy mildew waits in the ground; for up to {longest} where roots turned pink.',
  'alliums.roots':
    'Onions, garlic or leeks stood in “{bed}” {ago} years before ({year}): long enough for downy mildew. Where roots turned pink, wait up to {longest} years.',
} as const;

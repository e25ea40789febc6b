/** Where a household keeps its onions. */
export const storePlaces = ['cellar', 'shed', 'garage', 'kitchen', 'fridge'] as const;
/** One of {@link storePlaces}. */
export type StorePlace = (typeof storePlaces)[number];

/** What a household would like among its onions. */
export const likes = ['mild', 'keeper', 'red', 'green'] as const;
/** One of {@link likes}. */
export type Like = (typeof likes)[number];

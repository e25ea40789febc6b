/** What a grower has to feed with. */
export type FeedProduct = {
  /** N-P-K as printed on the bag, or an organic source by its name. */
  name: string;
  /** Nitrogen, and phosphorus and potassium as the oxides that bags print, P₂O₅ and K₂O: per cent by weight; null: not known. */
  nPct: number;
  phosphatePct: number | null;
  potashPct: number | null;
  /** Share of its nitrogen that a crop can draw on in the first season. */
  released: number;
  /** Days it lies in the ground before a crop draws on it. */
  leadDays: number;
  /** In so many feeds at most. */
  mostFeeds: number;
};

type Organic = Pick<FeedProduct, 'nPct' | 'released' | 'leadDays' | 'mostFeeds'>;

/*
 * Nitrogen of organic sources, %: blood meal 12 (an extension column), feather meal 7–12, fish emulsion 5 and cottonseed
 * meal 6 (garden magazines); alfalfa meal 2–3, composted poultry 3–4, compost 1–2, soybean meal 7 (memory: CSU GardenNotes
 * 234 and others). The middle of a range; of compost its lower end, as it is weighed moist.
 * First-season release: blood and feather 60–75 %, poultry 40–50 %, compost 5–15 % (memory: PNW 646); the others memory.
 * Days in the ground and number of feeds: common practice, no source.
 */
const organics: Readonly<Record<string, Organic>> = {
  'blood-meal': { nPct: 12, released: 0.68, leadDays: 14, mostFeeds: 3 },
  'feather-meal': { nPct: 9.5, released: 0.68, leadDays: 28, mostFeeds: 2 },
  'fish-emulsion': { nPct: 5, released: 0.7, leadDays: 7, mostFeeds: 3 },
  'cottonseed-meal': { nPct: 6, released: 0.6, leadDays: 28, mostFeeds: 2 },
  'soybean-meal': { nPct: 7, released: 0.6, leadDays: 28, mostFeeds: 2 },
  'alfalfa-meal': { nPct: 2.5, released: 0.4, leadDays: 28, mostFeeds: 1 },
  'poultry-compost': { nPct: 3.5, released: 0.45, leadDays: 28, mostFeeds: 1 },
  compost: { nPct: 1, released: 0.1, leadDays: 28, mostFeeds: 1 },
};

/** Names of the feeds that rot first. */
export const organicFeeds: readonly string[] = Object.keys(organics);

const dashes = /\s*[-‐‑–−]\s*/;
const printed = /^\d{1,3}(?:\.\d{1,2})?$/;

/**
 * A product as it was written: `10-10-10`, also with spaces and decimal commas, or the name of an organic source. Null
 * where it is neither, where its parts make more than 100 %, and where there is no nitrogen in it.
 */
export function readFeedProduct(text: string): FeedProduct | null {
  const name = text
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-');
  if (Object.hasOwn(organics, name)) return { name, phosphatePct: null, potashPct: null, ...organics[name] };
  const parts = text.trim().replaceAll(',', '.').split(dashes);
  if (parts.length !== 3 || !parts.every((part) => printed.test(part))) return null;
  const [nPct, phosphatePct, potashPct] = parts.map(Number);
  if (nPct <= 0 || nPct + phosphatePct + potashPct > 100) return null;
  return {
    name: [nPct, phosphatePct, potashPct].join('-'),
    nPct,
    phosphatePct,
    potashPct,
    released: 1,
    leadDays: 0,
    mostFeeds: 4,
  };
}

/** Whether a feed gives its nitrogen slowly, as it rots. */
export function isOrganic({ name }: Pick<FeedProduct, 'name'>): boolean {
  return Object.hasOwn(organics, name);
}

/** Nitrogen that a crop can draw on in the first season, g, of so many g of the product. */
export function drawnNitrogenG({ nPct, released }: FeedProduct, grams: number): number {
  return (grams * nPct * released) / 100;
}

/** So many g of the product for so much nitrogen to draw on, g. */
export function productG({ nPct, released }: FeedProduct, nitrogenG: number): number {
  return (100 * nitrogenG) / (nPct * released);
}

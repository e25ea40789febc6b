import { type FeedAnswer, isOrganic, nitrogenTakenShare, type Plan, readFeedProduct } from '@neckfall/engine';
import type { MessageKey, Speaker } from '@neckfall/words';

/** More is told in kilograms, g. */
const manyG = 1000;

/** So much of a product on a square metre. */
function rateOf(gramsPerM2: number, { quantity }: Speaker): string {
  return gramsPerM2 < manyG ? quantity('feed', gramsPerM2) : quantity('yield', gramsPerM2 / 1000);
}

function weightOf(grams: number, { quantity }: Speaker): string {
  return grams < manyG ? quantity('bulbMass', grams) : quantity('crop', grams / 1000);
}

/** What is to be fed, in one sentence. */
export function feedHeadline(answer: FeedAnswer, plan: Plan, place: string, speaker: Speaker): string {
  const { say, day } = speaker;
  const { feeds, product, stopBy, toGiveGPerM2 } = answer;
  const values = { place, crop: say(`feed.crop.${plan.start}`) };
  const open = feeds.filter(({ nGPerM2 }) => nGPerM2 > 0);
  if (toGiveGPerM2 === 0) return say('feed.lead.bed-gives', values);
  if (feeds.length === 0) return say('feed.lead.no-time', values);
  if (open.length === 0) return say('feed.lead.fed', values);
  const rates = open.map(({ gramsPerM2 }) => gramsPerM2);
  const isEven = Math.max(...rates) - Math.min(...rates) < 0.5;
  const inAll = rates.reduce((sum, rate) => sum + rate, 0);
  const told = { ...values, count: open.length, product: productName(product, speaker) };
  if (stopBy === null) return say('feed.lead.leafy', { ...told, rate: rateOf(inAll, speaker) });
  return say('feed.lead.feeds', {
    ...told,
    evenly: open.length === 1 ? 'one' : isEven ? 'yes' : 'no',
    rate: rateOf(isEven ? rates[0] : inAll, speaker),
    first: day(open[0].day),
    last: day(open[open.length - 1].day),
  });
}

/** A product as it is called: an organic one by its words, a bag by its numbers. */
export function productName(product: string, { say }: Speaker): string {
  return isOrganic({ name: product }) ? say(`feed.product.${product}` as MessageKey) : product;
}

export type FeedRow = {
  number: number;
  stage: string;
  date: string;
  nitrogen: string;
  rate: string;
  bed: string | null;
};

/** Each feed; what was given of it is told as such. */
export function feedRows({ feeds }: FeedAnswer, plan: Plan, speaker: Speaker): FeedRow[] {
  const { say, day, quantity } = speaker;
  return feeds.map(({ number, stage, day: on, nGPerM2, gramsPerM2, gramsForBed }) => {
    const isSown = plan.start === 'direct-seed';
    const when =
      stage === 'before-start'
        ? say(isSown ? 'feed.stage.sowing' : 'feed.stage.planting')
        : say('feed.stage.leaves', { leaves: Number(stage.slice('leaves-'.length)) });
    return {
      number,
      stage: nGPerM2 > 0 ? when : say('feed.stage.given', { stage: when }),
      date: day(on),
      nitrogen: quantity('nitrogen', nGPerM2),
      rate: rateOf(gramsPerM2, speaker),
      bed: gramsForBed === null ? null : weightOf(gramsForBed, speaker),
    };
  });
}

/** What the crop needs, what its bed gives of it, and what is left to give. */
export function feedNeedSentences(answer: FeedAnswer, speaker: Speaker): string[] {
  const { say, quantity } = speaker;
  const { fromBed, toGiveGPerM2, leftOutGPerM2, isCoarse, givenGPerM2, feeds, stopBy } = answer;
  const nitrogen = (grams: number) => quantity('nitrogen', grams);
  const orZero = (grams: number) => (grams > 0 ? nitrogen(grams) : 'zero');
  const give = { give: nitrogen(toGiveGPerM2) };
  return [
    say('feed.from.need', {
      aim: quantity('yield', answer.aimKgPerM2),
      taken: nitrogen(answer.takenGPerM2),
      all: nitrogen(answer.nitrogenGPerM2),
    }),
    say('feed.from.bed', {
      fertility: answer.fertility,
      soil: nitrogen(fromBed.soil),
      compost: orZero(fromBed.compost),
      legume: orZero(fromBed.legume),
    }),
    toGiveGPerM2 === 0
      ? say('feed.from.nothing')
      : isCoarse
        ? say('feed.from.coarse', give)
        : say('feed.from.give', give),
    ...(leftOutGPerM2 > leastToldG && feeds.length > 0
      ? [say('feed.from.left-out', { left: nitrogen(leftOutGPerM2), stop: stopBy === null ? 'none' : 'set' })]
      : []),
    ...(givenGPerM2 === null
      ? [say('feed.given-unknown')]
      : givenGPerM2 > 0
        ? [say('feed.given', { given: nitrogen(givenGPerM2) })]
        : []),
  ];
}

/** Less nitrogen is told as none, g per m². */
const leastToldG = 0.05;

/** Why it is split and when to stop. */
export function feedStopSentences({ stopBy, feeds, product }: FeedAnswer, speaker: Speaker): string[] {
  const { say, number, day } = speaker;
  const percent = (share: number) => number(100 * share);
  const { released } = readFeedProduct(product)!;
  return [
    ...(feeds.length > 1
      ? [
          say('feed.split', {
            five: percent(nitrogenTakenShare(5)),
            // told as a round number above it
            onset: percent(Math.ceil(10 * nitrogenTakenShare(Number.POSITIVE_INFINITY)) / 10),
          }),
        ]
      : []),
    ...(released < 1 && feeds.length > 0 ? [say('feed.slow', { percent: percent(released) })] : []),
    stopBy === null ? say('feed.stop-never') : say('feed.stop', { date: day(stopBy) }),
  ];
}

/** What comes along with nitrogen, and what else is asked of feed. */
export function feedBesidesSentences({ besides, feeds }: FeedAnswer, plan: Plan, speaker: Speaker): string[] {
  const { say, quantity } = speaker;
  const isFed = feeds.some(({ nGPerM2 }) => nGPerM2 > 0);
  const brings =
    besides === null
      ? say('feed.besides-unknown')
      : besides.phosphateGPerM2 + besides.potashGPerM2 === 0
        ? say('feed.besides-none')
        : say('feed.besides', {
            phosphate: quantity('nitrogen', besides.phosphateGPerM2),
            potash: quantity('nitrogen', besides.potashGPerM2),
          });
  return [
    ...(isFed ? [brings] : []),
    say('feed.sulphur'),
    ...(plan.start === 'raised-seedlings' ? [traysSentence(speaker)] : []),
  ];
}

/** Height of seedlings from which they are fed, mm (Penn State 2013, 2–3 in); 150–225 against 75 mg/l: Herison et al. 1993. */
const fedFromMm = [50, 75] as const;

function traysSentence({ say, quantity }: Speaker): string {
  const [least, most] = fedFromMm;
  return say('feed.trays', { least: quantity('bulbLength', least), most: quantity('bulbLength', most) });
}

/** Lower and upper end of what suits onions (Minnesota). */
const fitPh = { low: 6, high: 7 } as const;

/** What the soil's pH asks for; null where nothing was said of it. */
export function limeSentence(
  { lime }: FeedAnswer,
  soilPh: number | null,
  { say, figure, number }: Speaker,
): string | null {
  if (lime === null || soilPh === null) return null;
  return say(`feed.lime.${lime}`, {
    ph: number(soilPh, 1),
    low: figure(fitPh.low, 1),
    high: figure(fitPh.high, 1),
  });
}

/** What to take care of: organic feeds are dusty or raw, lime and ammonium don't go together. */
export function feedCautions({ lime, product, toGiveGPerM2 }: FeedAnswer, { say }: Speaker): string[] {
  const isLimed = lime === 'lime' || lime === 'lime-perhaps';
  const isFed = toGiveGPerM2 > 0;
  return [
    say('feed.caution.label'),
    ...(isFed ? [say('feed.caution.leaves'), say('feed.caution.run-off')] : []),
    say('feed.caution.manure'),
    ...(isLimed || isOrganic({ name: product }) ? [say('feed.caution.dust')] : []),
    ...(isLimed ? [say('feed.caution.lime')] : []),
  ];
}

/** What was taken for granted. */
export function feedAssumptions(answer: FeedAnswer, isSoilSaid: boolean, speaker: Speaker): string[] {
  const { say } = speaker;
  const { product, productSaid, aimSaid, stopBy } = answer;
  const isKnown = productSaid !== null && readFeedProduct(productSaid) !== null;
  return [
    ...(isSoilSaid ? [] : [say('feed.assumed.soil')]),
    ...(isKnown ? [] : [say('feed.assumed.product', { said: productSaid ?? 'none', product })]),
    ...(aimSaid === null ? [say(stopBy === null ? 'feed.assumed.leafy' : 'feed.assumed.aim')] : []),
    say('feed.assumed.values'),
    ...(isOrganic({ name: product }) ? [] : [say('feed.assumed.oxides')]),
  ];
}

/** Whose figures an answer on feed stands on. */
export function feedSources({ say }: Speaker): string[] {
  return [say('feed.source.uptake'), say('feed.source.feeds')];
}

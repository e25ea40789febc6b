import type { Change, ChangeCode, GrownSo } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** By what seasons are held against each other: bulbs sound in store, plants that flower, or bulbs at harvest. */
export type Measure = 'sound' | 'flower' | 'bulbs';

/** Plants that flower are what is told from this difference on. */
const tellingShare = 0.1;

/** Changes of what comes after the bed. */
const ofTheStore: readonly ChangeCode[] = [
  'cool-store',
  'dry-store',
  'frost-free-store',
  'better-keeper',
  'lifted-ripe',
];

export function measureOf(change: Change | null, atWork: GrownSo, without: GrownSo): Measure {
  const isStored = atWork.soundShare !== null && without.soundShare !== null;
  if (change !== null && ofTheStore.includes(change.code) && isStored) return 'sound';
  const isOfSets = change?.code === 'smaller-sets' || change?.code === 'warm-stored-sets';
  const isOfFlowers = isOfSets || atWork.outcome === 'bolts' || without.outcome === 'bolts';
  const difference = Math.abs(atWork.boltedShare - without.boltedShare);
  return isOfFlowers || difference >= tellingShare ? 'flower' : 'bulbs';
}

/** What a season came to, by one measure. */
export function grownWords(
  { outcome, bulbDiameterMm, boltedShare, soundShare }: GrownSo,
  measure: Measure,
  { say, quantity }: Speaker,
): string {
  if (measure === 'sound') {
    const bulbs = say('why.of.bulbs', { tenths: tenths(soundShare ?? 0) });
    return say('why.grown.sound', { bulbs });
  }
  if (measure === 'flower') return say('why.grown.flower', { tenths: tenths(boltedShare) });
  if (outcome === 'winter-killed') return say('why.grown.winter');
  if (outcome === 'no-bulb' || bulbDiameterMm === null) return say('why.grown.no-bulb');
  const size = quantity('bulbLength', bulbDiameterMm.p50);
  return say(outcome === 'not-ripe' ? 'why.grown.thick' : 'why.grown.size', { size });
}

/** The same of a season that might be, with how often it is good. */
export function hopedWords(grown: GrownSo, measure: Measure, speaker: Speaker): string {
  const told = grownWords(grown, measure, speaker);
  if (measure === 'sound') return told;
  return speaker.say('why.grown.good', { grown: told, years: speaker.years(grown.goodShare, null) });
}

const tenths = (share: number) => Math.round(share * 10);

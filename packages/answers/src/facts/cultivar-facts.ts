import { type Cultivar, type CultivarField, type PublishedNeed, plantOf } from '@neckfall/data';
import { defaultPlantValues } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** One line on an onion: what, and where it comes from. */
export type CultivarFact = {
  field: CultivarField | 'type' | 'traits';
  label: string;
  value: string;
  /** Key of a source, or what it was worked out from or taken as, in words. */
  origin: { source: string } | { words: string };
};

/** All that is known of an onion, in the order in which a grower asks. */
export function cultivarFacts(cultivar: Cultivar, speaker: Speaker): CultivarFact[] {
  const { say } = speaker;
  const values = fieldValues(cultivar, speaker);
  return order.flatMap((field) => {
    const value = values[field];
    if (!value) return [];
    return [
      { field, label: say(`cultivars.row.${field}`), value, origin: originOf(cultivar, field, speaker) },
    ];
  });
}

const order = [
  'aliases',
  'class',
  'need',
  'type',
  'traits',
  'colour',
  'shape',
  'uses',
  'mild',
  'maturity',
  'daysToMaturity',
  'hybrid',
  'bolting',
  'keepsMonths',
  'dryMatterShare',
  'regions',
  'soldIn',
  'starts',
] as const;
type Row = (typeof order)[number];

function fieldValues(cultivar: Cultivar, speaker: Speaker): Record<Row, string | null> {
  const { say, all, number, numberRange, country } = speaker;
  const { colour, shape, mild, maturity, daysToMaturity, hybrid, bolting, need } = cultivar;
  const list = (words: readonly string[]) => (words.length > 0 ? all(words) : null);
  return {
    aliases: list(cultivar.aliases),
    class: say(`class.${cultivar.class}`),
    need: need && needWords(need, speaker),
    type: say(`type.${cultivar.type}`),
    traits: cultivar.kind === 'bulb-onion' ? traitWords(cultivar, speaker) : null,
    colour: colour && say(`colour.${colour}`),
    shape: shape && say(`shape.${shape}`),
    uses: list(cultivar.uses.map((use) => say(`use.${use}`))),
    mild: mild === null ? null : say(mild ? 'cultivars.mild.yes' : 'cultivars.mild.no'),
    maturity: maturity && say(`maturity.${maturity}`),
    daysToMaturity:
      daysToMaturity &&
      say(`cultivars.days.${daysToMaturity.since}`, {
        range: numberRange(daysToMaturity.fromDays, daysToMaturity.toDays),
      }),
    hybrid: hybrid === null ? null : say(hybrid ? 'cultivars.hybrid.yes' : 'cultivars.hybrid.no'),
    bolting: bolting && say(`cultivars.bolting.${bolting}`),
    keepsMonths: say('cultivars.months', { range: numberRange(...cultivar.keepsMonths, 1) }),
    dryMatterShare:
      cultivar.dryMatterShare === null
        ? null
        : say('cultivars.dry-matter', { percent: number(100 * cultivar.dryMatterShare) }),
    regions: list(cultivar.regions),
    soldIn: list(cultivar.soldIn.map(country)),
    starts: list(cultivar.starts.map((start) => say(`start.${start}`))),
  };
}

function needWords({ fromH, toH, light }: PublishedNeed, { say, dayLength }: Speaker): string {
  const hours =
    fromH === toH
      ? dayLength(fromH)
      : say('cultivars.need.between', { from: dayLength(fromH), to: dayLength(toH) });
  return say(`cultivars.need.${light}`, { hours });
}

/** In what it differs from its kind when a season is tried. */
export function traitWords(cultivar: Cultivar, { say, all, number, dayLength }: Speaker): string {
  const { type, traits } = plantOf(cultivar);
  const usual = defaultPlantValues.types[type];
  const { criticalPhotoperiodH, ripeningFactor, boltingFactor, dryMatterShare } = traits;
  const words: string[] = [];
  if (criticalPhotoperiodH !== null) {
    const hours = dayLength(criticalPhotoperiodH);
    words.push(say('cultivars.trait.day', { hours, usual: dayLength(usual.criticalPhotoperiodH) }));
  }
  if (ripeningFactor !== null) {
    const percent = number(100 * Math.abs(ripeningFactor - 1));
    words.push(say(ripeningFactor < 1 ? 'cultivars.trait.sooner' : 'cultivars.trait.later', { percent }));
  }
  if (boltingFactor !== null) {
    words.push(say(boltingFactor > 1 ? 'cultivars.trait.slow' : 'cultivars.trait.ready'));
  }
  if (dryMatterShare !== null) {
    const percent = (share: number) => number(100 * share);
    words.push(
      say('cultivars.trait.dry', { percent: percent(dryMatterShare), usual: percent(usual.dryMatterShare) }),
    );
  }
  return words.length > 0 ? all(words) : say('cultivars.trait.none');
}

function originOf(cultivar: Cultivar, field: Row, { say, all }: Speaker): CultivarFact['origin'] {
  if (field === 'traits') return { words: '' };
  if (field === 'type') {
    const reasons = all(cultivar.argued.map((reason) => say(`cultivars.reason.${reason}`)));
    return { words: say('cultivars.from.worked-out', { reasons }) };
  }
  const origin = cultivar.origins[field] ?? 'memory';
  if (origin !== 'memory') return { source: origin };
  const isUsual = (field === 'keepsMonths' && cultivar.keepsFrom === 'type') || field === 'dryMatterShare';
  return { words: say(isUsual ? 'cultivars.from.kind' : 'cultivars.from.memory') };
}

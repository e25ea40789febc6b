import {
  type Between,
  type Needed,
  neededFor,
  type SeasonSummary,
  type Spacing,
  type Stand,
  standFigures,
  startWays,
} from '@neckfall/engine';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

/** What to have at hand for so many plants of the crop shown, and what that is reckoned with. */
export function neededWords(
  { plan, emergedShare }: Pick<SeasonSummary, 'plan' | 'emergedShare'>,
  stand: Stand,
  spacing: Spacing,
): { needed: string; reckoned: string } | null {
  const { seedAge } = asked.value;
  const setSizeMm = plan.start === 'sets' ? plan.setSizeMm : 0;
  const needed = neededFor(stand, spacing, { start: plan.start, seedAge, setSizeMm, emergedShare });
  if (needed === null) return null;
  const { standsInTrays } = startWays[plan.start];
  return { needed: told(needed, standsInTrays, setSizeMm), reckoned: reckonedWith(needed, standsInTrays) };
}

function told(needed: Needed, standsInTrays: boolean, setSizeMm: number): string {
  const { say, number, numberRange, quantity } = voice.value;
  if (needed.from === 'plants')
    return say('app.spacing.plants', {
      plants: needed.plants,
      bundles: range(needed.bundles),
      most: needed.bundles[1],
    });
  if (needed.from === 'sets')
    return say('app.spacing.sets', {
      sets: needed.sets,
      size: quantity('bulbLength', setSizeMm),
      mass: mass(needed.kg),
    });
  const [least, most] = needed.grams;
  const all = { seeds: range(needed.seeds), mass: voice.value.quantityRange('seedMass', least, most) };
  if (needed.together === null) return say('app.spacing.seeds', all);
  const { places, seedsEach } = needed.together;
  return say('app.spacing.seeds-each', {
    ...all,
    each: numberRange(...seedsEach),
    places: number(places),
    where: standsInTrays ? 'cells' : 'holes',
  });
}

function reckonedWith({ from }: Needed, standsInTrays: boolean): string {
  const { say, number, numberRange } = voice.value;
  const { germination, field, seedsPerGram, bundlePlants } = standFigures;
  if (from === 'plants')
    return say('app.spacing.plants.with', { plants: numberRange(...bundlePlants.value) });
  if (from === 'sets') return say('app.spacing.sets.with');
  const percent = ([least, most]: Between) => numberRange(100 * least, 100 * most);
  return say('app.spacing.seeds.with', {
    age: asked.value.seedAge ?? 'unsaid',
    alive: percent(germination[asked.value.seedAge ?? 'unsaid'].value),
    where: standsInTrays ? 'tray' : 'bed',
    up: standsInTrays ? number(100 * field.tray.value[0]) : percent(field.bed.value),
    gram: numberRange(...seedsPerGram.value),
  });
}

function range([least, most]: Between): string {
  const { number, numberRange } = voice.value;
  return least === most ? number(least) : numberRange(least, most);
}

/** A few sets weigh grams, a bed of them kilograms. */
function mass([least, most]: Between): string {
  const { quantityRange } = voice.value;
  return most < 1 ? quantityRange('bulbMass', 1000 * least, 1000 * most) : quantityRange('crop', least, most);
}

import { isAutumnStart, surveyWays, waysOf } from '../choice/index.ts';
import { dayLengthClasses } from '../plant/index.ts';
import { type Plan, runPlan, type SeasonSummary, type Site } from '../season/index.ts';
import type { KitchenOnionsAnswer, SetsFlowerAnswer } from './common-answer.ts';
import type { CommonAsked } from './common-asked.ts';

/** Sets as shops sort them, small and large, mm across (common practice, no source). */
const smallMm = 16;
const largeMm = 26;
/**
 * The largest that a plan may say (`planFields`, which the first answer does without): kitchen bulbs are larger still, and
 * flower no less.
 */
export const kitchenBulbMm = 40;

/** Why sets run to flower: small against large, cold-stored against warm, at the best planting of sets here. */
export function setsFlower(site: Site, asked: CommonAsked): SetsFlowerAnswer {
  const grown = growerOfSets(site, asked);
  return {
    question: 'sets-flower',
    small: grown(smallMm, 'cold'),
    large: grown(largeMm, 'cold'),
    warm: grown(largeMm, 'warm'),
  };
}

/** What comes of a bulb from a kitchen that is planted: of a set beyond all sizes, which every winter in a store has turned. */
export function kitchenOnions(site: Site, asked: CommonAsked): KitchenOnionsAnswer {
  const grown = growerOfSets(site, asked);
  return {
    question: 'kitchen-onions',
    bulb: grown(kitchenBulbMm, 'cold'),
    warm: grown(kitchenBulbMm, 'warm'),
    set: grown(smallMm, 'cold'),
  };
}

/** Sets planted past summer are fresh and have met no store: those of the other half of the year are asked about. */
function growerOfSets(site: Site, { today, options }: CommonAsked) {
  const { latitudeDeg } = site.climate;
  const ways = dayLengthClasses
    .flatMap((dayLengthClass) => waysOf(site, { class: dayLengthClass }, ['sets']))
    .map((way) => ({
      ...way,
      isUsual: (day: number) => way.isUsual(day) && !isAutumnStart(day, latitudeDeg),
    }))
    .filter(({ isUsual }) => Array.from({ length: 365 }, (_, at) => today + at).some(isUsual));
  const { plan } = surveyWays(site, ways, today, options).best().summary;
  return (setSizeMm: number, setStore: Plan<'sets'>['setStore']): SeasonSummary => {
    if (plan.start !== 'sets') throw new RangeError('start: expected sets');
    return runPlan(site, { ...plan, setSizeMm, setStore });
  };
}

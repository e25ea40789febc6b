import { isAutumnStart } from '../choice/index.ts';
import { ramp } from '../plant/index.ts';
import type { RunCause } from './causes.ts';
import type { Trial } from './season-facts.ts';
import { daysIntoSpring } from './spring.ts';
import type { Symptom } from './symptoms.ts';
import type { Saying } from './trials.ts';

/** How often a cause is at work where the run does not show it, and what it then shows. */
type Typical = { prior: number; shows: Partial<Record<Symptom, number>> };

/** Sets from this on flower now and then whatever the model makes of them, mm. */
const notSmallMm = 15;

/**
 * Runs err: kinds differ, and so do winters and stores of sets. Where a symptom hardly ever has another cause, that cause
 * is thought of although the run shows nothing of it. All memory, adjustable.
 */
export function typicalOf({ trial, said }: Saying): [RunCause, Typical][] {
  const { plan } = trial;
  const bolting = { flowered: 0.8, 'stalk-in-bulb': 0.6 };
  const ofAnyStart: [RunCause, Typical][] = [
    [
      'winter-cold',
      { prior: isInWinter(trial) ? 0.15 : 0.02, shows: { 'died-in-winter': 0.8, 'out-of-the-ground': 0.2 } },
    ],
    ['frozen-store', { prior: 0.12, shows: { glassy: 0.8 } }],
  ];
  const late: [RunCause, Typical] = [
    'started-too-late',
    { prior: 0.1 * lateness(trial), shows: { 'tops-stood': 0.5, 'thick-necks': 0.4, small: 0.45 } },
  ];
  if (plan.start !== 'sets')
    return [...ofAnyStart, ['cold-on-large-plants', { prior: 0.06, shows: bolting }], late];
  const mayBeLarge = !said.has('setSizeMm') || plan.setSizeMm >= notSmallMm;
  return [
    ...ofAnyStart,
    late,
    ...(mayBeLarge ? [['large-sets', { prior: 0.2, shows: bolting }] as [RunCause, Typical]] : []),
    [
      'cold-stored-sets',
      { prior: said.has('setStore') && plan.setStore === 'warm' ? 0.02 : 0.08, shows: bolting },
    ],
  ];
}

/** In spring beds wait so long for nobody, days; from a summer start on it is another crop (memory). */
const springDays = { early: 14, late: 42, over: 150 } as const;

/** How far a spring start came after beds could be worked, 0…1. */
function lateness({ site, plan }: Trial): number {
  const days = daysIntoSpring(site, plan.startDay);
  return days === null || days > springDays.over ? 0 : ramp(days, springDays.early, springDays.late);
}

/** Whether a crop is started to stand the winter. */
function isInWinter({ site, plan }: Trial): boolean {
  return isAutumnStart(plan.startDay, site.climate.latitudeDeg);
}

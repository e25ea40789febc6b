import { type CauseTrial, changed, type Saying } from './trials.ts';
import type { Change } from './what-if.ts';

/** Sets of this size rarely flower, and unsaid ones may have been as large as this, mm. */
const sizes = { safeMm: 14, largeFromMm: 18, largeMm: 25 } as const;
const setPriors = { told: 1, unsaidLarge: 0.4, coldSaid: 0.5, coldUnsaid: 0.3 } as const;

/** Sets smaller than the plan's, larger ones unsaid, and sets from a warm store. */
export function setTrials({ trial, said }: Saying): CauseTrial[] {
  const { plan } = trial;
  if (plan.start !== 'sets') return [];
  const smaller: Change = { code: 'smaller-sets', mm: sizes.safeMm };
  const tried: CauseTrial[] = [];
  if (plan.setSizeMm >= sizes.largeFromMm)
    tried.push({
      cause: 'large-sets',
      prior: setPriors.told,
      told: true,
      without: [{ trial: changed(trial, { setSizeMm: sizes.safeMm }), change: smaller }],
    });
  else if (!said.has('setSizeMm'))
    tried.push({
      cause: 'large-sets',
      prior: setPriors.unsaidLarge,
      told: false,
      within: [changed(trial, { setSizeMm: sizes.largeMm })],
      change: smaller,
    });
  if (plan.setStore === 'cold')
    tried.push({
      cause: 'cold-stored-sets',
      prior: said.has('setStore') ? setPriors.coldSaid : setPriors.coldUnsaid,
      told: true,
      without: [{ trial: changed(trial, { setStore: 'warm' }), change: { code: 'warm-stored-sets' } }],
    });
  return tried;
}

import { namesHereFirst } from '@neckfall/answers';
import { cultivars } from '@neckfall/data';
import { classOfType, densityOf, type Plan, planDefaults, plantOutDayOf } from '@neckfall/engine';
import type { Asked } from '../../address/address-form.ts';
import { noOnion } from '../../address/no-onion.ts';
import { onion } from '../../state/onion.ts';
import { country } from '../../state/place.ts';
import { spacing } from '../../state/plan-asked.ts';
import { asked } from '../../state/route.ts';

/** Next year's plan beside the one that went wrong. */
export type Next = {
  plan: Plan;
  /** Its onion is the one that went wrong. */
  isSameOnion: boolean;
  /** Packets of its class hold it here. */
  isOfClass: boolean;
};

/** What an address asks to show next year's plan, and nothing more of what went wrong. */
export function askedOfNext(next: Next): Partial<Asked> {
  const { plan } = next;
  const isAsSpaced = Math.abs(plan.densityPerM2 - densityOf(spacing.value)) < 0.5;
  return {
    ...onionOf(next),
    start: plan.start,
    date: plan.startDay,
    plantOut: asked.value.plantOut === null ? null : plantOutDayOf(plan),
    cover: plan.cover === 'none' ? null : plan.cover,
    water: plan.water === 'rain' ? plan.water : null,
    sun: plan.sunHours,
    ...(plan.start === 'sets' && {
      setSize: plan.setSizeMm === planDefaults.setSizeMm ? null : plan.setSizeMm,
      setStore: plan.setStore === 'warm' ? plan.setStore : null,
    }),
    ...(isAsSpaced ? {} : { rowDistance: null, plantDistance: null, perStation: null }),
    planting: null,
    bed: null,
    symptoms: null,
    answers: null,
    isAbout: null,
    noticed: null,
    taken: null,
  };
}

function onionOf({ plan, isSameOnion, isOfClass }: Next): Partial<Asked> {
  if (isSameOnion && onion.value.crop !== null) return {};
  const name = isOfClass ? null : nameOf(plan);
  return name === null ? { ...noOnion, class: classOfType[plan.type] } : { ...noOnion, cultivar: name };
}

/** An onion of the type by name, one that is sold near here before others; null: none is known that is sold so. */
function nameOf({ type, start }: Plan): string | null {
  const names = cultivars
    .filter((one) => one.kind === 'bulb-onion' && one.type === type && one.starts.includes(start))
    .map(({ name }) => name);
  return namesHereFirst(names, country.value)[0] ?? null;
}

/** What the onion of next year's plan is called: the type where it has no name. */
export function onionNameOf(next: Next): string | null {
  const { cultivar } = { ...asked.value, ...onionOf(next) };
  return cultivar;
}

import {
  type ChooseOptions,
  type ChooseProgress,
  type GrownKind,
  growKinds,
  type Kind,
} from '@neckfall/engine';
import type { Work } from '../ask/protocol.ts';
import { type SiteAsked, siteOf } from './site.ts';

export type WhichGrowAsked = {
  site: SiteAsked;
  kinds: readonly Kind[];
  /** Starts are tried for a year from here on. */
  firstDay: number;
  options: ChooseOptions;
};

/** Grows kinds at their best starts; tells all as the mean climate sees them first, then how far it has come. */
export async function whichGrow(
  { site, kinds, firstDay, options }: WhichGrowAsked,
  work: Work<ChooseProgress>,
): Promise<GrownKind[]> {
  const steps = growKinds(siteOf(site), kinds, firstDay, options);
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    work.part(step.value);
    await work.pause();
  }
}

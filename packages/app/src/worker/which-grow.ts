import { type GrowingOptions, type GrownKind, growKinds, type Kind, type MeanTrial } from '@neckfall/engine';
import type { Work } from './protocol.ts';
import { type SiteAsked, siteOf } from './site.ts';

export type WhichGrowAsked = {
  site: SiteAsked;
  kinds: readonly Kind[];
  /** Starts are tried for a year from here on. */
  firstDay: number;
  options: GrowingOptions;
};

/** A kind, by its place in what was asked, as the mean climate has it. */
type Coarse = { kind: number; trial: MeanTrial };

/** `coarse` once, at first: all kinds, best first. */
export type WhichGrowPart = { done: number; total: number; coarse: Coarse[] | null };

/** Grows kinds at their best starts; tells all as the mean climate has them first, then how far it has come. */
export async function whichGrow(
  { site, kinds, firstDay, options }: WhichGrowAsked,
  work: Work<WhichGrowPart>,
): Promise<GrownKind[]> {
  const at = new Map(kinds.map((kind, index) => [kind, index]));
  const steps = growKinds(siteOf(site), kinds, firstDay, options);
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    const { done, total, coarse } = step.value;
    // the page has the kinds: their names need not travel again
    work.part({
      done,
      total,
      coarse: coarse?.map(({ kind, trial }) => ({ kind: at.get(kind) ?? 0, trial })) ?? null,
    });
    await work.pause();
  }
}

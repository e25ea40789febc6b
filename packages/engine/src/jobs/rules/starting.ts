import { plantingOut } from '../../season/index.ts';
import type { Course, Noted } from '../course.ts';
import { type Due, due } from '../due.ts';

/** A start, or a planting on a set day, is as good some days sooner or later (common practice, no source). */
const aroundDays = 3;
/** Seedlings are moved on from their seed tray 2–3 weeks after they are up (Iowa State Extension 2020, for thinning them). */
const prickOutAfter = { from: 14, best: 17, to: 21 } as const;
/** They are about 125 mm tall so long after they are up in a tray (memory). */
const tallAfter = { from: 28, best: 35 } as const;
/** Hardening off takes 7–10 days (Iowa State Extension). */
const hardening = { longest: 10, shortest: 7 } as const;

/** How deep seed and plants go: seed 6–13 mm (University of Minnesota), roots and lower neck of plants 25 mm (Texas Extension), sets 25–50 mm (Illinois). */
const depthMm = { seed: 13, plants: 25 } as const;

export function sow({ start, up, onset, stands, crop, noted }: Course): Due {
  const { plan, summary } = crop;
  const days = { from: start - aroundDays, best: start, to: start + aroundDays };
  const isDone = noted.some(({ observation }) => isOfPlants(observation));
  const leaves = summary.leavesMadeAtOnset?.p50;
  const depth = { depthMm: depthMm.seed };
  if (!up) return due(days, 'sow-never-up', depth, { isDone });
  const plantDay = plan.start === 'raised-seedlings' ? (stands?.p50 ?? null) : null;
  const values = { ...depth, upDay: up.p50, ...(plantDay !== null && { plantDay }) };
  if (!onset || leaves === undefined) return due(days, 'sow-leaves', values, { isDone });
  return due(days, 'sow', { ...values, onsetDay: onset.p50, leaves: Math.round(leaves) }, { isDone });
}

/** Seedlings of a tray indoors; null: they stand in a seedbed outdoors, or are none. */
function trayDays({ up, stands, crop: { summary } }: Course) {
  const { plan } = summary;
  const isIndoors = plan.start === 'raised-seedlings' && plan.nurseryTempC !== null;
  return isIndoors && up && stands ? { up, stands, days: stands.p50 - up.p50 } : null;
}

export function prickOut(course: Course): Due | null {
  const tray = trayDays(course);
  if (!tray || tray.days <= prickOutAfter.to + hardening.longest) return null;
  const { p50 } = tray.up;
  const { from, best, to } = prickOutAfter;
  return due({ from: p50 + from, best: p50 + best, to: p50 + to }, 'prick-out', { upDay: p50 });
}

export function trim(course: Course): Due | null {
  const tray = trayDays(course);
  if (!tray || tray.days <= tallAfter.best + hardening.longest) return null;
  const { up, stands } = tray;
  const to = stands.p50 - hardening.longest;
  return due({ from: up.p50 + tallAfter.from, best: up.p50 + tallAfter.best, to }, 'trim', {
    plantDay: stands.p50,
  });
}

export function harden(course: Course): Due | null {
  const tray = trayDays(course);
  if (!tray || tray.days <= hardening.longest) return null;
  const { p50, p90 } = tray.stands;
  const best = p50 - hardening.longest;
  return due({ from: best - aroundDays, best, to: Math.max(best, p90 - hardening.shortest) }, 'harden', {
    plantDay: p50,
  });
}

export function plant({ stands, crop, noted, onset }: Course): Due | null {
  const { plan, summary } = crop;
  if (!stands) return null;
  const from = Math.max(Math.min(stands.p10, stands.p50 - aroundDays), earliest(plan.startDay, plan.start));
  const days = { from, best: stands.p50, to: Math.max(stands.p90, stands.p50 + aroundDays) };
  const isDone = noted.some(({ day, observation }) => day >= from && isOfPlants(observation));
  const more = { isDone };
  const depth = { depthMm: depthMm.plants };
  if (plan.start === 'raised-seedlings' && plan.plantOutDay === null)
    return due(
      days,
      'plant-ready',
      {
        ...depth,
        madeLeaves: plantingOut.leaves,
        weeks: plantingOut.latestWeeks,
        bedTempC: plantingOut.bedC,
      },
      more,
    );
  const leaves = summary.leavesMadeAtOnset?.p50;
  if (!onset || leaves === undefined) return due(days, 'plant-leaves', depth, more);
  return due(days, 'plant', { ...depth, onsetDay: onset.p50, leaves: Math.round(leaves) }, more);
}

/** Own seedlings are not planted before they are sown. */
function earliest(startDay: number, start: string): number {
  return start === 'raised-seedlings' ? startDay + 1 : startDay - aroundDays;
}

/** Whether something was seen of plants or done to them: they were sown or planted then. */
function isOfPlants({ id, plantingId, date, note, ...rest }: Noted['observation']) {
  return Object.keys(rest).length > 0;
}

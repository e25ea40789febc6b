import type { PlaceYear } from '@neckfall/answers';
import { civilDate } from '@neckfall/engine';
import { commonAxisOf, halfYearDays, yearsToAxis } from '@neckfall/pictures';
import { useEffect, useState } from 'preact/hooks';
import { ask } from '../../ask/ask.ts';
import { today } from '../../state/today.ts';
import { nextTurn } from '../../turns/next-turn.ts';
import type { Drawn, LineFound } from './drawn-lines.ts';
import type { LineAsked } from './line-asked.ts';

type Line = { asked: LineAsked; found: LineFound };

const years = new Map<string, PlaceYear>();
const mostKept = 60;

/**
 * The lines on their common axis, each with its year on it: those of the wish before stand until all of the new one
 * are there. `isFresh`: they are those wished for.
 */
export function useDrawn(
  lines: readonly Line[],
  isLinedUp: boolean,
): { drawn: Drawn | null; isFresh: boolean } {
  const [held, hold] = useState<{ key: string; drawn: Drawn } | null>(null);
  const key = JSON.stringify([lines.map(({ asked }) => asked.key), isLinedUp, today.value]);
  useEffect(() => {
    let isGone = false;
    void drawnOf(lines, isLinedUp).then((drawn) => {
      if (drawn && !isGone) nextTurn(() => isGone || hold({ key, drawn }));
    });
    return () => {
      isGone = true;
    };
  }, [key]);
  return { drawn: held?.drawn ?? null, isFresh: held?.key === key };
}

async function drawnOf(lines: readonly Line[], isLinedUp: boolean): Promise<Drawn | null> {
  const onAxis = lines.map(({ found: { reply, located } }) => ({
    crop: {
      from: reply.told.summary.plan.startDay,
      to: lastDay(reply),
    },
    shiftDays: isLinedUp && located.latitudeDeg < 0 ? halfYearDays : 0,
  }));
  const axis = commonAxisOf(onAxis, civilDate(today.value).year);
  const drawn: Drawn['lines'][number][] = [];
  for (const [i, line] of lines.entries()) {
    const { crop, shiftDays } = onAxis[i];
    const firstDay = axis.firstDay + shiftDays;
    const year = await yearOf(line, firstDay, axis.days);
    if (year === null) return null;
    drawn.push({ ...line, year, shiftDays, years: yearsToAxis(crop.from, firstDay) });
  }
  return { axis, isLinedUp, lines: drawn };
}

/** The picture marks when tops go over in a middling year, which may be after the middling season's own end. */
function lastDay({ told, days }: LineFound['reply']): number {
  const { plan, neckFall } = told.summary;
  return Math.max(plan.startDay, days.at(-1)?.day ?? 0, Math.round(neckFall.days?.p90 ?? 0));
}

async function yearOf({ found }: Line, firstDay: number, days: number): Promise<PlaceYear | null> {
  const { latitudeDeg, longitudeDeg, elevationM } = found.located;
  const key = JSON.stringify([latitudeDeg, longitudeDeg, elevationM, found.site.frostHollow, firstDay, days]);
  const known = years.get(key);
  if (known) return known;
  const reply = await ask('whenYear', { site: found.site, firstDay, days }, { topic: 'together-year' });
  if (reply.state !== 'done') return null;
  if (years.size >= mostKept) years.delete(years.keys().next().value!);
  years.set(key, reply.answer);
  return reply.answer;
}

import type { Speaker } from '@neckfall/words';
import type { CropFacts } from './crop-facts.ts';
import type { CropLine } from './year-line-props.ts';

/** What is marked on a crop beside what is known of it. */
type Marked = Pick<CropLine, 'counted' | 'work'>;

/** A crop for the year line, its numbers put into words. */
export function cropSaid(
  { start, leavesMade, marks, ...drawn }: CropFacts,
  { say, day }: Speaker,
  { counted, work }: Marked = { counted: [], work: [] },
): CropLine {
  return {
    ...drawn,
    leavesText: leavesMade && {
      day: leavesMade.day,
      text: say('picture.leaves', { count: leavesMade.count }),
    },
    marks: marks.map((mark) => ({
      ...mark,
      text: say(`picture.mark.${mark.kind === 'start' ? start : mark.kind}`, { date: day(mark.day) }),
    })),
    counted,
    work,
  };
}

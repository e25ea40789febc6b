import { surveyWays, tryStarts, waysOf, weekOf, weekStarts } from '../choice/index.ts';
import type { Site, StartWindow, WhenAnswer } from '../season/index.ts';
import type { StartIndoorsAnswer } from './common-answer.ts';
import type { CommonAsked } from './common-asked.ts';

/** How early seed may be sown in trays, and what an early start is worth against a late one and against the bed. */
export function startIndoors(site: Site, { survey, today, options }: CommonAsked): StartIndoorsAnswer {
  const asked = { class: survey.lead().class };
  const starts = tryStarts(site, waysOf(site, asked, ['raised-seedlings']), options, today);
  const stretch = starts.windows.find(({ best }) => best === starts.best);
  return {
    question: 'start-indoors',
    starts,
    stretch: stretch ? edgesOf(starts, stretch) : null,
    bed: surveyWays(site, waysOf(site, asked, ['direct-seed']), today, options).best().summary,
  };
}

const yearWeeks = weekStarts.length;
/** With fewer weeks left out of a stretch the year has no first and no last. */
const leastClosed = 3;

/** Past summer trays hold another onion: that is another sowing, and left out. */
function edgesOf({ starts }: WhenAnswer, stretch: StartWindow): StartIndoorsAnswer['stretch'] {
  const weekAt = (day: number) => starts.findIndex(({ dayOfYear }) => dayOfYear === day);
  const [from, at, to] = [stretch.from, stretch.best, stretch.to].map(weekAt);
  const best = starts[at].summary;
  const isSame = (week: number) => starts[week].summary.plan.type === best.plan.type;
  const edge = (limit: number, step: 1 | -1) => {
    let week = at;
    while (week !== limit) {
      const next = (week + step + yearWeeks) % yearWeeks;
      if (!isSame(next)) break;
      week = next;
    }
    return starts[week].summary;
  };
  const first = edge(from, -1);
  const last = edge(to, 1);
  const weeks = ((weekOf(last.plan.startDay) - weekOf(first.plan.startDay) + yearWeeks) % yearWeeks) + 1;
  return { first, best, last, isAllYear: weeks > yearWeeks - leastClosed };
}

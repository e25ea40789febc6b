import { noOnion } from '../../address/no-onion.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import type { LineFound } from './drawn-lines.ts';
import { linedUp } from './lined-up.ts';
import { readySets } from './ready-sets.ts';
import { writePlaces, writeStarts } from './together-address.ts';

const monthDays = 30;

/** Sets that teach something, as links. @param best what does best at the place, where starts are compared */
export function Ready({ best }: { best: LineFound | null }) {
  const { say, all } = voice.value;
  const links = best ? setsOfStarts(best) : setsOfPlaces();
  return (
    <>
      <h3>{say('app.together.sets')}</h3>
      <ul class="ready">
        {links.map(({ href, text }) => (
          <li key={text}>
            <a href={href}>{text}</a>
          </li>
        ))}
      </ul>
    </>
  );

  function setsOfPlaces() {
    return readySets.map(({ key, places }) => ({
      href: hrefTo('together', {
        ...noOnion,
        places: writePlaces(places),
        starts: null,
        start: null,
        on: null,
        view: key === 'mirror' ? linedUp : null,
      }),
      text: say(`app.together.set.${key}`, { places: all(places.map(({ name }) => name)) }),
    }));
  }

  function setsOfStarts({ reply }: LineFound) {
    const { start, startDay } = reply.told.summary.plan;
    const starts = [-monthDays, 0, monthDays].map((by) => ({ start, startDay: startDay + by }));
    return [
      { href: hrefTo('together', { starts: '', on: null }), text: say('app.together.set.ways') },
      {
        href: hrefTo('together', { starts: writeStarts(starts), on: null }),
        text: say('app.together.set.months'),
      },
    ];
  }
}

import type { Choice } from '@neckfall/engine';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { bestOfCameFrom } from './came-from.ts';

/** Where in the list the kind stands that was chosen on another page; it narrows nothing. */
export function CameFrom({ choices }: { choices: readonly Choice[] }) {
  const { say, years } = voice.value;
  const { class: chosen, start } = asked.value;
  if (chosen === null) return null;
  const type = say(`class.${chosen}`);
  const kind = start === null ? say('app.which.came.kind', { type }) : say(`crop-kind.${start}`, { type });
  const best = bestOfCameFrom(choices);
  if (!best) return <p>{say('app.which.came.absent', { kind })}</p>;
  return (
    <p>
      {say(best.rank === 1 ? 'app.which.came.first' : 'app.which.came.further', {
        kind,
        years: years(best.summary.seasonShares.good, best.summary.years),
      })}
    </p>
  );
}
